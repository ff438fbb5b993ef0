/** Values in the rotation table where the builder wrote a formula: what the grower meant must not go unseen. */
import type { WireCell } from '../contract';
import { cellOnTab } from '../lists/cell-on-tab';
import type { PlanRules } from '../plan/model';
import { COLUMNS, type ColumnKey } from './columns';
import { cellWords } from './kept-lines';
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

/** Adds a problem for each column whose formulas were typed over in moves (`rows`, from 0 within the block). */
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
    const [first, ...more] = rows.filter((r) => isValue(reading, r, column));
    if (first === undefined) continue;
    const { info } = reading.block;
    const cell = cellOnTab(info.tab, info.row + first, info.column + column);
    const others = more.length === 0 ? '' : ` (and ${more.length} more in the column)`;
    const got = cellWords(reading.block.values[first]![column]!);
    const sentence = `${cell}: ${labelOf(key)} must be left to its formula, got "${got}" typed over it${others}. ${adviceFor(key)}`;
    reading.problems.push({ cell, sentence });
  }
}

/** What was typed over a formula in that row, such as "head 9"; nothing where the whole row is past. */
export function typedOverLookups(reading: Reading, r: number): string[] {
  const { block, columns, headingRow, endRow } = reading;
  const at = TO_COME.flatMap((key) => {
    const column = columns.get(key);
    return column === undefined ? [] : [{ key, column }];
  });
  if (at.every(({ column }) => block.formulas[r]![column] === '')) return [];
  return at.flatMap(({ key, column }) => {
    if (!isValue(reading, r, column)) return [];
    const rows = block.formulas.slice(headingRow + 1, endRow);
    const isFormulaElsewhere = rows.some((row) => row[column] !== '');
    return isFormulaElsewhere
      ? [`${labelOf(key).toLowerCase()} ${cellWords(block.values[r]![column]!)}`]
      : [];
  });
}

function isValue({ block }: Reading, r: number, column: number): boolean {
  const value: WireCell = block.values[r]![column]!;
  return block.formulas[r]![column] === '' && cellWords(value) !== '';
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
