/** Puts rows of different length together into the even grids that WriteBlock wants. */
import type { BlockCell, BlockStyle } from '../contract';
import { BLANK } from './cells';

export interface BlockRow {
  readonly cells: readonly BlockCell[];
  /** One style for the whole row, or one for each cell. */
  readonly style?: BlockStyle | readonly BlockStyle[];
}

export function composeBlock(rows: readonly BlockRow[]): { cells: BlockCell[][]; styles: BlockStyle[][] } {
  const width = Math.max(1, ...rows.map((row) => row.cells.length));
  const across = Array.from({ length: width }, (_, c) => c);
  return {
    cells: rows.map((row) => across.map((c) => row.cells[c] ?? BLANK)),
    styles: rows.map((row) => across.map((c) => styleAt(row, c))),
  };
}

function styleAt({ style }: BlockRow, column: number): BlockStyle {
  if (style === undefined) return 'plain';
  return typeof style === 'string' ? style : (style[column] ?? 'plain');
}
