/**
 * Records of the groups, such as a diary of moves or a log of weighings: the same group on row after row, each with a day. They
 * are no list of groups, but the last that they say is how many there are, what they weigh and where they stand.
 */
import type { TabContent, WireCell } from '../contract';
import type { Day } from '../core/calendar/day';
import type { UnitSystem } from '../units/units';
import { type ClaimedHeading, claimedHeadings } from './choose-columns';
import { isAmountOf, isDate } from './column-content';
import { headingUnits } from './heading-unit';
import { headingsAt, joined } from './headings-at';
import { isBlankCell, listRows } from './list-rows';
import { meantName } from './meant-name';
import type { FoundList, GroupField, GroupList, ListSource } from './model';
import {
  cellOf,
  type DateHabits,
  hasCell,
  nameKey,
  nameOf,
  type RowReader,
  readAmount,
  readDay,
} from './read-list-cell';
import { untoldReaders } from './untold-readers';

/** Parts of the cells of a column that must be alike, and of the rows that may name a group anew. Judgement. */
const MOST = 0.6;
const MOST_NAMES = 0.75;
const FEWEST_ROWS = 3;
/** A group of which nothing was written for so long is taken to be gone. Judgement. */
const LONG_AGO_DAYS = 180;

/** The record whose headings stand in a row side by side with a column; undefined: what stands there is none. */
function groupRecord(
  tab: TabContent,
  headingRow: number,
  column: number,
  isPaddock: (text: string) => boolean,
): GroupList | undefined {
  const headings = claimedHeadings(tab, headingRow, joined(headingsAt(tab, headingRow), column));
  const cells = new Map(headings.map((one) => [one, cellsBelow(tab, headingRow, one.column)]));
  const are = (one: ClaimedHeading, is: (cell: WireCell) => boolean): boolean => {
    const own = cells.get(one)!;
    return own.length > 0 && own.filter(is).length >= MOST * own.length;
  };
  const isOf = ({ matches }: ClaimedHeading, field: GroupField): boolean =>
    matches.some((match) => match.kind === 'groups' && match.field === field);
  const days = headings.filter((one) => are(one, isDate));
  const texts = headings.filter(
    (one) => !days.includes(one) && !are(one, (cell) => isAmountOf(cell, 'weight')),
  );
  // Where the pigs went: "to" heads a place where no days stand below it.
  const places = texts.filter(
    (one) =>
      (isOf(one, 'paddock') && !isOf(one, 'name')) ||
      isOf(one, 'until') ||
      are(one, (cell) => isPaddock(String(cell))),
  );
  const others = texts.filter((one) => !places.includes(one) && !isOf(one, 'from'));
  const name = others.find((one) => isOf(one, 'name')) ?? others[0];
  const [day, out] = days;
  if (!name || !day || !comeAgain(cells.get(name)!)) return undefined;
  const amount = (field: 'head' | 'weight'): ClaimedHeading | undefined =>
    headings.find((one) => isOf(one, field) && are(one, (cell) => isAmountOf(cell, field)));
  const fields = { head: amount('head'), weight: amount('weight'), paddock: places[places.length - 1] };
  const taken = Object.entries({ name, weighedOn: day, until: out, ...fields }).filter(
    (one): one is [GroupField, ClaimedHeading] => one[1] !== undefined,
  );
  const columns = Object.fromEntries(taken.map(([field, one]) => [field, one.column]));
  const units = headingUnits(columns, (at) => headings.find((one) => one.column === at)?.text ?? '');
  const rows = listRows({ tab, row: headingRow, columns }, Infinity);
  return { kind: 'groups', tab: tab.name, headingRow, ...rows, columns, units };
}

/** The records that stand where lists of groups were found, each once. */
export function recordsAmong(
  lists: readonly FoundList[],
  tabOf: (list: FoundList) => TabContent | undefined,
  isPaddock: (text: string) => boolean,
): readonly ListSource<GroupList>[] {
  const records: ListSource<GroupList>[] = [];
  for (const list of lists) {
    const tab = tabOf(list);
    if (!tab || records.some((record) => isOfRecord(list, record.list))) continue;
    const record = groupRecord(tab, list.headingRow, list.columns.name ?? 1, isPaddock);
    if (record) records.push({ tab, list: record });
  }
  return records;
}

