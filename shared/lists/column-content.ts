/** What a column is by what stands in it, where the words of its heading do not tell. */
import type { TabContent, WireCell } from '../contract';
import { textNumber } from '../units/text-number';
import { LIST_UNITS, unitOfText } from '../units/unit-words';
import { FIELD_QUANTITIES } from './headings';
import { isBlankCell } from './list-rows';
import type { GroupField, PaddockField } from './model';
import { textDay } from './text-day';

/** Rows that are looked at, and the part of the cells that must agree. Judgement. */
const ROWS = 30;
const MOST = 0.8;
const FEWEST_NAMES = 2;
/** More pigs in one group than on nearly any pasture. Judgement. */
const LARGEST_HEAD = 2000;

const LOOKS: Readonly<Partial<Record<PaddockField | GroupField, (cells: readonly WireCell[]) => boolean>>> = {
  name: areNames,
  area: (cells) => most(cells, (cell) => hasUnitOf(cell, 'area')),
  weight: (cells) => most(cells, (cell) => hasUnitOf(cell, 'weight')),
  head: (cells) => most(cells, isHead),
  weighedOn: (cells) => most(cells, isDate),
  untilWeight: (cells) => most(cells, isNumber),
};

/** Whether the cells below a heading look like those of a field: distinct names, amounts with its unit, heads, dates. */
export function looksLike(
  field: PaddockField | GroupField,
  tab: TabContent,
  headingRow: number,
  column: number,
): boolean {
  const below = tab.values.slice(headingRow, headingRow + ROWS).map((row) => row[column - 1] ?? '');
  const cells = below.filter((cell) => !isBlankCell(cell));
  return cells.length > 0 && (LOOKS[field]?.(cells) ?? false);
}

function most(cells: readonly WireCell[], fits: (cell: WireCell) => boolean): boolean {
  return cells.filter(fits).length >= MOST * cells.length;
}

function areNames(cells: readonly WireCell[]): boolean {
  return (
    cells.length >= FEWEST_NAMES &&
    most(cells, isName) &&
    new Set(cells.map(String)).size >= MOST * cells.length
  );
}

function isName(cell: WireCell): boolean {
  return (
    typeof cell === 'string' && /\p{L}/u.test(cell) && textNumber(cell, true) === undefined && !isDate(cell)
  );
}

function isNumber(cell: WireCell): boolean {
  return typeof cell === 'number' || (typeof cell === 'string' && textNumber(cell, true) !== undefined);
}

function isHead(cell: WireCell): boolean {
  return typeof cell === 'number' && Number.isInteger(cell) && cell > 0 && cell <= LARGEST_HEAD;
}

export function isDate(cell: WireCell): boolean {
  return typeof cell === 'object' || (typeof cell === 'string' && textDay(cell, 'dmy', 0) !== undefined);
}

function hasUnitOf(cell: WireCell, field: 'area' | 'weight'): boolean {
  const typed = typeof cell === 'string' ? textNumber(cell, true) : undefined;
  const unit = typed && 'behind' in typed ? unitOfText(typed.behind, true) : undefined;
  return unit !== undefined && LIST_UNITS[unit].quantity === FIELD_QUANTITIES[field];
}
