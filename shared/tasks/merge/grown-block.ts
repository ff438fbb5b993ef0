import { isFilled } from '../../block/is-filled';
import type { BlockInfo, TabContent } from '../../contract';

export interface Grown {
  /** The block with the rows that were filled right below it. */
  readonly info: BlockInfo;
  /** Empty rows below those, in the block's columns. */
  readonly below: number;
  /** The filled row after those, where it is nothing else that is known: no part of the block, though near it. */
  readonly apart?: number;
}

/** Further down, nobody takes a row for a part of the block. Judgement. */
const NEAR_ROWS = 20;

/**
 * A block with the rows that the grower filled right below it, as one does who has no free row left. A row that holds
 * something in its first column only is a line of words and never taken, nor what belongs to something else
 * (`others`: blocks, lists), nor what stands after a blank row.
 */
export function grownBlock(tab: TabContent, info: BlockInfo, others: () => readonly BlockInfo[]): Grown {
  const columns = Array.from({ length: info.columns }, (_, c) => info.column + c);
  const isUsed = (row: number, column: number): boolean => isFilled(tab, row - 1, column - 1);
  const isOther = (row: number): boolean =>
    others().some(
      (other) =>
        other.tab === info.tab &&
        row >= other.row &&
        row < other.row + other.rows &&
        other.column < info.column + info.columns &&
        info.column < other.column + other.columns,
    );
  let next = info.row + info.rows;
  while (columns.slice(1).some((column) => isUsed(next, column)) && !isOther(next)) next++;
  const used = tab.values.length;
  let empty = next;
  while (empty <= used && !isOther(empty) && !columns.some((column) => isUsed(empty, column))) empty++;
  const isApart = empty <= used && !isOther(empty) && empty - next < NEAR_ROWS;
  return {
    info: { ...info, rows: next - info.row },
    below: empty > used ? Number.POSITIVE_INFINITY : empty - next,
    ...(isApart && { apart: empty }),
  };
}
