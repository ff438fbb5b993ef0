/** Values in the rotation table where the builder wrote a formula: what the grower meant must not go unseen. */

import type { WireCell } from '../contract';
import { cellOnTab } from '../lists/cell-on-tab';
import { describeWire } from '../lists/read-list-cell';
import type { PlanRules } from '../plan/model';
import { COLUMNS, type ColumnKey } from './columns';
import { foreignIn } from './foreign-in';
import { cellWords } from './kept-lines';
import type { TypedOver } from './model';
import { ownDay, ownNumber } from './own-cell';
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

/** Adds a problem for each column whose formulas were typed over, by a value or another formula, in moves (`rows`, from 0 within the block). */
export function tellTypedOver(
  reading: Reading,
  rows: readonly number[],
  rest: PlanRules['rest'] | undefined,
): void {
  // From forage growth the rest due stands as numbers: no plain formula says it shortly.
  const restDue: readonly ColumnKey[] = rest === undefined || rest.kind === 'forage' ? [] : ['restDue'];
  for (const key of [...ALWAYS, ...restDue, ...SPILLED]) {
    const column = reading.columns.get(key);
    if (column === undefined) continue;
    const isSpilled = SPILLED.includes(key);
    const isAnswered = isSpilled && isSpilling(reading, column);
    const isForeign = foreignIn(reading, rows, key);
    const isOver = (r: number): boolean =>
      isSpilled && reading.block.formulas[r]![column] !== ''
        ? true
        : !isAnswered && (isValue(reading, r, column) || isForeign(r));
    const [first, ...more] = rows.filter(isOver);
    if (first === undefined) continue;
    const { info } = reading.block;
    const cell = cellOnTab(info.tab, info.row + first, info.column + column);
    const others = more.length === 0 ? '' : ` (and ${more.length} more in the column)`;
    const formula = reading.block.formulas[first]![column]!;
    const got = formula === '' ? cellWords(reading.block.values[first]![column]!) : formula;
    const sentence = `${cell}: ${labelOf(key)} must be left to its formula, got "${got}" typed over it${others}. ${adviceFor(key)}`;
    reading.problems.push({ cell, sentence });
  }
}

/** For each row what was typed over a formula there, such as "head 9"; nothing where the whole row is past. */
export function typedOverLookups(reading: Reading): (r: number) => TypedOver[] {
  const { block, columns } = reading;
  const rows = rowsUnderHeadings(reading);
  const at = TO_COME.flatMap((key) => {
    const column = columns.get(key);
    if (column === undefined) return [];
    const hasFormulas = rows.some((row) => block.formulas[row]![column] !== '');
    // Where the lists say nothing, most cells of the column are blank, and what stands there was typed.
    const filled = rows.filter((row) => isValue(reading, row, column)).length;
    const isTyped = hasFormulas || 2 * filled <= rows.length;
    return [{ key, column, isTyped, isForeign: foreignIn(reading, rows, key) }];
  });
  return (r) => {
    if (isFrozen(reading, r)) return [];
    return at.flatMap(({ key, column, isTyped, isForeign }) => {
      const isOver = isValue(reading, r, column) && (isTyped || !isOfKind(reading, r, key));
      if (!isOver && !isForeign(r)) return [];
      const words = block.formulas[r]![column] || cellWords(block.values[r]![column]!);
      return [{ key, words: `${labelOf(key).toLowerCase()} ${words}` }];
    });
  };
}

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

function adviceFor(key: ColumnKey): string {
  if (key === 'out')
    return 'To say when a group left, type Days, or Moved in of its next move; then clear the cell.';
  return 'Write it under Note or in a column of your own, then clear the cell.';
}
