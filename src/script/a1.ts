import type { Area } from './port';

/** Column letters of a column number: 1 is A, 27 is AA. */
export function columnLetters(column: number): string {
  let letters = '';
  for (let left = column; left > 0; left = Math.floor((left - 1) / 26)) {
    letters = String.fromCharCode(65 + ((left - 1) % 26)) + letters;
  }
  return letters;
}

export function cellA1(row: number, column: number): string {
  return `${columnLetters(column)}${row}`;
}

export function areaA1({ row, column, rows, columns }: Omit<Area, 'tab'>): string {
  const first = cellA1(row, column);
  return rows === 1 && columns === 1 ? first : `${first}:${cellA1(row + rows - 1, column + columns - 1)}`;
}
