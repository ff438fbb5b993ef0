import type { BlockInfo, TabContent } from '../contract';
import type { ListUnit } from '../units/unit-words';
import { endsList, type HeadingRow, isRowOfList, overlap, spanOf } from './below-a-list';
import { looksLike } from './column-content';
import { headingsAt, type Heading as PlainHeading } from './headings-at';
import { isBlankCell, listRows } from './list-rows';
import { type HeadingMatch, matchHeading, plainWords } from './match-heading';
import { missingFields } from './missing-fields';
import type { FoundList, GrowerList, ListKind } from './model';
import { meansOther } from './other-meanings';
import { otherTableBelow } from './other-table-below';
import { isOwnHeadings, withoutBlocks } from './own-headings';
import { passedOver } from './passed-over';
import { isWeighingLog } from './weighings';

/** A stretch of one row that reads like the headings of a list. */
interface Candidate extends HeadingRow {
  readonly kind: ListKind;
  readonly units: Record<string, ListUnit>;
  readonly missing: FoundList['missing'];
  readonly value: number;
}

interface Taken {
  readonly column: number;
  readonly text: string;
  readonly match: HeadingMatch;
}

interface Heading extends PlainHeading {
  readonly matches: readonly HeadingMatch[];
}

/**
 * Every plausible paddock and group list on the tabs, best first: complete ones before those that lack a
 * required column, then those with more known columns, then those of the latest year in their titles, then in the
 * order of tabs and rows.
 *
 * Several lists may stand side by side or one under another, with titles above, blank rows and columns
 * within and totals below. Our own blocks are passed over, save the map's paddock list,
 * and so are copies of our tables.
 */
export function findLists(tabs: readonly TabContent[], blocks: readonly BlockInfo[] = []): FoundList[] {
  const found = tabs.flatMap((tab) => {
    const own = blocks.filter((block) => block.tab === tab.name).map((block) => passedOver(tab, block));
    const values = tab.values.map((row, r) => withoutBlocks(row, r + 1, own));
    const outside = { ...tab, values: values.map((row) => (isOwnHeadings(row) ? [] : [...row])) };
    const candidates = withoutItems(values.flatMap((_, r) => headingsInRow(tab, outside, r + 1)));
    return candidates.map((candidate) => ({
      list: foundList(candidate, candidates, own),
      year: yearOf(candidate),
    }));
  });
  const isWeighed = found.some(({ list }) => isWeighingLog(list));
  return found
    .filter(({ list }) => list.items > 0)
    .map(({ list, year }, order) => ({ list: isWeighed ? withLog(list) : list, year, order }))
    .sort((a, b) => rank(b.list) - rank(a.list) || b.year - a.year || a.order - b.order)
    .map(({ list }) => list);
}

/** Rows of items that read like headings are none. */
function withoutItems(candidates: readonly Candidate[]): Candidate[] {
  const kept: Candidate[] = [];
  for (const one of candidates) if (!kept.some((above) => isRowOfList(one, above))) kept.push(one);
  return kept;
}

const YEAR = /\b20\d\d\b/g;
const ROWS_OF_TITLES = 3;

/** The latest year in the titles above a list and in the name of its tab; 0 where none stands there. */
function yearOf(candidate: Candidate): number {
  const { tab, row } = candidate;
  const [left, right] = spanOf(candidate);
  const above = tab.values.slice(Math.max(0, row - 1 - ROWS_OF_TITLES), row - 1);
  const titles = above
    .flatMap((cells) => cells.slice(left - 1, right))
    .filter((cell) => typeof cell === 'string');
  return Math.max(...[tab.name, ...titles].map(yearIn));
}

function yearIn(text: string): number {
  return Math.max(0, ...(text.match(YEAR) ?? []).map(Number));
}

/** A list of groups whose weights stand in a log lacks none. */
function withLog(list: FoundList): FoundList {
  if (list.kind !== 'groups' || isWeighingLog(list)) return list;
  return { ...list, missing: list.missing.filter((field) => field !== 'weight') };
}

function rank(list: FoundList): number {
  return Object.keys(list.columns).length - 100 * list.missing.length;
}

function headingsInRow(tab: TabContent, outside: TabContent, row: number): Candidate[] {
  if ((outside.values[row - 1] ?? []).filter((cell) => !isBlankCell(cell)).length < FEWEST_HEADINGS)
    return [];
  const headings = headingsAt(outside, row).map((one) => ({ ...one, matches: matchHeading(one.text) }));
  if (headings.filter((heading) => heading.matches.length > 0).length < FEWEST_HEADINGS) return [];
  return bestSplit(headings, (stretch) => candidateIn(tab, row, stretch));
}

/** One known word alone in a row is a title or a remark. */
const FEWEST_HEADINGS = 2;

