/**
 * Which list a table was made from, in cells of the table, so that a rebuild finds the same one again: by its tab and the
 * words of its headings, wherever it stands by then and whatever other lists have come into the file.
 */
import { columnLetters } from '../block/a1';
import { text } from '../block/cells';
import { columnNumber } from '../block/column-number';
import type { BlockContent } from '../block/read-block';
import type { BlockCell, WireCell } from '../contract';
import { LIST_UNITS, type ListUnit } from '../units/unit-words';
import { GROUP_FIELDS, type GrowerList, type ListKind, PADDOCK_FIELDS } from './model';

export const MEMORY_LABELS: Readonly<Record<ListKind, string>> = {
  paddocks: 'Paddock list',
  groups: 'Group list',
};

/** "headings in row 1, list in rows 2 to 9". */
export function rowsOfList({ headingRow, firstRow, lastRow }: GrowerList): string {
  return `headings in row ${headingRow}, list in rows ${firstRow} to ${lastRow}`;
}

/** "area = C, ac: Acres" for each column. */
export function fieldsOfList(list: GrowerList): string[] {
  const units: Partial<Record<string, string>> = list.units;
  const texts: Partial<Record<string, string>> = list.texts ?? {};
  return Object.entries(list.columns).map(([field, column]) => {
    const unit = units[field];
    const heading = texts[field];
    const said = heading ? `: ${heading}` : '';
    return `${field} = ${columnLetters(column)}${unit ? `, ${unit}` : ''}${said}`;
  });
}

const FIELD = /^(\w+) = ([A-Z]+)(?:, ([^:]+))?(?:: ([\s\S]*))?$/;
const ROWS = /row (\d+).*rows (\d+) to (\d+)/;

/** The list that such words describe; what cannot be read is left out, for the list is looked for anew anyway. */
export function listOfWords(
  kind: ListKind,
  tab: string,
  rows: string,
  fields: readonly string[],
): GrowerList | undefined {
  const at = ROWS.exec(rows);
  if (!at) return undefined;
  const columns: Record<string, number> = {};
  const units: Record<string, ListUnit> = {};
  const texts: Record<string, string> = {};
  const known: readonly string[] = kind === 'paddocks' ? PADDOCK_FIELDS : GROUP_FIELDS;
  for (const words of fields) {
    const [, field, letters, unit, heading] = FIELD.exec(words) ?? [];
    if (field === undefined || letters === undefined || !known.includes(field)) continue;
    columns[field] = columnNumber(letters);
    if (heading !== undefined) texts[field] = heading;
    if (unit !== undefined && unit in LIST_UNITS) units[field] = unit as ListUnit;
  }
  return {
    kind,
    tab,
    headingRow: Number(at[1]),
    firstRow: Number(at[2]),
    lastRow: Number(at[3]),
    columns,
    units,
    ...(Object.keys(texts).length > 0 && { texts }),
  } as GrowerList;
}

const BETWEEN = '; ';
const PLACE = /^“([\s\S]*)”, (headings in row \d[\s\S]*)$/;

/** A row of a table that remembers the list: label, place, columns. */
export function memoryRow(list: GrowerList): BlockCell[] {
  return [
    text(MEMORY_LABELS[list.kind]),
    text(`“${list.tab}”, ${rowsOfList(list)}`),
    text(fieldsOfList(list).join(BETWEEN)),
  ];
}

/** The list that a table remembers; undefined where it remembers none. */
export function rememberedList<Kind extends ListKind>(
  { values }: BlockContent,
  kind: Kind,
): Extract<GrowerList, { kind: Kind }> | undefined {
  const row = values.find(([label, place]) => label === MEMORY_LABELS[kind] && isListMemory(place ?? ''));
  const [, tab, rows] = PLACE.exec(String(row?.[1] ?? '')) ?? [];
  if (tab === undefined || rows === undefined) return undefined;
  const fields = String(row?.[2] ?? '').split(BETWEEN);
  const list = listOfWords(kind, tab, rows, fields) as Extract<GrowerList, { kind: Kind }> | undefined;
  // Where its columns were typed over, nothing is left to know it by.
  return list?.columns.name === undefined ? undefined : list;
}

/** Whether a cell holds words of such a row, label aside. */
export function isListMemory(value: WireCell): boolean {
  return typeof value === 'string' && (PLACE.test(value) || FIELD.test(value));
}
