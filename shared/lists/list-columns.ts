/** Changes to a proposed list: another column for a field, or another row of headings. */
import { dateWords } from '../block/date-words';
import { isInArea } from '../block/is-in-area';
import type { Selection, TabContent } from '../contract';
import { plainNumber } from '../refusals';
import type { ListUnit } from '../units/unit-words';
import { findLists } from './find-lists';
import { headingUnit } from './heading-unit';
import { ownArea } from './list-area';
import { lyingLists } from './lying-lists';
import { missingFields } from './missing-fields';
import type { FoundList, GroupField, ListKind, PaddockField } from './model';
import { pointedList } from './pointed-list';
import * as words from './words';

type Field = PaddockField | GroupField;

/** The list with `column` taken for `field`; undefined: the list has no such column. */
export function withColumn(list: FoundList, field: Field, column: number | undefined): FoundList {
  const columns: Record<string, number> = { ...list.columns };
  const units: Record<string, ListUnit> = { ...list.units };
  delete units[field];
  if (column === undefined) delete columns[field];
  else {
    for (const [other, taken] of Object.entries(columns)) if (taken === column) delete columns[other];
    columns[field] = column;
    const unit = headingUnit(headingText(list, column), field);
    if (unit) units[field] = unit;
  }
  const missing = missingFields(list.kind, (name) => name in columns);
  const doubts = list.doubts?.filter((doubt) => doubt.field !== field);
  return { ...list, columns, units, missing, ...(doubts && { doubts }) } as FoundList;
}

export function headingText(list: FoundList, column: number): string {
  return list.headings.find((heading) => heading.column === column)?.text ?? '';
}

/** Headings that stand next to the taken ones, without a gap, and are read for nothing. */
export function unusedHeadings(list: FoundList): readonly string[] {
  const taken = Object.values(list.columns).filter((column) => column !== undefined);
  const known = new Set(list.headings.map(({ column }) => column));
  const joined = (column: number): boolean =>
    taken.some((other) => {
      const [from, to] = [Math.min(column, other), Math.max(column, other)];
      return Array.from({ length: to - from + 1 }, (_, i) => from + i).every((at) => known.has(at));
    });
  return list.headings
    .filter(({ column }) => !taken.includes(column) && joined(column))
    .map(({ text }) => text);
}

/** The list of which the grower selected a cell; throws, in words, where none can be told there. */
export function listFromSelection(
  kind: ListKind,
  selection: Selection,
  tab: TabContent | undefined,
): FoundList {
  const found = tab
    ? findLists([tab]).filter((one) => isInArea(ownArea(one), selection.row, selection.column))
    : [];
  const [lying] = tab && found.length === 0 ? lyingLists(kind, [tab], selection) : [];
  if (lying) throw new Error(lying);
  const list = found.find((one) => one.kind === kind) ?? (tab && pointedList(kind, tab, selection));
  if (list) return list;
  throw new Error(words.noHeadings(selection.a1, selection.tab));
}

/** What stands first in a column, to see whether it is the right one. */
export function firstOf(tab: TabContent | undefined, list: FoundList, column: number): string {
  const rows = tab?.values.slice(list.firstRow - 1, list.lastRow) ?? [];
  const cells = rows.map((row) => row[column - 1] ?? '').filter((cell) => cell !== '');
  const said = cells.slice(0, FIRST).map((cell) => {
    if (typeof cell === 'object') return dateWords(cell.d);
    return typeof cell === 'number' ? plainNumber(cell) : String(cell);
  });
  return said.join(' · ');
}

const FIRST = 3;
