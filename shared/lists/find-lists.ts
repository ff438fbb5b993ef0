import { oncePer } from '../block/once-per';
import type { BlockInfo, TabContent } from '../contract';
import { civilFromDay } from '../core/calendar/day';
import type { ListUnit } from '../units/unit-words';
import { endsList, type HeadingRow, isRowOfList, overlap, spanOf } from './below-a-list';
import { type ClaimedHeading, chooseColumns, claimedHeadings, GUESSED, unitsOf } from './choose-columns';
import { dayMeant, hasTwins, namesRepeat } from './column-content';
import { headingsAt } from './headings-at';
import { COLUMNS_APART } from './list-area';
import { isBlankCell, listRows } from './list-rows';
import { type HeadingMatch, matchHeading } from './match-heading';
import { missingFields } from './missing-fields';
import type { Doubt, FoundList, GrowerList, ListKind } from './model';
import { otherTableBelow } from './other-table-below';
import { isOwnHeadings, withoutBlocks } from './own-headings';
import { passedOver } from './passed-over';
import { asWeighingLog, isAbout, isLogOf, isWeighingLog } from './weighings';
import { yearIn } from './year-in';

/** A stretch of one row that reads like the headings of a list. */
interface Candidate extends HeadingRow {
  readonly kind: ListKind;
  readonly units: Record<string, ListUnit>;
  readonly missing: FoundList['missing'];
  readonly doubts: readonly Doubt[];
  /** Its names come again and again: days of weighing, moves or bills. */
  readonly isLog: boolean;
  readonly value: number;
}

/**
 * Every plausible paddock and group list on the tabs, best first: lists before logs, complete ones before those that lack a
 * required column, then those of the latest year in their titles, then those with more known columns, then in the
 * order of tabs and rows.
 *
 * Several lists may stand side by side or one under another, with titles above, blank rows and columns
 * within and totals below. Our own blocks are passed over, save the map's paddock list,
 * and so are copies of our tables.
 */
export function findLists(
  tabs: readonly TabContent[],
  blocks: readonly BlockInfo[] = [],
  /** The day on which the file was read: what lies ahead was not weighed. */
  today?: number,
): FoundList[] {
  const found = tabs.flatMap((tab) =>
    listsOn(
      tab,
      blocks.filter((block) => block.tab === tab.name),
      today,
    ),
  );
  const bare = found.filter(({ list }) => list.kind === 'groups' && list.missing.join() === 'weight');
  const parted = found.map((one) => ({
    ...one,
    list: bare.some((other) => isLogOf(other, one)) ? asWeighingLog(one.list) : one.list,
  }));
  const logs = parted.filter(({ list }) => isWeighingLog(list));
  const items = parted.filter(({ list }) => list.items > 0);
  const latest = Math.max(0, ...items.map(({ title }) => title));
  return items
    .map(({ list, title, tab, isLog }, order) => {
      // A list of no year may be of any: it stands with the latest, and above it where its days are later.
      const beside = latest && Math.max(latest, yearOfDays(tab, list, today));
      return {
        list: logs.some((log) => isAbout({ tab, list }, log)) ? withLog(list) : list,
        year: title || beside,
        title,
        isLog,
        order,
      };
    })
    .sort(
      (a, b) =>
        Number(a.isLog) - Number(b.isLog) ||
        a.list.missing.length - b.list.missing.length ||
        b.year - a.year ||
        known(b.list) - known(a.list) ||
        b.title - a.title ||
        a.order - b.order,
    )
    .map(({ list }) => list);
}

/** What one tab holds: the others may be read anew and this one stay as it was. */
const listsOn = oncePer((tab: TabContent, blocks: readonly BlockInfo[], today: number | undefined) => {
  const own = blocks.map((block) => passedOver(tab, block));
  const values = tab.values.map((row, r) => withoutBlocks(row, r + 1, own));
  const outside = { ...tab, values: values.map((row) => (isOwnHeadings(row) ? [] : [...row])) };
  const candidates = withoutItems(values.flatMap((_, r) => headingsInRow(tab, outside, r + 1, today)));
  return candidates.map((candidate) => ({
    list: foundList(candidate, candidates, own),
    title: yearOfTitle(candidate),
    isLog: candidate.isLog,
    tab,
  }));
});

/** Rows of items that read like headings are none. */
function withoutItems(candidates: readonly Candidate[]): Candidate[] {
  const kept: Candidate[] = [];
  for (const one of candidates) if (!kept.some((above) => isRowOfList(one, above))) kept.push(one);
  return kept;
}

