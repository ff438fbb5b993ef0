/** Reads the cells of a list one by one: the value in inside units, or a sentence that names the cell. */

import { cellOnTab } from '../block/cell-on-tab';
import { dateWords } from '../block/date-words';
import { LOADING } from '../block/loading';
import type { TabContent, WireCell } from '../contract';
import { type Day, dayFromIso, isoFromDay } from '../core/calendar/day';
import type { DateOrder } from '../locale/date-order';
import { describeCell, plainNumber } from '../refusals';
import { textNumber } from '../units/text-number';
import { farmUnit, LIST_UNITS, type ListQuantity, type ListUnit, unitOfText } from '../units/unit-words';
import type { UnitSystem } from '../units/units';
import { fitting } from './heading-unit';
import { FIELD_QUANTITIES, GROUP_WORDS } from './headings';
import { isBlankCell } from './list-rows';
import { plainWords } from './match-heading';
import {
  type CellPlace,
  FIELD_LABELS,
  type GroupField,
  type ListOf,
  type ListProblem,
  type PaddockField,
} from './model';
import { onlyDayIn } from './remark-day';
import { textDay } from './text-day';
import type { Weighing } from './weighings';
import * as words from './words';

export type ListField = PaddockField | GroupField;

/** One row of a list, ready to be read field by field; problems are gathered, not thrown. */
export interface RowReader {
  readonly tab: TabContent;
  readonly list: ListOf<string>;
  readonly row: number;
  readonly system: UnitSystem;
  /** Whether people of the spreadsheet's locale write 1,5 where others write 1.5. */
  readonly comma: boolean;
  readonly dates: DateHabits;
  readonly problems: ListProblem[];
  /** Texts that were read as a date or number, with what they were read as: “Pigs!D6 “4/10/26” as 2026-04-10”. */
  readonly readings: string[];
  /** Sentences about the row that stop nothing. */
  readonly notes: string[];
  /** Cells that cannot be read and that a plan can do without: they count as blank, and are told. */
  readonly unread: ListProblem[];
}

/** For a reader of which nothing is told. */
export function untold(): Pick<RowReader, 'problems' | 'readings' | 'notes' | 'unread'> {
  return { problems: [], readings: [], notes: [], unread: [] };
}

/** What a sheet does not say of itself and dates kept as text need. */
export interface DateHabits {
  readonly order?: DateOrder;
  /** The day on which the sheet is read; gives dates without a year theirs. */
  readonly today?: Day | undefined;
  /** Weighings of groups that stand in a log, for lists without a weight. */
  readonly weighings?: ReadonlyMap<string, Weighing>;
  /** The paddock that is meant by a word; absent: not known. */
  readonly paddockNamed?: (text: string) => string | undefined;
}

export interface NumberLimits {
  readonly above?: number;
  readonly min?: number;
  readonly whole?: true;
}

/**
 * Texts that spreadsheets show instead of a value or while calculating. A closed list, because a paddock may well be
 * called "#1!" or "#value".
 */
