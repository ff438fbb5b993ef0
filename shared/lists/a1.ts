/** Cell names: rows and columns count from 1, as in the spreadsheet. */

/** Letters of a column: 1 → "A", 27 → "AA". */
export function columnLetters(column: number): string {
  let letters = '';
  for (let left = column; left > 0; left = Math.floor((left - 1) / 26)) {
    letters = String.fromCharCode(65 + ((left - 1) % 26)) + letters;
  }
  return letters;
}

/** Column of its letters: "A" → 1, "AA" → 27. */
export function columnNumber(letters: string): number {
  let column = 0;
  for (const letter of letters.toUpperCase()) column = column * 26 + letter.charCodeAt(0) - 64;
  return column;
}

/** Name of a cell: (7, 3) → "C7". */
export function a1(row: number, column: number): string {
  return `${columnLetters(column)}${row}`;
}

/** A cell name that does not move when the formula is copied: "$C$7". */
export function a1Fixed(row: number, column: number): string {
  return `$${columnLetters(column)}$${row}`;
}

/** Tab name as formulas want it, always in quotes: It's → 'It''s'. */
export function quoteTab(tab: string): string {
  return `'${tab.replace(/'/g, "''")}'`;
}

/** A cell as people read it: Paddocks!C7, quoted only where the tab name is not a plain word. */
export function cellOnTab(tab: string, row: number, column: number): string {
  const plain = /^[\p{L}_][\p{L}\p{N}_]*$/u.test(tab);
  return `${plain ? tab : quoteTab(tab)}!${a1(row, column)}`;
}
