/** What the grower answers of a group that stands in no paddock of the list, as cells of the group list. */
import { date, text } from '../block/cells';
import type { CellChange } from '../contract';
import type { Day } from '../core/calendar/day';
import { freeColumn } from '../lists/free-column';
import { MADE_HEADINGS } from '../lists/made-headings';
import type { GroupList, ListSource } from '../lists/model';
import type { UnplacedGroup } from '../lists/read-groups';
import { cellChange } from './kept-cell';

export type Placed =
  /** It is left out of the plan: a dash for the day on which it goes into the rotation. */
  | 'out'
  /** It goes into the rotation on a day. */
  | Day
  /** It stands in this paddock. */
  | { readonly paddock: string };

/** A column for the day that is not there yet comes to the right edge of the list. */
export function unplacedCells(
  { tab, list }: ListSource<GroupList>,
  { row }: UnplacedGroup,
  placed: Placed,
): readonly CellChange[] {
  if (typeof placed === 'object') return [cellChange(tab, row, list.columns.paddock!, text(placed.paddock))];
  const own = list.columns.from;
  const column = own ?? freeColumn(tab, list);
  const typed = cellChange(tab, row, column, placed === 'out' ? text('-') : date(placed));
  if (own !== undefined) return [typed];
  return [cellChange(tab, list.headingRow, column, text(MADE_HEADINGS.from)), typed];
}
