import { cellA1 } from '../block/a1';
import type { BlockContent } from '../block/read-block';
import type { BlockCell, WireCell } from '../contract';
import { rowsAgain } from './rows-again';

type Cells = readonly (readonly BlockCell[])[];

/**
 * Cells that somebody changed in the sheet after the page had read the block, and that the new block would set back:
 * what was read differs from what stands now, and what stands now differs from what would be written. Rows are found
 * by their label; a label that came in meanwhile and that the new block does not have counts too.
 */
export function changedMeanwhile(asRead: BlockContent, now: BlockContent, next: Cells): readonly string[] {
  const read = new Map(rowsAgain(asRead, next).map((row, r) => [row, r]));
  const labels = new Set(asRead.values.map(([first]) => first));
  const again = rowsAgain(now, next);
  return now.values.flatMap((row, r) => {
    const at = again[r];
    const cell = (column: number): string => cellA1(now.info.row + r, now.info.column + column);
    if (at === undefined) {
      const isNew = typeof row[0] === 'string' && row[0] !== '' && !labels.has(row[0]);
      return isNew && now.formulas[r]?.[0] === '' ? [cell(0)] : [];
    }
    const before = asRead.values[read.get(at) ?? -1];
    return row.flatMap((value, c) => {
      const isFormula = (now.formulas[r]?.[c] ?? '') !== '';
      const isChanged = before !== undefined && !isSame(value, before[c]);
      return !isFormula && isChanged && !isWritten(value, next[at]?.[c], c) ? [cell(c)] : [];
    });
  });
}

function isSame(a: WireCell, b: WireCell | undefined): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}

/** Column of the settings, the only one where a blank that is to be written says something. */
const SETTING_COLUMN = 1;

/** Whether the new cell holds that value. What was typed over a formula or beside the table is told elsewhere. */
function isWritten(value: WireCell, next: BlockCell | undefined, column: number): boolean {
  if (next === undefined || next.k === 'f') return true;
  if (next.k === 'blank') return value === '' || column !== SETTING_COLUMN;
  return isSame(value, next.k === 'd' ? { d: next.v } : next.v);
}
