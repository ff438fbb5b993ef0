import { isFilled } from '../../block/is-filled';
import { isInArea } from '../../block/is-in-area';
import type { BlockInfo, TabContent } from '../../contract';

/**
 * A block with the columns that the grower began right beside it, so that they move with its rows. Columns that
 * belong to something else (`others`: blocks, lists) are never taken, nor what stands after a blank column.
 */
export function widenedBlock(tab: TabContent, info: BlockInfo, others: readonly BlockInfo[]): BlockInfo {
  const width = Math.max(0, ...tab.values.map((row) => row.length));
  const rows = Array.from({ length: info.rows }, (_, r) => info.row + r);
  const isUsed = (row: number, column: number): boolean => isFilled(tab, row - 1, column - 1);
  const isOther = (row: number, column: number): boolean =>
    others.some((other) => other.tab === info.tab && isInArea(other, row, column));
  let next = info.column + info.columns;
  const mayJoin = (column: number): boolean =>
    rows.some((row) => isUsed(row, column)) && !rows.some((row) => isOther(row, column));
  while (next <= width && mayJoin(next)) next++;
  return { ...info, columns: next - info.column };
}
