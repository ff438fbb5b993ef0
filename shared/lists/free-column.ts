import { isFilled } from '../block/is-filled';
import type { TabContent } from '../contract';
import type { GrowerList } from './model';

/** The first column right of a list, or of another one there, in which nothing stands beside it. */
export function freeColumn(
  tab: TabContent,
  list: GrowerList,
  rightOf: number = Math.max(...Object.values(list.columns)),
): number {
  const rows = Array.from({ length: list.lastRow - list.headingRow + 1 }, (_, r) => list.headingRow - 1 + r);
  let column = rightOf + 1;
  while (rows.some((r) => isFilled(tab, r, column - 1))) column++;
  return column;
}
