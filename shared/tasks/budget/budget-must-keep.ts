import type { BlockContent } from '../../block/read-block';
import { ownTable, rowOfLabel, withoutOwn } from '../without-own';
import { LOAD_HEADINGS, MONTH_HEADINGS, SEASON_TITLE } from './budget-block';
import { STAY_HEADINGS } from './stay-columns';

/** What of a budget must not get lost: all but the sentences on top and what stands in its own tables. */
export function budgetMustKeep(old: BlockContent): BlockContent {
  return withoutOwn(old, [
    { firstRow: 0, endRow: rowOfLabel(old, SEASON_TITLE), columns: (column) => column === 0 },
    ownTable(old, MONTH_HEADINGS, MONTH_HEADINGS, 'On the ground'),
    ownTable(old, LOAD_HEADINGS, LOAD_HEADINGS.slice(0, -1), 'Settings'),
    ownTable(old, STAY_HEADINGS, STAY_HEADINGS),
  ]);
}
