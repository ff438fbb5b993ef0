import type { BlockInfo, TabContent, WireCell } from '../contract';
import { endsList, type HeadingRow, isRowOfList, overlap, spanOf } from './below-a-list';
import { listRows } from './list-rows';
import type { ListUnit } from './list-units';
import { type HeadingMatch, matchHeading } from './match-heading';
import { missingFields } from './missing-fields';
import type { FoundList, GrowerList, ListKind } from './model';
import { otherTableBelow } from './other-table-below';
import { isOwnHeadings, withoutBlocks } from './own-headings';
import { passedOver } from './passed-over';
import { isErrorWire } from './read-list-cell';

/** A stretch of one row that reads like the headings of a list. */
interface Candidate extends HeadingRow {
  readonly kind: ListKind;
  readonly units: Record<string, ListUnit>;
  readonly missing: FoundList['missing'];
  readonly value: number;
}

interface Heading {
  readonly column: number;
  readonly text: string;
  readonly matches: readonly HeadingMatch[];
}

/**
 * Every plausible paddock and group list on the tabs, best first: complete ones before those that lack a
 * required column, then those with more known columns, then in the order of tabs and rows.
 *
 * Several lists may stand side by side or one under another, with titles above, blank rows and columns
 * within and totals below. Our own blocks are passed over, save the map's paddock list,
 * and so are copies of our tables.
 */
export function findLists(tabs: readonly TabContent[], blocks: readonly BlockInfo[] = []): FoundList[] {
  const found = tabs.flatMap((tab) => {
    const own = blocks.filter((block) => block.tab === tab.name).map((block) => passedOver(tab, block));
    const candidates = withoutItems(tab.values.flatMap((row, r) => headingsInRow(tab, row, r + 1, own)));
    return candidates.map((candidate) => foundList(candidate, candidates, own));
  });
  return found
    .filter((list) => list.items > 0)
    .map((list, order) => ({ list, order }))
    .sort((a, b) => rank(b.list) - rank(a.list) || a.order - b.order)
    .map(({ list }) => list);
}

/** Rows of items that read like headings are none. */
function withoutItems(candidates: readonly Candidate[]): Candidate[] {
  const kept: Candidate[] = [];
  for (const one of candidates) if (!kept.some((above) => isRowOfList(one, above))) kept.push(one);
  return kept;
}

function rank(list: FoundList): number {
  return Object.keys(list.columns).length - 100 * list.missing.length;
}

function headingsInRow(
  tab: TabContent,
  row: readonly WireCell[],
  rowNumber: number,
  own: readonly BlockInfo[],
): Candidate[] {
  const outside = withoutBlocks(row, rowNumber, own);
  if (isOwnHeadings(outside)) return [];
  const headings = outside.flatMap((cell, c): Heading[] => {
    if (typeof cell !== 'string' || cell.trim() === '') return [];
    // "#NAME?" is no name.
    if (isErrorWire(cell)) return [];
    return [{ column: c + 1, text: cell, matches: matchHeading(cell) }];
  });
  if (headings.filter((heading) => heading.matches.length > 0).length < FEWEST_HEADINGS) return [];
  return bestSplit(headings, (stretch) => candidateIn(tab, rowNumber, stretch));
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
  const taken = new Map<string, { column: number; match: HeadingMatch }>();
  for (const { column, matches } of stretch) {
    const match = matches.find((one) => one.kind === kind);
    if (!match) continue;
    const before = taken.get(match.field);
    if (!before || match.strength > before.match.strength) taken.set(match.field, { column, match });
  }
  const ends = [stretch[0]!.column, stretch[stretch.length - 1]!.column] as const;
  const columns = [...taken.values()].map((one) => one.column);
  if (!taken.has('name') || !ends.every((column) => columns.includes(column))) return undefined;
  if (!namesKind(kind, stretch, taken)) return undefined;
  const missing = missingFields(kind, (field) => taken.has(field));
  if (taken.size < FEWEST_HEADINGS) return undefined;
  const fields = [...taken.values()].reduce(
    (sum, { match }) => sum + (match.strength === 2 ? 1 : CONTAINED),
    0,
  );
  const gaps = Math.max(0, ends[1] - ends[0] + 1 - stretch.length);
  const value = (missing.length === 0 ? fields + COMPLETE : fields * INCOMPLETE) - GAP * gaps;
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

/** Whether anything in the stretch says which kind of list it is: "Name" and "From" do not. */
function namesKind(
  kind: ListKind,
  stretch: readonly Heading[],
  taken: ReadonlyMap<string, { column: number }>,
): boolean {
  const used = new Set([...taken.values()].map((one) => one.column));
  return stretch.some(({ column, matches }) => {
    if (!used.has(column)) return false;
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
  return { ...list, headings: headingsNear(tab, row), missing, items: rows.items };
}

function headingsNear(tab: TabContent, row: number): FoundList['headings'] {
  return (tab.values[row - 1] ?? []).flatMap((cell, c) =>
    typeof cell === 'string' && cell.trim() !== '' ? [{ column: c + 1, text: cell.trim() }] : [],
  );
}
