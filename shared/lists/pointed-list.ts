/** A list that the grower points at with one of its cells: its headings, extent and columns as far as they can be told. */
import type { TabContent } from '../contract';
import { chooseColumns, claimedHeadings } from './choose-columns';
import { looksLike } from './column-content';
import { headingUnits } from './heading-unit';
import { type Heading, headingsAt, joined } from './headings-at';
import { isBlankCell, listRows } from './list-rows';
import { matchHeading } from './match-heading';
import { missingFields } from './missing-fields';
import type { CellPlace, FoundList, ListKind } from './model';
import { otherTableBelow } from './other-table-below';

/** A gap of more rows than this is not inside a list. Judgement. */
const LARGEST_GAP = 2;

/** Undefined where no row of headings stands at the cell or above it. */
export function pointedList(kind: ListKind, tab: TabContent, at: CellPlace): FoundList | undefined {
  const headingRow = headingRowAt(tab, at);
  return headingRow === undefined ? undefined : listUnder(kind, tab, headingRow, at.column);
}

/** The list with its headings in that row, side by side with that of a column. */
export function listUnder(kind: ListKind, tab: TabContent, headingRow: number, column: number): FoundList {
  const headings = headingsAt(tab, headingRow);
  const near = joined(headings, column);
  const { columns, doubts } = columnsIn(kind, tab, headingRow, near);
  const textOf = (at: number): string => near.find((heading) => heading.column === at)?.text ?? '';
  const units = headingUnits(columns, textOf);
  const missing = missingFields(kind, (field) => field in columns);
  const bare = { kind, tab: tab.name, headingRow, columns, units, headings, missing, doubts };
  return withRows({ ...bare, firstRow: headingRow + 1, lastRow: headingRow + 1, items: 0 } as FoundList, tab);
}

/** The list with the rows that it takes as the tab stands now. */
export function withRows(list: FoundList, tab: TabContent): FoundList {
  const under = { tab, row: list.headingRow, columns: list.columns };
  if (Object.keys(list.columns).length === 0) return { ...list, lastRow: tab.values.length };
  return { ...list, ...listRows(under, otherTableBelow(under) ?? Infinity) };
}

/** The nearest row of words, at or above the cell, that known headings stand in; else the nearest of words. */
function headingRowAt(tab: TabContent, { row, column }: CellPlace): number | undefined {
  let words: number | undefined;
  for (let at = row, gap = 0; at > 0 && gap <= LARGEST_GAP; at--) {
    const cells = tab.values[at - 1] ?? [];
    gap = cells.every(isBlankCell) ? gap + 1 : 0;
    const near = joined(headingsAt(tab, at), column);
    const filled = cells.filter((cell, c) => !isBlankCell(cell) && near.some((one) => one.column === c + 1));
    if (near.length < 2 || filled.some((cell) => typeof cell !== 'string' || /^\s*[+-]?\d/.test(cell)))
      continue;
    if (near.filter(({ text }) => matchHeading(text).length > 0).length >= 2) return at;
    words ??= at;
  }
  return words;
}

/** The columns among the headings; the grower sees and may change them. */
function columnsIn(kind: ListKind, tab: TabContent, row: number, headings: readonly Heading[]) {
  const claimed = claimedHeadings(tab, row, headings);
  const { taken, doubts } = chooseColumns(kind, tab, row, claimed, { isPointed: true });
  const columns = Object.fromEntries([...taken].map(([field, { column }]) => [field, column]));
  // One column of numbers that is left can only be what is still missing.
  const used = Object.values(columns);
  const numbers = headings.filter(
    ({ column }) => !used.includes(column) && looksLike('untilWeight', tab, row, column),
  );
  const [field] = missingFields(kind, (one) => one in columns);
  const [only] = numbers;
  if (field && field !== 'name' && only && numbers.length === 1) columns[field] = only.column;
  return { columns, doubts };
}