const ROWS_OF_TITLES = 3;

/** The latest year in the titles above a list and in the name of its tab; 0 where none stands there. */
function yearOfTitle(candidate: Candidate): number {
  const { tab, row } = candidate;
  const [left, right] = spanOf(candidate);
  const above = tab.values.slice(Math.max(0, row - 1 - ROWS_OF_TITLES), row - 1);
  const titles = above
    .flatMap((cells) => cells.slice(left - 1, right))
    .filter((cell) => typeof cell === 'string');
  return Math.max(...[tab.name, ...titles].map(yearIn));
}

/** The latest year of the days in a list, those without a year and those to come left out; 0 where none stands there. */
function yearOfDays(tab: TabContent, { firstRow, lastRow, columns }: FoundList, today = Infinity): number {
  const rows = tab.values.slice(firstRow - 1, lastRow);
  const cells = rows.flatMap((row) => Object.values(columns).map((column) => row[column - 1] ?? ''));
  const days = cells.flatMap((cell) => dayMeant(cell, undefined) ?? []).filter((day) => day <= today);
  return Math.max(0, ...days.map((day) => civilFromDay(day).year));
}

/** A list of groups whose weights stand in a log lacks none. */
function withLog(list: FoundList): FoundList {
  if (list.kind !== 'groups' || isWeighingLog(list)) return list;
  return { ...list, missing: list.missing.filter((field) => field !== 'weight') };
}

function known({ columns }: FoundList): number {
  return Object.keys(columns).length;
}

function headingsInRow(
  tab: TabContent,
  outside: TabContent,
  row: number,
  today: number | undefined,
): Candidate[] {
  if ((outside.values[row - 1] ?? []).filter((cell) => !isBlankCell(cell)).length < FEWEST_HEADINGS)
    return [];
  const bare = headingsAt(outside, row);
  if (bare.length < FEWEST_HEADINGS) return [];
  const headings = claimedHeadings(outside, row, bare, today);
  const known = headings.flatMap(({ text, claims }) => (claims.length > 0 ? [matchHeading(text)] : []));
  // Areas with their unit need no second heading that is known.
  if (known.length < FEWEST_HEADINGS && known.every((matches) => matches.length > 0)) return [];
  return bestSplit(headings, (stretch) => candidateIn(tab, row, stretch, today));
}

/** One known word alone in a row is a title or a remark. */
const FEWEST_HEADINGS = 2;

/** Cuts the row into stretches so that their values add up to the most; dynamic programming from the left. */
function bestSplit(
  headings: readonly ClaimedHeading[],
  judge: (stretch: readonly ClaimedHeading[]) => Candidate | undefined,
): Candidate[] {
  const best: { value: number; lists: Candidate[] }[] = [{ value: 0, lists: [] }];
  for (let end = 1; end <= headings.length; end++) {
    let top = best[end - 1]!;
    for (let start = Math.max(0, end - MOST_HEADINGS); start < end; start++) {
      if (isFarApart(headings.slice(start, end))) continue;
      const list = judge(headings.slice(start, end));
      const before = best[start]!;
      if (list && before.value + list.value > top.value) {
        top = { value: before.value + list.value, lists: [...before.lists, list] };
      }
    }
    best.push(top);
  }
  return best[headings.length]!.lists;
}

/** Headings that stand further apart are those of two lists. */
function isFarApart(headings: readonly ClaimedHeading[]): boolean {
  return headings.some(({ column }, i) => i > 0 && column - headings[i - 1]!.column > COLUMNS_APART);
}

/** Widest list looked for; keeps the work in bounds on very wide sheets. */
const MOST_HEADINGS = 24;
const COMPLETE = 1;
const INCOMPLETE = 0.6;
/** A blank column inside a list costs a little, so that two lists with a gap between them stay two. */
const GAP = 0.25;
/** So does a heading that is not known: of two cuts that are alike, the one beside it is taken. */
const UNKNOWN = 0.01;
/** Names of paddocks that stand twice are rather what grows there. */
const TWINS = 0.25;
/** A column that may be a field as well as the one that was taken belongs to the list. */
const RIVAL = 1e-5;
/** A heading that only contains a known word counts for less than one that is it. */
const CONTAINED = 0.8;

function candidateIn(
  tab: TabContent,
  row: number,
  stretch: readonly ClaimedHeading[],
  today: number | undefined,
): Candidate | undefined {
  const choices = (['paddocks', 'groups'] as const).map((kind) =>
    candidateOf(kind, tab, row, stretch, today),
  );
  const [paddocks, groups] = choices;
  if (!paddocks || !groups) return paddocks ?? groups;
  return groups.value > paddocks.value ? groups : paddocks;
}

