import { isFilled } from '../block/is-filled';
import { isInArea } from '../block/is-in-area';
import type { BlockInfo, TabContent } from '../contract';

export interface Widened {
  /** The block with the filled columns right beside it. */
  readonly info: BlockInfo;
  /** Filled cells further right in the block's rows, which stay where they are: their first row and column. */
  readonly apart: { readonly row: number; readonly column: number } | undefined;
}

/**
 * A block with the columns that the grower began right beside it, so that they move with its rows. Columns that
 * belong to something else (`others`: blocks, lists) are never taken, nor what stands after a blank column.
 */
export function widenedBlock(tab: TabContent, info: BlockInfo, others: readonly BlockInfo[]): Widened {
  const width = Math.max(0, ...tab.values.map((row) => row.length));
  const rows = Array.from({ length: info.rows }, (_, r) => info.row + r);
  const isUsed = (row: number, column: number): boolean => isFilled(tab, row - 1, column - 1);
  const isOther = (row: number, column: number): boolean =>
    others.some((other) => other.tab === info.tab && isInArea(other, row, column));
  let next = info.column + info.columns;
  const mayJoin = (column: number): boolean =>
    rows.some((row) => isUsed(row, column)) && !rows.some((row) => isOther(row, column));
  while (next <= width && mayJoin(next)) next++;
  const right = Array.from({ length: Math.max(0, width - next + 1) }, (_, c) => next + c);
  const apart = rows
    .flatMap((row) => right.map((column) => ({ row, column })))
    .find(({ row, column }) => isUsed(row, column) && !isOther(row, column));
  return { info: { ...info, columns: next - info.column }, apart };
}