/** Cuts the row into stretches so that their values add up to the most; dynamic programming from the left. */
function bestSplit(
  headings: readonly Heading[],
  judge: (stretch: readonly Heading[]) => Candidate | undefined,
): Candidate[] {
  const best: { value: number; lists: Candidate[] }[] = [{ value: 0, lists: [] }];
  for (let end = 1; end <= headings.length; end++) {
    let top = best[end - 1]!;
    for (let start = Math.max(0, end - MOST_HEADINGS); start < end; start++) {
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

/** Widest list looked for; keeps the work in bounds on very wide sheets. */
const MOST_HEADINGS = 24;
const COMPLETE = 1;
const INCOMPLETE = 0.6;
/** A blank column inside a list costs a little, so that two lists with a gap between them stay two. */
const GAP = 0.25;
/** A heading that only contains a known word counts for less than one that is it. */
const CONTAINED = 0.8;

function candidateIn(tab: TabContent, row: number, stretch: readonly Heading[]): Candidate | undefined {
  const choices = (['paddocks', 'groups'] as const).map((kind) => candidateOf(kind, tab, row, stretch));
  const [paddocks, groups] = choices;
  if (!paddocks || !groups) return paddocks ?? groups;
  return groups.value > paddocks.value ? groups : paddocks;
}

function candidateOf(
  kind: ListKind,
  tab: TabContent,
  row: number,
  stretch: readonly Heading[],
): Candidate | undefined {
  const taken = new Map<string, Taken>();
  for (const { column, matches, text } of stretch) {
    const match = matches.find((one) => one.kind === kind);
    if (!match) continue;
    const before = taken.get(match.field);
    const isBetter = match.strength > (before?.match.strength ?? 0);
    const isLater = match.strength === before?.match.strength && yearIn(text) > yearIn(before.text);
    if (isBetter || isLater) taken.set(match.field, { column, match, text });
  }
  takeByContent(kind, tab, row, stretch, taken);
  const ends = [stretch[0]!.column, stretch[stretch.length - 1]!.column] as const;
  const columns = [...taken.values()].map((one) => one.column);
  if (!taken.has('name') || !ends.every((column) => columns.includes(column))) return undefined;
  if (!namesKind(kind, stretch, taken)) return undefined;
  const missing = missingFields(kind, (field) => taken.has(field));
  if (taken.size < FEWEST_HEADINGS) return undefined;
  const fields = [...taken.values()].reduce(
    (sum, { match }) => sum + (match.strength === 2 ? 1 : Math.min(match.strength, CONTAINED)),
    0,
  );
  const gaps = Math.max(0, ends[1] - ends[0] + 1 - stretch.length);
  const years = [...taken.values()].reduce((sum, { text }) => sum + yearIn(text), 0);
  const value = LATER * years + (missing.length === 0 ? fields + COMPLETE : fields * INCOMPLETE) - GAP * gaps;
  const entries = [...taken];
  return {
    tab,
    kind,
    row,
    columns: Object.fromEntries(entries.map(([field, { column }]) => [field, column])),
    units: Object.fromEntries(
      entries.flatMap(([field, { match }]) => (match.unit ? [[field, match.unit] as const] : [])),
    ),
    missing,
    exact: [...taken.values()].filter(({ match }) => match.strength === 2).length,
    value,
  };
}

/** Fields that what stands in a column may tell, and what the words must have told before. */
const BY_CONTENT = {
  paddocks: [
    { field: 'name', after: [['area'], ['width', 'length']] },
    { field: 'area', after: [['name']] },
  ],
  groups: [
    {
      field: 'name',
      after: [
        ['head', 'weight'],
        ['weight', 'weighedOn'],
        ['head', 'weighedOn'],
      ],
    },
    { field: 'weight', after: [['name', 'head']] },
    { field: 'head', after: [['name', 'weight']] },
    { field: 'weighedOn', after: [['name', 'weight']] },
  ],
} as const;
/** A column known by what stands in it hardly counts, so that one known by its heading is never given up for it. */
const GUESSED = 0.1;
/** Of two columns that are alike, the one of the later year is taken, and decides nothing else. */
const LATER = 1e-6;

/** Adds the first column of unknown heading that looks like a field which the words did not tell. */
function takeByContent(
  kind: ListKind,
  tab: TabContent,
  row: number,
  stretch: readonly Heading[],
  taken: Map<string, Taken>,
): void {
  for (const { field, after } of BY_CONTENT[kind]) {
    const isKnown = after.some((fields) => fields.every((one) => taken.has(one)));
    if (!isKnown || taken.has(field) || (field === 'area' && taken.has('width') && taken.has('length')))
      continue;
    const free = stretch.filter(
      ({ matches, text }) => matches.length === 0 && !meansOther(field, plainWords(text)),
    );
    const used = new Set([...taken.values()].map((one) => one.column));
    // Names without a heading that says so stand before what is known of them.
    const isPlace = (column: number): boolean => field !== 'name' || column < Math.min(...used);
    const found = free.find(
      ({ column }) => !used.has(column) && isPlace(column) && looksLike(field, tab, row, column),
    );
    if (found)
      taken.set(field, { column: found.column, text: found.text, match: { kind, field, strength: GUESSED } });
  }
}

/** Whether anything in the stretch says which kind of list it is: "Name" and "From" do not. */
function namesKind(
  kind: ListKind,
  stretch: readonly Heading[],
  taken: ReadonlyMap<string, { column: number }>,
): boolean {
  const used = new Set([...taken.values()].map((one) => one.column));
  return stretch.some(({ column, matches }) => {
    if (!used.has(column) || matches.length === 0) return false;
    return (
      matches.length === 1 ||
      matches.find((one) => one.kind === kind)!.strength > otherStrength(kind, matches)
    );
  });
}

function otherStrength(kind: ListKind, matches: readonly HeadingMatch[]): number {
  return matches.find((one) => one.kind !== kind)?.strength ?? 0;
}

function foundList(candidate: Candidate, all: readonly Candidate[], own: readonly BlockInfo[]): FoundList {
  const { tab, kind, row, columns, units, missing } = candidate;
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
  return { ...list, headings: headingsAt(tab, row), missing, items: rows.items };
}
