/** Values in the rotation table where the builder wrote a formula: what the grower meant must not go unseen. */

import { cellOnTab } from '../block/cell-on-tab';
import type { WireCell } from '../contract';
import { type Day, dayFromCivil } from '../core/calendar/day';
import { describeWire, nameKey } from '../lists/read-list-cell';
import type { PlanRules } from '../plan/model';
import { COLUMNS, type ColumnKey } from './columns';
import { foreignIn } from './foreign-in';
import { keptAt } from './kept-at';
import { cellWords } from './kept-lines';
import type { TypedOver } from './model';
import { ownDay, ownNumber, wholeDays } from './own-cell';
import type { Reading } from './read-rotation';
import { rowsUnderHeadings } from './rows-under-headings';

/** Formulas in every move, past or to come. */
const ALWAYS: readonly ColumnKey[] = [
  'out',
  'density',
  'restBefore',
  'check',
  'inDay',
  'dueOut',
  'stayDays',
  'lastOut',
  'groupKey',
  'paddockKey',
  'growthDays',
];
/** Filled by one cell function in the row under the headings, itself blank while nothing stands in its way. */
const SPILLED: readonly ColumnKey[] = ['weightIn', 'feed', 'water'];
/** Formulas in moves to come, values in past ones. */
const NUMBERS: readonly ColumnKey[] = ['head', 'restDue', 'startWeight', 'dailyGain', 'area'];
const DATES: readonly ColumnKey[] = ['plannedIn', 'openFrom', 'openUntil', 'lastUsed'];
export const TO_COME: readonly ColumnKey[] = [...DATES, ...NUMBERS];

/**
 * Inputs and answers of one row: what is typed over them stays in its cell. Typed over the others (days that follow from
 * the plan, answers that spill, working columns) it would break the rows around, and is kept as a line.
 */
const STAYING: readonly ColumnKey[] = [
  'head',
  'density',
  'restBefore',
  'restDue',
  'check',
  'startWeight',
  'dailyGain',
  'area',
  'openFrom',
  'openUntil',
  'lastUsed',
];

/** For each row what was typed over a formula there, by a value or another formula. */
export function typedOver(
  reading: Reading,
  rest: PlanRules['rest'] | undefined,
): (r: number) => readonly TypedOver[] {
  const rows = rowsUnderHeadings(reading);
  // From forage growth the rest due stands as numbers: no plain formula says it shortly.
  const always = rest === undefined || rest.kind === 'forage' ? ALWAYS : [...ALWAYS, 'restDue' as const];
  const inEvery = [...always, ...SPILLED].flatMap((key) => typedInColumn(reading, rows, key) ?? []);
  const toCome = TO_COME.filter((key) => !always.includes(key)).flatMap(
    (key) => typedLookups(reading, rows, key) ?? [],
  );
  const days = typedDays(reading, rows);
  return (r) => [...inEvery, ...(isFrozen(reading, r) ? [] : toCome), days].flatMap((typed) => typed(r));
}

type TypedInRow = (r: number) => TypedOver[];

/** Of a column that has a formula, or an answer, in every move. */
function typedInColumn(reading: Reading, rows: readonly number[], key: ColumnKey): TypedInRow | undefined {
  const column = reading.columns.get(key);
  if (column === undefined) return undefined;
  const isSpilled = SPILLED.includes(key);
  const isAnswered = isSpilled && isSpilling(reading, column);
  const isForeign = foreignIn(reading, rows, key);
  return (r) => {
    const isFormula = reading.block.formulas[r]![column] !== '';
    const isOver =
      isSpilled && isFormula ? true : !isAnswered && (isValue(reading, r, column) || isForeign(r));
    const stays = STAYING.includes(key) && (key === 'check' || isOfKind(reading, r, key));
    return isOver ? [overCell(reading, r, column, key, stays)] : [];
  };
}

/** Of a column that moves to come look up in the lists. */
function typedLookups(reading: Reading, rows: readonly number[], key: ColumnKey): TypedInRow | undefined {
  const { block, columns } = reading;
  const column = columns.get(key);
  if (column === undefined) return undefined;
  const names = columns.get(OF_PADDOCK.includes(key) ? 'paddock' : 'group')!;
  const nameOf = (r: number): string => nameKey(cellWords(block.values[r]![names]!));
  const isForeign = foreignIn(reading, rows, key);
  const live = rows.filter((row) => !isFrozen(reading, row));
  const withOurs = live.filter((row) => block.formulas[row]![column] !== '' && !isForeign(row));
  // A figure is looked up in all moves to come of a name, or in none.
  const lookedUp = new Set(withOurs.map(nameOf));
  const hasFormulas = rows.some((row) => block.formulas[row]![column] !== '');
  // Where the lists say nothing, most cells of the column are blank, and what stands there was typed.
  const filled = rows.filter((row) => isValue(reading, row, column)).length;
  const isTyped = hasFormulas || 2 * filled <= rows.length;
  return (r) => {
    const isOver = isValue(reading, r, column) && (isTyped || !isOfKind(reading, r, key));
    const stays = STAYING.includes(key) && lookedUp.has(nameOf(r)) && isOfKind(reading, r, key);
    return isOver || isForeign(r) ? [overCell(reading, r, column, key, stays)] : [];
  };
}

