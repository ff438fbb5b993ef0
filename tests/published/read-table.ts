/** Reads a small CSV of transcribed values: a heading line, then numbers or words; lines with # are notes. */
import { readFileSync } from 'node:fs';

export type TableRow = Readonly<Record<string, string>>;

export function readTable(name: string): readonly TableRow[] {
  const text = readFileSync(new URL(`data/${name}`, import.meta.url), 'utf8');
  const lines = text.split('\n').filter((line) => line.trim() !== '' && !line.startsWith('#'));
  const [heading = '', ...rows] = lines;
  const names = heading.split(',');
  return rows.map((line) => {
    const cells = line.split(',');
    if (cells.length !== names.length) throw new Error(`${name}: ${line} has ${cells.length} cells`);
    return Object.fromEntries(names.map((column, i) => [column, cells[i] ?? '']));
  });
}

/** The number of a column; a blank or a word is a fault of the table. */
export function numberIn(row: TableRow, column: string): number {
  const text = row[column];
  const value = Number(text);
  if (text === undefined || text === '' || !Number.isFinite(value)) {
    throw new Error(`no number in column ${column}: ${JSON.stringify(row)}`);
  }
  return value;
}

/** Half a unit of the last printed digit: 0.05 for "4.6". */
export function halfDigit(printed: string): number {
  const decimals = printed.includes('.') ? printed.length - printed.indexOf('.') - 1 : 0;
  return 0.5 * 10 ** -decimals;
}