function candidateOf(
  kind: ListKind,
  tab: TabContent,
  row: number,
  stretch: readonly ClaimedHeading[],
  today: number | undefined,
): Candidate | undefined {
  const { taken, doubts } = chooseColumns(kind, tab, row, stretch, { today });
  const ends = [stretch[0]!.column, stretch[stretch.length - 1]!.column] as const;
  const columns = [...taken.values()].map((one) => one.column);
  const rivals = stretch.filter(
    ({ column, claims }) => !columns.includes(column) && claims.some((claim) => claim.kind === kind),
  );
  const isOfList = (column: number): boolean =>
    columns.includes(column) || rivals.some((one) => one.column === column);
  if (!taken.has('name') || !ends.every(isOfList)) return undefined;
  if (!namesKind(kind, stretch, taken)) return undefined;
  if (taken.size < FEWEST_HEADINGS) return undefined;
  // Names that come again and again are those of a log: its heads are how many were weighed.
  const isLog = kind === 'groups' && namesRepeat(tab, row, taken.get('name')!.column);
  const own = [...taken]
    .filter(([field]) => !(isLog && field === 'head'))
    .sort(([, a], [, b]) => a.column - b.column);
  const missing = missingFields(kind, (field) => own.some(([one]) => one === field));
  const fields = own.reduce(
    (sum, [, { strength }]) => sum + (strength === EXACT ? 1 : Math.min(strength, CONTAINED)),
    0,
  );
  const gaps = Math.max(0, ends[1] - ends[0] + 1 - stretch.length);
  const unknown = stretch.filter(({ matches }) => matches.length === 0).length;
  // A guess does not make one whole list of two that stand apart.
  const isByGuess = gaps > 0 && own.some(([, { strength }]) => strength === GUESSED);
  const years = own.reduce((sum, [, { text }]) => sum + yearIn(text), 0);
  const value =
    LATER * years +
    (missing.length === 0 && !isByGuess ? fields + COMPLETE : fields * INCOMPLETE) -
    GAP * gaps -
    UNKNOWN * unknown -
    (kind === 'paddocks' && hasTwins(tab, row, taken.get('name')!.column) ? TWINS : 0) +
    RIVAL * rivals.length;
  return {
    tab,
    kind,
    row,
    columns: Object.fromEntries(own.map(([field, { column }]) => [field, column])),
    units: unitsOf(new Map(own)),
    missing,
    doubts,
    isLog,
    exact: own.filter(([, { strength }]) => strength === EXACT).map(([, { column }]) => column),
    value,
  };
}

/** The heading is one of the words, and nothing else. */
const EXACT = 2;

/** Of two columns that are alike, the one of the later year is taken, and decides nothing else. */
const LATER = 1e-6;

/** Whether anything in the stretch says which kind of list it is: "Name" and "From" do not. */
function namesKind(
  kind: ListKind,
  stretch: readonly ClaimedHeading[],
  taken: ReadonlyMap<string, { column: number }>,
): boolean {
  const used = new Set([...taken.values()].map((one) => one.column));
  return stretch.some(({ column, matches }) => {
    return (
      used.has(column) &&
      strengthOf(kind, matches) > strengthOf(kind === 'groups' ? 'paddocks' : 'groups', matches)
    );
  });
}

function strengthOf(kind: ListKind, matches: readonly HeadingMatch[]): number {
  return Math.max(0, ...matches.filter((one) => one.kind === kind).map(({ strength }) => strength));
}

function foundList(candidate: Candidate, all: readonly Candidate[], own: readonly BlockInfo[]): FoundList {
  const { tab, kind, row, columns, units, missing, doubts } = candidate;
  const [left, right] = spanOf(candidate);
  const below = all.filter(
    (other) => other.row > row && (overlap(other, candidate) || endsList(candidate, other)),
  );
  const other = otherTableBelow(candidate) ?? Infinity;
  const isOfAList = all.some((one) => one.row === other);
  const stops = [
    ...(isOfAList ? [] : [other]),
    ...below.map((other) => other.row),
    ...own.filter((b) => b.row > row && b.column <= right && b.column + b.columns > left).map((b) => b.row),
  ];
  const rows = listRows(candidate, Math.min(...stops, Infinity));
  const list = { kind, tab: tab.name, headingRow: row, columns, units, ...rows } as unknown as GrowerList;
  return { ...list, headings: headingsAt(tab, row), missing, doubts, items: rows.items };
}