/**
 * Days that are none, or that reach beyond the day on which the group's next move was planned, which its formula says.
 * Fewer days cannot be told from a move in between that was deleted.
 */
function typedDays(reading: Reading, rows: readonly number[]): TypedInRow {
  const { block, columns } = reading;
  const [column, group, plannedIn] = [columns.get('days')!, columns.get('group')!, columns.get('plannedIn')!];
  const nameOf = (r: number): string => nameKey(cellWords(block.values[r]![group]!));
  const planned = new Map(rows.map((r) => [r, firstPlanned(block.formulas[r]![plannedIn]!)]));
  return (r) => {
    const value = block.values[r]![column]!;
    if (cellWords(value) === '') return [];
    const days = wholeDays(value);
    if (days === undefined) return [overCell(reading, r, column, 'days', false)];
    const from = planned.get(r);
    if (from === undefined) return [];
    const later = rows.flatMap((one) => (nameOf(one) === nameOf(r) ? (planned.get(one) ?? []) : []));
    const next = Math.min(...later.filter((day) => day > from));
    return from + days > next ? [overCell(reading, r, column, 'days', false)] : [];
  };
}

/** The day that a formula of ours under Planned in was written with. */
function firstPlanned(formula: string): Day | undefined {
  const [, year, month, day] = /DATE\((\d+)[;,](\d+)[;,](\d+)\)/.exec(formula.replace(/ /g, '')) ?? [];
  return day === undefined ? undefined : dayFromCivil(Number(year), Number(month), Number(day));
}

const OF_PADDOCK: readonly ColumnKey[] = ['area', 'openFrom', 'openUntil', 'lastUsed'];

function overCell({ block }: Reading, r: number, column: number, key: ColumnKey, stays: boolean): TypedOver {
  const said = block.formulas[r]![column] || cellWords(block.values[r]![column]!);
  return { key, words: `${labelOf(key).toLowerCase()} ${said}`, cell: keptAt(block, r, column), stays };
}

/**
 * Adds a problem for each column in which every formula of ours has become a value, as in a table that was pasted as
 * values: nobody typed that, and nothing says what they were.
 */
export function tellDeadColumns(reading: Reading, rows: readonly number[]): void {
  if (rows.length < FEWEST_DEAD) return;
  const { info } = reading.block;
  for (const key of ALWAYS) {
    const column = reading.columns.get(key);
    if (column === undefined || !rows.every((r) => isValue(reading, r, column))) continue;
    const cell = cellOnTab(info.tab, info.row + rows[0]!, info.column + column);
    const sentence = `${cell}: ${labelOf(key)} must hold formulas, got values in every move. Was the table pasted as values? Take it back from the version history, or clear these cells.`;
    reading.problems.push({ cell, sentence });
  }
}

/** Judgement: fewer may well have been typed one by one. */
const FEWEST_DEAD = 3;

/** Adds a problem for each figure of a past move that is no figure any more: it would be gone with the next table. */
export function tellBadFigures(reading: Reading, rows: readonly number[]): void {
  const { block, columns } = reading;
  const movedIn = columns.get('movedIn')!;
  const past = rows.filter((row) => isFrozen(reading, row) || isValue(reading, row, movedIn));
  for (const key of TO_COME) {
    const column = columns.get(key);
    const isForeign = foreignIn(reading, rows, key);
    for (const r of past) {
      const isTyped = column !== undefined && (isValue(reading, r, column) || isForeign(r));
      if (!isTyped || isOfKind(reading, r, key)) continue;
      const cell = cellOnTab(block.info.tab, block.info.row + r, block.info.column + column);
      const must = DATES.includes(key) ? 'a date' : 'a number';
      const got = describeWire(block.values[r]![column]!);
      reading.problems.push({ cell, sentence: `${cell}: ${labelOf(key)} must be ${must}, got ${got}` });
    }
  }
}

/** Whether a value is a date where the column has dates, a number where it has numbers. */
function isOfKind({ block, columns }: Reading, r: number, key: ColumnKey): boolean {
  const value = block.values[r]![columns.get(key)!]!;
  return (DATES.includes(key) ? ownDay(value) : ownNumber(value)) !== undefined;
}

/** A row that was past when the table was built: its day and figures stand as values. */
function isFrozen({ block, columns }: Reading, r: number): boolean {
  const frozen: readonly ColumnKey[] = ['plannedIn', 'head', 'startWeight', 'area'];
  return frozen.every((key) => {
    const column = columns.get(key);
    return column === undefined || block.formulas[r]![column] === '';
  });
}

function isValue({ block }: Reading, r: number, column: number): boolean {
  const value: WireCell = block.values[r]![column]!;
  return block.formulas[r]![column] === '' && cellWords(value) !== '';
}

function isSpilling({ block, headingRow }: Reading, column: number): boolean {
  const anchor = headingRow + 1;
  // Other messages stand for a bad row only; the rows below have their answers all the same.
  const isBlocked = /^#(REF|SPILL)!/.test(String(block.values[anchor]?.[column] ?? ''));
  return (block.formulas[anchor]?.[column] ?? '') !== '' && !isBlocked;
}

function labelOf(key: ColumnKey): string {
  return COLUMNS.find((column) => column.key === key)!.label;
}
