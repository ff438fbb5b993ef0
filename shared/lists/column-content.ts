/** What a column is by what stands in it, where the words of its heading do not tell. */
import type { TabContent, WireCell } from '../contract';
import type { Day } from '../core/calendar/day';
import { textNumber } from '../units/text-number';
import { LIST_UNITS, unitOfText } from '../units/unit-words';
import { fitting } from './heading-unit';
import { FIELD_QUANTITIES } from './headings';
import { isBlankCell } from './list-rows';
import type { GroupField, PaddockField } from './model';
import { dayIn, isErrorWire, withoutRemark } from './read-list-cell';
import { SIDES } from './sides';
import { textDay } from './text-day';

/** Rows that are looked at, and the part of the cells that must agree. Judgement. */
const ROWS = 30;
const MOST = 0.8;
const FEWEST_NAMES = 2;
/** More pigs in one group than on nearly any pasture. Judgement. */
const LARGEST_HEAD = 2000;

/** What cells say of a field: most are such, none is, or nothing clear. */
export type Fit = 'fits' | 'open' | 'contradicts';

const LOOKS: Readonly<Partial<Record<PaddockField | GroupField, (cells: readonly WireCell[]) => boolean>>> = {
  name: areNames,
  area: (cells) => most(cells, (cell) => hasUnitOf(cell, 'area') || isTwoSides(cell)),
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
  today?: number,
): boolean {
  const cells = cellsBelow(tab, headingRow, column);
  if (field === 'weighedOn' && today !== undefined && cells.some((cell) => isAfter(cell, today)))
    return false;
  return cells.length > 0 && (LOOKS[field]?.(cells) ?? false);
}

/** What each field holds, for a column whose heading may stand for it. */
const HOLDS: Readonly<Partial<Record<PaddockField | GroupField, (cell: WireCell) => boolean>>> = {
  ...Object.fromEntries(
    ['area', 'width', 'length', 'restDays', 'fenceLength', 'head', 'weight', 'untilWeight', 'dailyGain'].map(
      (field) => [field, (cell: WireCell) => isAmountOf(cell, field as PaddockField | GroupField)],
    ),
  ),
  ...Object.fromEntries(
    ['openUntil', 'shutFrom', 'shutUntil', 'lastUsed', 'weighedOn', 'from', 'since'].map((field) => [
      field,
      isDate,
    ]),
  ),
  until: (cell) => isDate(cell) || isAmountOf(cell, 'weight'),
  name: (cell) => !isDate(cell),
  paddock: (cell) => !isDate(cell),
};
/** One cell may be a slip; two that are no such thing are no slip. Judgement. */
const FEWEST_AGAINST = 2;
/** Days of which all lie ahead are none on which something was last used or weighed. */
const PAST: readonly string[] = ['lastUsed', 'weighedOn', 'since'];

/** Whether what stands in a column speaks for or against a field. */
export function fitOf(
  field: PaddockField | GroupField,
  tab: TabContent,
  headingRow: number,
  column: number,
  today?: number,
): Fit {
  const holds = HOLDS[field];
  const cells = cellsBelow(tab, headingRow, column);
  if (!holds || cells.length === 0) return 'open';
  const isAhead = (cell: WireCell): boolean => today !== undefined && isAfter(cell, today);
  if (PAST.includes(field) && cells.some(isAhead)) return cells.every(isAhead) ? 'contradicts' : 'open';
  if (cells.some(holds)) return most(cells, holds) ? 'fits' : 'open';
  return cells.length >= FEWEST_AGAINST ? 'contradicts' : 'open';
}

/** Fewer may be a slip. Judgement. */
const FEWEST_IN_LOG = 4;

/** Whether the names of a column come again and again, as in a log. */
export function namesRepeat(tab: TabContent, headingRow: number, column: number): boolean {
  const cells = cellsBelow(tab, headingRow, column).filter((cell) => !isDate(cell));
  const names = cells.map(String);
  return names.length >= FEWEST_IN_LOG && 2 * new Set(names).size <= names.length;
}

/** Whether a name stands twice in a column. */
export function hasTwins(tab: TabContent, headingRow: number, column: number): boolean {
  const names = cellsBelow(tab, headingRow, column).map(String);
  return new Set(names).size < names.length;
}

/** What stands below a heading, down to a gap with a title or headings under it. An error tells nothing of its column. */
function cellsBelow(tab: TabContent, headingRow: number, column: number): readonly WireCell[] {
  const rows = tab.values.slice(headingRow, headingRow + ROWS);
  const first = rows.findIndex((row) => !row.every(isBlankCell));
  const isGap = (row: readonly WireCell[]): boolean => row.every(isBlankCell);
  const areWords = (row: readonly WireCell[] | undefined): boolean =>
    row?.every((cell) => isBlankCell(cell) || isName(cell)) ?? true;
  const end = rows.findIndex((row, r) => r > first && isGap(row) && areWords(rows[r + 1]));
  return rows
    .slice(0, end < 0 ? ROWS : end)
    .map((row) => row[column - 1] ?? '')
    .filter((cell) => !isBlankCell(cell) && !isErrorWire(cell));
}

/** A number alone, or with a unit of the field behind it. */
export function isAmountOf(cell: WireCell, field: PaddockField | GroupField): boolean {
  if (typeof cell === 'number') return true;
  const typed = typeof cell === 'string' ? textNumber(withoutRemark(cell), true) : undefined;
  if (!typed || isDate(cell)) return false;
  const unit = unitOfText(typed.behind, true);
  return (
    typed.behind === '' ||
    field === 'head' ||
    (unit !== undefined && fitting(unit, FIELD_QUANTITIES[field] ?? 'time', '') !== undefined)
  );
}

/** The day in a date cell or in a text; without `today` only one that names its year. */
export function dayMeant(cell: WireCell, today: Day | undefined): Day | undefined {
  const text = typeof cell === 'string' ? textDay(cell, 'dmy', today) : undefined;
  return dayIn(cell) ?? (text && 'first' in text ? text.first : undefined);
}

function isAfter(cell: WireCell, today: Day): boolean {
  return (dayMeant(cell, today) ?? -Infinity) > today;
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

function isTwoSides(cell: WireCell): boolean {
  return typeof cell === 'string' && /^\d/.test(cell) && SIDES.test(cell);
}

function hasUnitOf(cell: WireCell, field: 'area' | 'weight'): boolean {
  const typed = typeof cell === 'string' ? textNumber(withoutRemark(cell), true) : undefined;
  const unit = typed && 'behind' in typed ? unitOfText(typed.behind, true) : undefined;
  return unit !== undefined && LIST_UNITS[unit].quantity === FIELD_QUANTITIES[field];
}
