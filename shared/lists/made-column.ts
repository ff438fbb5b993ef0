import { isFilled } from '../block/is-filled';
import type { TabContent } from '../contract';
import type { GrowerList } from './model';

/** Headings of columns that we put into a grower's list at their wish. */
export const MADE_HEADINGS = {
  from: 'In rotation from',
  openFrom: 'Open from',
  openUntil: 'Open until',
} as const;

/** The first column right of the list in which nothing stands beside it. */
export function freeColumn(tab: TabContent, list: GrowerList): number {
  const rows = Array.from({ length: list.lastRow - list.headingRow + 1 }, (_, r) => list.headingRow - 1 + r);
  let column = Math.max(...Object.values(list.columns)) + 1;
  while (rows.some((r) => isFilled(tab, r, column - 1))) column++;
  return column;
}
