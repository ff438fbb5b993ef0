/** Changes to a proposed list: another column for a field, or another row of headings. */
import type { Selection, TabContent } from '../../../shared/contract';
import { headingUnit } from '../../../shared/lists/heading-unit';
import type { ListUnit } from '../../../shared/lists/list-units';
import { matchHeading } from '../../../shared/lists/match-heading';
import { missingFields } from '../../../shared/lists/missing-fields';
import type { FoundList, GroupField, ListKind, PaddockField } from '../../../shared/lists/model';

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
  return { ...list, columns, units, missing } as FoundList;
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

/** A list whose heading row the grower pointed at. Columns are taken where the words are known. */
export function listFromSelection(kind: ListKind, selection: Selection, tab: TabContent): FoundList {
  const cells = tab.values[selection.row - 1] ?? [];
  const headings = cells.flatMap((cell, c) =>
    typeof cell === 'string' && cell.trim() !== '' ? [{ column: c + 1, text: cell.trim() }] : [],
  );
  const bare = {
    kind,
    tab: tab.name,
    headingRow: selection.row,
    firstRow: selection.row + 1,
    lastRow: tab.values.length,
    columns: {},
    units: {},
    headings,
    missing: [],
    items: 0,
  } as unknown as FoundList;
  return headings.reduce(
    (list, { column, text }) => {
      const field = matchHeading(text).find((match) => match.kind === kind)?.field;
      return field && !(field in list.columns) ? withColumn(list, field, column) : list;
    },
    withColumn(bare, 'name', undefined),
  );
}