/** Whether a list is a record, or a part of one. */
export function isOfRecord({ tab, headingRow, columns }: FoundList, record: GroupList): boolean {
  const taken = Object.values(record.columns);
  const [first, last] = [Math.min(...taken), Math.max(...taken)];
  const name = (columns as { readonly name?: number }).name ?? 0;
  return tab === record.tab && headingRow === record.headingRow && name >= first && name <= last;
}

function cellsBelow(tab: TabContent, headingRow: number, column: number): readonly WireCell[] {
  const cells = tab.values.slice(headingRow).map((row) => row[column - 1] ?? '');
  return cells.filter((cell) => !isBlankCell(cell));
}

function comeAgain(cells: readonly WireCell[]): boolean {
  const names = new Set(cells.map((cell) => nameKey(String(cell))));
  return cells.length >= FEWEST_ROWS && names.size <= MOST_NAMES * cells.length;
}

/** The last that the records say of a group. */
export interface GatheredGroup {
  readonly name: string;
  readonly head?: number;
  readonly weightKg?: number;
  readonly weighedOn?: Day;
  readonly paddock?: string;
  readonly since?: Day;
}

type Last = { -readonly [Key in keyof GatheredGroup]: GatheredGroup[Key] | undefined } & {
  name: string;
  seen: Day;
  counted: Day;
};

/** The groups of the records that say how many there are or where they stand; those of long ago are left out. */
export function gatheredGroups(
  records: readonly ListSource<GroupList>[],
  system: UnitSystem,
  habits: { readonly comma: boolean; readonly dates: DateHabits },
): GatheredGroup[] {
  const last = new Map<string, Last>();
  const isFirst = ({ list: { columns } }: ListSource<GroupList>): boolean =>
    'head' in columns || 'paddock' in columns;
  for (const record of [...records].sort((a, b) => Number(isFirst(b)) - Number(isFirst(a))))
    for (const reader of untoldReaders(record, system, habits)) gather(last, reader, isFirst(record));
  const newest = Math.max(...[...last.values()].map(({ seen }) => seen));
  return [...last.values()]
    .filter(({ head, seen }) => head !== 0 && seen >= newest - LONG_AGO_DAYS)
    .map(({ seen: _, counted: __, ...group }) => group as GatheredGroup);
}

/** Takes what a row says over what was said before it. `mayBegin`: a group that is named here for the first time is one. */
function gather(last: Map<string, Last>, reader: RowReader, mayBegin: boolean): void {
  const { today = Infinity } = reader.dates;
  const day = hasCell(reader, 'weighedOn') ? readDay(reader, 'weighedOn') : undefined;
  if (day === undefined || day > today || !hasCell(reader, 'name')) return;
  const own = nameKey(nameOf(reader));
  const key = meantName(own, [...last.keys()]) ?? own;
  if (!last.has(key) && !mayBegin) return;
  const group = last.get(key) ?? { name: nameOf(reader), seen: day, counted: day };
  last.set(key, group);
  group.seen = Math.max(group.seen, day);
  const head = hasCell(reader, 'head') ? readAmount(reader, 'head', { min: 0, whole: true }) : undefined;
  if (head !== undefined && mayBegin && day >= group.counted) Object.assign(group, { head, counted: day });
  const weightKg = hasCell(reader, 'weight') ? readAmount(reader, 'weight', { above: 0 }) : undefined;
  if (weightKg !== undefined && day >= (group.weighedOn ?? day))
    Object.assign(group, { weightKg, weighedOn: day });
  if (!hasCell(reader, 'paddock') || day < (group.since ?? day)) return;
  const left = hasCell(reader, 'until') ? readDay(reader, 'until') : undefined;
  const isOut = left !== undefined && left <= today;
  const paddock = isOut ? undefined : String(cellOf(reader, 'paddock')).trim();
  Object.assign(group, { paddock, since: day });
}
