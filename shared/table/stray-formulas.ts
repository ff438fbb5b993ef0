import { cellA1 } from '../block/a1';
import { formulaShape } from '../block/formula-shape';
import { CALLS } from './cell-function-calls';
import { foreignIn } from './foreign-in';
import { cellWords } from './kept-lines';
import { knownShapes } from './known-shapes';
import type { Reading } from './read-rotation';
import { settingOfLabel } from './read-settings';
import { LISTS, ownSettingCells } from './strays';

/**
 * Formulas of the grower's that stand in the block but in no move and in no setting, as lines with their cell: their row
 * is not there any more. `moves` are the rows of the moves, from 0 in the block.
 */
export function strayFormulas(reading: Reading, moves: readonly number[], titleRow: number): string[] {
  const { block } = reading;
  const isMove = new Set(moves);
  const lines: string[] = [];
  for (const [r, row] of block.formulas.entries()) {
    if (isMove.has(r)) continue;
    for (const [c, formula] of row.entries()) {
      if (formula === '' || isOurs(reading, moves, titleRow, r, c)) continue;
      const cell = cellA1(block.info.row + r, block.info.column + c);
      const shows = cellWords(block.values[r]![c]!);
      lines.push(`${cell}: ${formula}${shows === '' ? '' : ` (${shows})`}`);
    }
  }
  return lines;
}

function isOurs(reading: Reading, moves: readonly number[], titleRow: number, r: number, c: number): boolean {
  const { block, headingRow, endRow, columns } = reading;
  if (r < headingRow) return c > 0;
  if (r === headingRow) return false;
  if (r >= endRow) return titleRow >= 0 && r > titleRow && isSetting(reading, r, c);
  const [key] = [...columns].find(([, column]) => column === c) ?? [];
  const call = key === undefined ? undefined : CALLS[key];
  if (call) return r === headingRow + 1 && call.test(block.formulas[r]![c]!);
  if (key === undefined)
    return moves.some((move) => isAlike(block.formulas[move]![c]!, block.formulas[r]![c]!));
  // The rest of a move whose group or paddock was cleared.
  return knownShapes(key) !== undefined && !foreignIn(reading, moves, key)(r);
}

function isAlike(one: string, other: string): boolean {
  return one !== '' && formulaShape(one) === formulaShape(other);
}

function isSetting({ block }: Reading, r: number, c: number): boolean {
  const filled = block.values[r]!.flatMap((value, column) => (value === '' ? [] : [{ value, column }]));
  // Where a list stands is written by the builder, whatever stands there.
  if (LISTS.includes(settingOfLabel(filled[0]?.value ?? ''))) return false;
  const own = filled.slice(0, ownSettingCells(filled.map(({ value }) => value)));
  return own.findIndex(({ column }) => column === c) > 0;
}
