/** Open dates of the grower's own paddock list, where a paddock is shut. */
import { BLANK, date, text } from '../../block/cells';
import { type Day, dayFromIso, isoFromDay } from '../../core/calendar/day';
import { freeColumn } from '../../lists/free-column';
import { MADE_HEADINGS } from '../../lists/made-headings';
import { nameKey } from '../../lists/read-list-cell';
import { keptCell } from '../kept-cell';
import type { FarmNow } from './farm-now';
import { type Happened, NotRecorded, type Typing } from './happened';
import { dayTyped, listedPaddock } from './moves-typed';

/**
 * The list has one stretch of days in which a paddock is open. So one end of it moves: the first day where the paddock is
 * shut already, the last where it stays shut to the end of the season.
 */
export function shutTyped(farm: FarmNow, happened: Happened): Typing[] {
  const paddock = listedPaddock(farm, happened.paddock);
  const source = farm.lists.sources.paddocks!;
  const { row } = paddock.cells.name!;
  const { field, day } = boundOf(farm, happened, paddock.name);
  const { tab, list } = source;
  const isThere = list.columns[field] !== undefined;
  const column = list.columns[field] ?? freeColumn(tab, list);
  const standing = keptCell(
    tab.values[row - 1]?.[column - 1] ?? '',
    tab.formulas[row - 1]?.[column - 1] ?? '',
  );
  const at = { tab: tab.name, column };
  const heading = { row: list.headingRow, before: BLANK, after: text(MADE_HEADINGS[field]) };
  return [
    ...(isThere ? [] : [{ what: 'A heading for your paddock list', cell: { ...at, ...heading } }]),
    {
      what: `${MADE_HEADINGS[field]} of ${paddock.name} in your paddock list`,
      cell: { ...at, row, before: standing.k === 'blank' ? BLANK : standing, after: date(day) },
    },
  ];
}

function boundOf(
  { today, settings: { rules }, cards }: FarmNow,
  happened: Happened,
  paddock: string,
): { readonly field: 'openFrom' | 'openUntil'; readonly day: Day } {
  const from = dayTyped(happened);
  const { until: typed = '' } = happened;
  const until = dayFromIso(typed);
  if (typed !== '' && (until === undefined || until < from))
    throw new NotRecorded(`The last day must be ${isoFromDay(from)} or later, got ${typed}.`, 'until');
  const there = cards.find(({ at, hasLeft }) => !hasLeft && at && nameKey(at.paddock) === nameKey(paddock));
  if (there && from <= today) {
    throw new NotRecorded(
      `${there.group} stands in ${paddock} since ${isoFromDay(there.at!.inDay!)}: record first where it went.`,
      'paddock',
    );
  }
  if (until === undefined || until >= rules.seasonEnd - 1) return { field: 'openUntil', day: from - 1 };
  if (from <= Math.max(today, rules.seasonStart)) return { field: 'openFrom', day: until + 1 };
  throw new NotRecorded(
    `Your paddock list has one stretch of open days, so a paddock cannot be shut in the middle of the season ahead of time. Leave the last day blank, or record it on ${isoFromDay(from)}.`,
    'until',
  );
}
