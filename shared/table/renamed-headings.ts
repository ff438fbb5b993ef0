import { cellOnTab } from '../block/cell-on-tab';
import { formulaShape } from '../block/formula-shape';
import { CALLS } from './cell-function-calls';
import { COLUMNS, type ColumnKey } from './columns';
import { cellWords } from './kept-lines';
import { knownShapes } from './known-shapes';
import type { Reading } from './read-rotation';

/**
 * Adds a problem for each heading of ours that was given another name: its column holds our formulas, and would be kept
 * as one of the grower's beside a new one of ours. Tells whether there was one.
 */
export function tellRenamedHeadings(reading: Reading): boolean {
  const { block, headingRow, columns, extras, problems } = reading;
  const before = problems.length;
  const missing = COLUMNS.filter(({ key }) => !columns.has(key));
  for (const { column } of extras) {
    const was = missing.find(({ key }) => isColumnOf(reading, key, column));
    if (!was) continue;
    const cell = cellOnTab(block.info.tab, block.info.row + headingRow, block.info.column + column);
    const got = cellWords(block.values[headingRow]![column]!) || 'a blank';
    problems.push({
      cell,
      sentence: `${cell}: the heading must be "${was.label}", for its column holds the formulas of the table, got "${got}"`,
    });
  }
  return problems.length > before;
}

function isColumnOf({ block, headingRow, endRow }: Reading, key: ColumnKey, column: number): boolean {
  const formulas = block.formulas.slice(headingRow + 1, endRow).map((row) => row[column]!);
  const call = CALLS[key];
  if (call) return formulas.some((formula) => call.test(formula));
  const known = knownShapes(key);
  const filled = formulas.filter((formula) => formula !== '');
  const ours = filled.filter((formula) => known?.has(formulaShape(formula)));
  // Lookups and single references are of a shape that growers use too: only a column full of them counts.
  return known !== undefined && ours.length > 0 && ours.length === filled.length && filled.length >= FEWEST;
}

/** Judgement: a column with fewer formulas may well be the grower's own. */
const FEWEST = 3;
