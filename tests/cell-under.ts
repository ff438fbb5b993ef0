import { cellA1 } from '../shared/block/a1';
import type { Workbook } from '../src/headless';

/** "D7": the cell of a row under a heading, which may have its unit behind it, so that no test knows columns by letters. */
export function cellUnder(book: Workbook, heading: string, row: number, tab = 'Rotation'): string {
  for (const cells of book.values(tab)) {
    const column = cells.findIndex((cell) => cell === heading || String(cell).startsWith(`${heading} (`));
    if (column >= 0) return cellA1(row, column + 1);
  }
  throw new Error(`no heading "${heading}" on ${tab}`);
}
