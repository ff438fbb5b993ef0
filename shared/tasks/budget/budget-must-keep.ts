import type { BlockContent } from '../../block/read-block';
import { refuseTypedOver } from '../typed-over-cells';
import { ownTable, rowOfLabel, withoutOwn } from '../without-own';
import { LOAD_HEADINGS, MONTH_HEADINGS, SEASON_TITLE } from './budget-block';
import { STAY_HEADINGS } from './stay-columns';
import { typedOver } from './typed-over';

/**
 * What of a budget must not get lost: all but the sentences on top and what stands in its own tables.
 *
 * Throws, with the cells, where a value was typed over a formula: a new budget would set the formula again, and the
 * same number elsewhere in it would make the typed one look kept.
 */
export function budgetMustKeep(old: BlockContent): BlockContent {
  const { surely, perhaps } = typedOver(old);
  refuseTypedOver(old, surely);
  const less = withoutOwn(old, [
    { firstRow: 0, endRow: rowOfLabel(old, SEASON_TITLE), columns: (column) => column === 0 },
    ownTable(old, MONTH_HEADINGS, MONTH_HEADINGS, 'On the ground'),
    ownTable(old, LOAD_HEADINGS, LOAD_HEADINGS.slice(0, -1), 'Settings'),
    ownTable(old, STAY_HEADINGS, STAY_HEADINGS),
  ]);
  const doubtful = new Set(perhaps.map(String));
  const values = less.values.map((row, r) =>
    row.map((value, c) => (doubtful.has(String([r, c])) ? (old.values[r]?.[c] ?? '') : value)),
  );
  return { ...less, values };
}
