/** Values in the rotation table where the builder wrote a formula: what the grower meant must not go unseen. */

import { formulaShape } from '../block/formula-shape';
import type { WireCell } from '../contract';
import { cellOnTab } from '../lists/cell-on-tab';
import type { PlanRules } from '../plan/model';
import { COLUMNS, type ColumnKey } from './columns';
import { cellWords } from './kept-lines';
import { knownShapes } from './known-shapes';
import type { Reading } from './read-rotation';

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
const TO_COME: readonly ColumnKey[] = [
  'plannedIn',
  'head',
  'restDue',
  'startWeight',
  'dailyGain',
  'area',
  'openFrom',
  'openUntil',
  'lastUsed',
];

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
    if (column === undefined || (SPILLED.includes(key) && isSpilling(reading, column))) continue;
    const isForeign = foreignIn(reading, rows, key);
    const [first, ...more] = rows.filter((r) => isValue(reading, r, column) || isForeign(r));
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
export function typedOverLookups(reading: Reading): (r: number) => string[] {
  const { block, columns, headingRow, endRow } = reading;
  const rows = Array.from({ length: endRow - headingRow - 1 }, (_, i) => headingRow + 1 + i);
  const at = TO_COME.flatMap((key) => {
    const column = columns.get(key);
    if (column === undefined) return [];
    const hasFormulas = rows.some((row) => block.formulas[row]![column] !== '');
    return [{ key, column, hasFormulas, isForeign: foreignIn(reading, rows, key) }];
  });
  return (r) => {
    if (isFrozen(reading, r)) return [];
    return at.flatMap(({ key, column, hasFormulas, isForeign }) => {
      if (!(hasFormulas && isValue(reading, r, column)) && !isForeign(r)) return [];
      const words = block.formulas[r]![column] || cellWords(block.values[r]![column]!);
      return [`${labelOf(key).toLowerCase()} ${words}`];
    });
  };
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

/** A formula unlike ours, where others in the column are like ours: a program may have rewritten all of them. */
function foreignIn(
  { block, columns }: Reading,
  rows: readonly number[],
  key: ColumnKey,
): (r: number) => boolean {
  const known = knownShapes(key);
  const column = columns.get(key);
  if (!known || column === undefined) return () => false;
  const isOurs = (r: number): boolean => known.has(formulaShape(block.formulas[r]![column]!));
  const hasOurs = rows.some((r) => block.formulas[r]![column] !== '' && isOurs(r));
  return (r) => hasOurs && block.formulas[r]![column] !== '' && !isOurs(r);
}

function isSpilling({ block, headingRow }: Reading, column: number): boolean {
  const anchor = headingRow + 1;
  return (block.formulas[anchor]?.[column] ?? '') !== '' && block.values[anchor]![column] === '';
}

function labelOf(key: ColumnKey): string {
  return COLUMNS.find((column) => column.key === key)!.label;
}

function adviceFor(key: ColumnKey): string {
  if (key === 'out')
    return 'To say when a group left, type Days, or Moved in of its next move; then clear the cell.';
  return 'Write it under Note or in a column of your own, then clear the cell.';
}
