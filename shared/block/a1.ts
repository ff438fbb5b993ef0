/** A1 references. Rows and columns count from 1, as in the sheet. */

/** Column letters of a column number: 1 is A, 27 is AA. */
export function columnLetters(column: number): string {
  let letters = '';
  for (let left = column; left > 0; left = Math.floor((left - 1) / 26)) {
    letters = String.fromCharCode(65 + ((left - 1) % 26)) + letters;
  }
  return letters;
}

/** "C7". */
export function cellA1(row: number, column: number): string {
  return `${columnLetters(column)}${row}`;
}

/** "$C$7": stays put when a formula is copied. */
export function fixedA1(row: number, column: number): string {
  return `$${columnLetters(column)}$${row}`;
}

/** "B2:D9", or "B2" for one cell. */
export function areaA1(area: { row: number; column: number; rows: number; columns: number }): string {
  const first = cellA1(area.row, area.column);
  if (area.rows === 1 && area.columns === 1) return first;
  return `${first}:${cellA1(area.row + area.rows - 1, area.column + area.columns - 1)}`;
}

/** A tab name as formulas want it: 'Bea''s tab'. */
export function quotedTab(tab: string): string {
  return `'${tab.replace(/'/g, "''")}'`;
}
