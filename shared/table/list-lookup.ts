import { fixedA1, quotedTab } from '../block/a1';
import { cellOnTab } from '../block/cell-on-tab';
import { isChanging } from '../block/changing-cells';
import { FIELD_QUANTITIES } from '../lists/headings';
import type { GroupField, GrowerList, ListSource, PaddockField } from '../lists/model';
import { farmUnit } from '../units/unit-words';
import type { UnitSystem } from '../units/units';

/** Characters that make a lookup see a pattern or a comparison instead of a name. */
const NOT_PLAIN = /[*?~]|^[=<>]/;

/**
 * A formula part that looks a field up in the grower's list by the name in `nameCell`, so that a correction in the
 * list reaches the table and sorting the list does no harm. Undefined where only a plain value is safe: the
 * name is not literally there or would be read as a pattern, the cell is not a plain number or date or could not be read, the column
 * is in another unit than the table or changes with NOW() or RAND() (a cell function refers to all of it, so that one such
 * cell would turn every row of an answer into an error), or the tab's name holds an apostrophe, which not every engine can refer to.
 */
export function listLookup(
  source: ListSource<GrowerList> | undefined,
  field: PaddockField | GroupField,
  name: string,
  nameCell: string,
  system: UnitSystem,
  /** Whether a blank is right in the table too: then a blank that is filled later counts at once. */
  mayBeBlank: boolean,
): string | undefined {
  if (!source || NOT_PLAIN.test(name) || source.list.tab.includes("'")) return undefined;
  const { tab, list } = source;
  const columns: Partial<Record<string, number>> = list.columns;
  const units: Partial<Record<string, string>> = list.units;
  const { name: nameColumn } = list.columns;
  const column = columns[field];
  const quantity = FIELD_QUANTITIES[field];
  if (nameColumn === undefined || column === undefined) return undefined;
  if (quantity && units[field] && units[field] !== farmUnit(quantity, system)) return undefined;
  // Never a range of one cell: the preview's engine mixes it up with a cell. The row above a list of one is its heading.
  const firstRow = list.lastRow > list.firstRow ? list.firstRow : list.firstRow - 1;
  const rows = tab.values.slice(firstRow - 1, list.lastRow);
  if (rows.some((_, i) => isChanging(tab, firstRow + i, column))) return undefined;
  const at = rows.findIndex((cells) => cells[nameColumn - 1] === name);
  const isFound = firstRow + at >= list.firstRow;
  const cell = isFound ? rows[at]?.[column - 1] : undefined;
  const fits = typeof cell === 'number' || typeof cell === 'object' || (cell === '' && mayBeBlank);
  if (!fits || source.unread?.includes(cellOnTab(list.tab, firstRow + at, column))) return undefined;
  const range = (letters: number): string =>
    `${quotedTab(list.tab)}!${fixedA1(firstRow, letters)}:${fixedA1(list.lastRow, letters)}`;
  return `INDEX(${range(column)};MATCH(${nameCell};${range(nameColumn)};0))`;
}

/**
 * A formula that shows `body` and nothing where what is looked up is blank: a bare look-up of a blank is a blank in one
 * spreadsheet and 0 in another, and a daily gain of 0 means "does not grow". Nothing for a name that is not in the list.
 */
export function ifFilled(lookup: string, body = lookup): string {
  return `=IFNA(IF(${lookup}="";"";${body});"")`;
}