export const ERRORS = /^(#(N\/A|REF!|NAME\?|VALUE!|DIV\/0!|NUM!|NULL!|ERROR!|SPILL!)|Loading\.\.\.)$/;

export function placeOf({ list, row }: RowReader, field: ListField): CellPlace | undefined {
  const column = list.columns[field];
  return column === undefined ? undefined : { row, column };
}

export function cellOf(reader: RowReader, field: ListField): WireCell {
  const place = placeOf(reader, field);
  return place ? (reader.tab.values[place.row - 1]?.[place.column - 1] ?? '') : '';
}

export function hasCell(reader: RowReader, field: ListField): boolean {
  return !isBlankCell(cellOf(reader, field));
}

/** Without these there is no plan. */
const NEEDED: ReadonlySet<ListField> = new Set(['name', 'area', 'width', 'length', 'head', 'weight']);

/** A field must be something else than it is: a needed one stops the plan, any other counts as blank and is told. */
export function refuse(reader: RowReader, field: ListField, must: string, got?: string): undefined {
  const cell = cellNamed(reader, field);
  const shown = got ?? describeWire(cellOf(reader, field));
  if (NEEDED.has(field)) return contradict(reader, field, must, shown);
  const sentence = words.notRead(cell, shown, FIELD_LABELS[field], nameOf(reader), must);
  reader.unread.push({ cell, sentence });
  return undefined;
}

/** What is read in a field must not be so beside the rest of the row: it stops the plan, whatever the field. */
export function contradict(reader: RowReader, field: ListField, must: string, got?: string): undefined {
  const cell = cellNamed(reader, field);
  const shown = got ?? describeWire(cellOf(reader, field));
  reader.problems.push({ cell, sentence: `${cell}: ${FIELD_LABELS[field]} must ${must}, got ${shown}` });
  return undefined;
}

function cellNamed(reader: RowReader, field: ListField): string {
  const place = placeOf(reader, field) ?? { row: reader.row, column: reader.list.columns.name ?? 1 };
  return cellOnTab(reader.tab.name, place.row, place.column);
}

/** What stands in a cell, in words. */
export function describeWire(cell: WireCell): string {
  if (typeof cell === 'object') return `the date ${dateWords(cell.d)}`;
  if (cell === LOADING) return words.STILL_LOADING;
  if (isErrorWire(cell)) return `the error ${cell}`;
  return typeof cell === 'string' && cell.trim() === '' ? 'a blank' : describeCell(cell);
}

export function isErrorWire(cell: WireCell): boolean {
  return typeof cell === 'string' && ERRORS.test(cell);
}

/** The name as it stands, white space around it included; a number counts as text. */
export function readName(reader: RowReader): string | undefined {
  const cell = cellOf(reader, 'name');
  if (typeof cell === 'number') return String(cell);
  if (typeof cell !== 'string' || isBlankCell(cell) || isErrorWire(cell)) {
    return refuse(reader, 'name', 'be text or a number');
  }
  return cell;
}

/** The name of the row's item, for a sentence. */
export function nameOf(reader: RowReader): string {
  return String(cellOf(reader, 'name')).trim();
}

/** A dash in the place of a figure: this one is not to be planned. */
export const DASH = /^\s*[-–—]\s*$/;

/** Whether a dash stands for the figure; told. */
export function isDashed(reader: RowReader, field: ListField): boolean {
  if (!DASH.test(String(cellOf(reader, field)))) return false;
  const { row, column } = placeOf(reader, field)!;
  reader.notes.push(
    words.dashed(cellOnTab(reader.tab.name, row, column), nameOf(reader), FIELD_LABELS[field]),
  );
  return true;
}

/** What makes two names one: letter case and white space do not count. */
export function nameKey(name: string): string {
  return name.trim().replace(/\s+/g, ' ').toLowerCase();
}

/** A number in inside units; text numbers, with a unit behind them too, are taken. */
export function readAmount(reader: RowReader, field: ListField, limits: NumberLimits): number | undefined {
  const quantity = FIELD_QUANTITIES[field];
  const own = quantity && unitOfColumn(reader, field, quantity);
  const typed = numberIn(reader, field);
  const behind = own ? ` (${own})` : '';
  if (!typed) return refuse(reader, field, `be a number${behind}`);
  if ('either' in typed)
    return refuse(reader, field, `be typed as a number${behind}: write ${typed.either.join(' or ')}`);
  if (typed.isJudged) reader.readings.push(`${shownAt(reader, field)} as ${plainNumber(typed.value)}`);
  const unit = typed.unit ?? own;
  const broken = brokenLimit(typed.value, limits, unit);
  if (broken) return refuse(reader, field, broken, plainNumber(typed.value));
  const inside = typed.value * (unit ? LIST_UNITS[unit].factor : 1);
  return Number.isFinite(inside) ? inside : refuse(reader, field, 'be a number of a sensible size');
}

function unitOfColumn({ list, system }: RowReader, field: ListField, quantity: ListQuantity): ListUnit {
  const unit = list.units[field];
  return unit && LIST_UNITS[unit].quantity === quantity ? unit : farmUnit(quantity, system);
}

const REMARK = /\s*\([^()]*\d[^()]*\)\s*$/;

/** An amount without the remark in brackets behind it: "62 kg (3 Oct)", "12 (of 14)". */
export function withoutRemark(text: string): string {
  return text.replace(REMARK, '');
}

/** The day that stands with an amount: "62 kg (3 Oct)", "62 kg on 3 Oct". */
export function remarkedDay(reader: RowReader, field: ListField): Day | undefined {
  const { order, today = NaN } = reader.dates;
  const cell = cellOf(reader, field);
  const day = typeof cell === 'string' ? onlyDayIn(cell, order, reader.dates.today) : undefined;
  return day === undefined || day > today ? undefined : day;
}

/** Words in an amount with "about" before it. */
const MOST_WORDS = 3;

/** The amounts in a text whose unit is one that is looked for, each as it stands. */
export function amountsIn(text: string, comma: boolean, isUnit: (text: string) => boolean): string[] {
  const parts = text.split(/\s+/);
  const found: string[] = [];
  for (let i = 0; i < parts.length; i++) {
    const windows = Array.from({ length: MOST_WORDS }, (_, n) => parts.slice(i, i + n + 1));
    const amount = windows.find((some) => isUnit(textNumber(some.join(' '), comma)?.behind ?? ''));
    if (!amount) continue;
    found.push(amount.join(' '));
    i += amount.length - 1;
  }
  return found;
}

/** The amount with which a text begins, where it is the only one: "68kg tape 20/11". "9 - 11 kg" is none, nor "9 kg, 11 kg". */
function onlyAmount(text: string, comma: boolean, isUnit: (text: string) => boolean): string | undefined {
  const [amount, ...others] = amountsIn(text, comma, isUnit);
  return amount !== undefined && others.length === 0 && text.startsWith(amount) ? amount : undefined;
}

type CellNumber =
  /** `isJudged`: the locale or the rest of the column decided what the signs mean. */
  | { readonly value: number; readonly unit: ListUnit | undefined; readonly isJudged?: boolean }
  | { readonly either: readonly [string, string] };

/** The number in a cell; undefined: none, or with a unit of something else. */
function numberIn(reader: RowReader, field: ListField): CellNumber | undefined {
  const cell = cellOf(reader, field);
  if (typeof cell === 'number') return { value: cell, unit: undefined };
  const isUnit = (text: string): boolean => text !== '' && unitBehind(reader, text.trim(), field) != null;
  const bare = typeof cell === 'string' ? bareAmount(cell, reader.comma, isUnit) : undefined;
  const typed = bare === undefined ? undefined : textNumber(bare, reader.comma);
  const unit = typed && unitBehind(reader, typed.behind, field);
  if (!typed || unit === null) return undefined;
  if (!('either' in typed)) return { value: typed.value, unit, isJudged: typed.byLocale ?? bare !== cell };
  const sure = sureReading(reader, field, unit);
  if (sure === undefined) return typed;
  return { value: Number(typed.either[sure].replace(',', '.')), unit, isJudged: true };
}

/** The amount in a text, without a remark behind it. */
function bareAmount(text: string, comma: boolean, isUnit: (text: string) => boolean): string {
  const bare = withoutRemark(text);
  const behind = textNumber(bare, comma)?.behind ?? '';
  return behind === '' || isUnit(behind) ? bare : (onlyAmount(bare, comma, isUnit) ?? bare);
}

/** What paddocks and pigs measure, in inside units; only to tell 12,500 from 12.5 where a text may be both. Judgement. */
const SENSIBLE: Readonly<Partial<Record<ListQuantity, readonly [number, number]>>> = {
  area: [100, 5_000_000],
  mass: [0.5, 500],
};
/** In fewer cells three digits behind a point may be chance. Judgement. */
const FEWEST_ALIKE = 3;

/** Which of two readings is the only sensible one in every cell of the column that may be either; undefined: not sure. */
function sureReading(reader: RowReader, field: ListField, unit: ListUnit | undefined): 0 | 1 | undefined {
  const { tab, list, comma } = reader;
  const quantity = FIELD_QUANTITIES[field];
  const range = quantity && SENSIBLE[quantity];
  if (!range) return undefined;
  const { factor } = LIST_UNITS[unit ?? unitOfColumn(reader, field, quantity)];
  const texts = tab.values.slice(list.firstRow - 1, list.lastRow).map((row) => row[list.columns[field]! - 1]);
  const alike = texts.flatMap((text) => {
    const read = typeof text === 'string' ? textNumber(text, comma) : undefined;
    return read && 'either' in read ? [read.either.map((one) => Number(one.replace(',', '.')) * factor)] : [];
  });
  if (alike.length < FEWEST_ALIKE) return undefined;
  const fits = ([0, 1] as const).filter((which) =>
    alike.every((both) => both[which]! >= range[0] && both[which]! <= range[1]),
  );
  return fits.length === 1 ? fits[0] : undefined;
}

/** The unit behind a number; null where something else stands there. "12 pigs" is a head of 12. */
function unitBehind({ tab, list }: RowReader, text: string, field: ListField): ListUnit | undefined | null {
  if (text === '' || (field === 'head' && GROUP_WORDS.head.includes(plainWords(text)))) return undefined;
  const wanted = FIELD_QUANTITIES[field];
  const heading = String(tab.values[list.headingRow - 1]?.[(list.columns[field] ?? 0) - 1] ?? '');
  return (wanted && fitting(unitOfText(text, true), wanted, heading)) ?? null;
}

/** Limits are 0 or counts, so they are the same number in every unit. */
function brokenLimit(value: number, limits: NumberLimits, unit: ListUnit | undefined): string | undefined {
  const behind = unit ? ` ${unit}` : '';
  if (limits.above !== undefined && !(value > limits.above)) return `be more than ${limits.above}${behind}`;
  if (limits.min !== undefined && !(value >= limits.min)) return `be ${limits.min}${behind} or more`;
  return limits.whole && !Number.isInteger(value) ? 'be a whole number' : undefined;
}

/**
 * A day from a date cell or text, or the only one among words; a month alone is its first day, or its last for a field that
 * ends something. What could be two days is refused with both.
 */
export function readDay(reader: RowReader, field: ListField): Day | undefined {
  const cell = cellOf(reader, field);
  const plain = dayIn(cell);
  const text = plain === undefined && typeof cell === 'string' ? cell.trim() : undefined;
  const read = text === undefined ? undefined : textDay(text, reader.dates.order, reader.dates.today);
  if (plain !== undefined) return plain;
  if (!read) {
    const among = dayAmongWords(reader, field, text ?? '');
    return among ?? refuse(reader, field, 'be a date');
  }
  if ('either' in read) {
    return refuse(
      reader,
      field,
      `be a date that is one day only: write ${read.either.map(isoFromDay).join(' or ')}`,
    );
  }
  const day = ENDS.includes(field) ? read.last : read.first;
  reader.readings.push(`${shownAt(reader, field)} as ${isoFromDay(day)}`);
  return day;
}

/** "Done, off 11/20" is the day on which pigs left, but "closed 11/1" none from which on a paddock is open. */
const AHEAD: ReadonlySet<ListField> = new Set(['openFrom', 'openUntil', 'shutUntil', 'from', 'until']);
const BEHIND: ReadonlySet<ListField> = new Set(['lastUsed', 'since', 'weighedOn']);

function dayAmongWords(reader: RowReader, field: ListField, text: string): Day | undefined {
  const { order, today = NaN } = reader.dates;
  const day = onlyDayIn(text, order, reader.dates.today);
  if (day === undefined || (AHEAD.has(field) && day <= today) || (BEHIND.has(field) && day > today))
    return undefined;
  reader.readings.push(`${shownAt(reader, field)} as ${isoFromDay(day)}`);
  return day;
}

const ENDS: readonly ListField[] = ['lastUsed', 'openUntil', 'shutUntil', 'until'];

/** The cell of a field and what stands in it: Pigs!D6 “4/10/26”. */
export function shownAt(reader: RowReader, field: ListField): string {
  const { row, column } = placeOf(reader, field)!;
  return `${cellOnTab(reader.tab.name, row, column)} “${String(cellOf(reader, field)).trim()}”`;
}

/** Whether the cell holds a day, as a date or as text. */
export function isDay(reader: RowReader, field: ListField): boolean {
  const cell = cellOf(reader, field);
  if (dayIn(cell) !== undefined) return true;
  return typeof cell === 'string' && textDay(cell, reader.dates.order, reader.dates.today) !== undefined;
}

export const MUST_BE_DATE = 'be a date (a date cell, or text such as "2026-04-20")';

export function dayIn(cell: WireCell): Day | undefined {
  if (typeof cell === 'object') return dayFromIso(cell.d.slice(0, 10));
  return typeof cell === 'string' ? dayFromIso(cell) : undefined;
}

/** Whether a cell reads as an amount of a field, for cells that may be either date or weight. */
export function isAmount(reader: RowReader, field: ListField): boolean {
  return numberIn(reader, field) !== undefined;
}
