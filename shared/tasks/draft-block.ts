/** Lays the rows of a block under one another and tells where each cell comes to stand in the sheet. */
import { cellA1, fixedA1 } from '../block/a1';
import type { BlockRow } from '../block/compose-block';
import type { BlockCell, BlockRule, BlockStyle } from '../contract';

/** The block's top left cell, counted from 1. */
export interface Origin {
  readonly row: number;
  readonly column: number;
}

export interface Draft {
  readonly origin: Origin;
  readonly rows: BlockRow[];
  readonly rules: BlockRule[];
  /** Adds a row and returns its row number in the sheet. */
  readonly add: (
    cells?: readonly BlockCell[],
    style?: BlockStyle | readonly BlockStyle[],
    id?: string,
  ) => number;
  /** Row number of the next row. */
  readonly next: () => number;
  /** "C7": column counted from 0 in the block, row as `add` returned it. */
  readonly at: (row: number, column: number) => string;
  /** "$C$7". */
  readonly fixed: (row: number, column: number) => string;
  /** "C7:C12". */
  readonly down: (firstRow: number, lastRow: number, column: number) => string;
}

export function draftBlock(origin: Origin): Draft {
  const rows: BlockRow[] = [];
  const at = (row: number, column: number): string => cellA1(row, origin.column + column);
  const fixed = (row: number, column: number): string => fixedA1(row, origin.column + column);
  return {
    origin,
    rows,
    rules: [],
    add: (cells = [], style = 'plain', id = undefined) => {
      rows.push(id === undefined ? { cells, style } : { cells, style, id });
      return origin.row + rows.length - 1;
    },
    next: () => origin.row + rows.length,
    at,
    fixed,
    down: (firstRow, lastRow, column) => `${fixed(firstRow, column)}:${fixed(lastRow, column)}`,
  };
}
