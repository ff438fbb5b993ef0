import { BLANK, blank, formula, number } from '../block/cells';
import type { BlockCell } from '../contract';
import type { KeptCell } from './model';
import { shiftFormula } from './shift-formula';

/** A cell of the grower's, at its new row, with the look and format it had. */
export function movedCell(
  { value, formula: typed, sheetRow, from }: KeptCell,
  row: number,
  format?: string,
): BlockCell {
  const look = from && { from: [...from] as [number, number] };
  if (typed !== '') return { ...formula(shiftFormula(typed, row - sheetRow), format), ...look };
  if (typeof value === 'number') return { ...number(value, format), ...look };
  if (typeof value === 'boolean') return { k: 'b', v: value, ...look };
  if (typeof value === 'object') return { k: 'd', v: value.d, ...look };
  if (value === '') return format ? blank(format) : BLANK;
  return { k: 't', v: value, ...look };
}
