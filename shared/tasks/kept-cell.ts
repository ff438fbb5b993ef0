import { BLANK } from '../block/cells';
import type { BlockCell, CellChange, TabContent, WireCell } from '../contract';

/** What was typed into a cell, to be written back as it was: a formula stays that formula. */
export function keptCell(value: WireCell, formula: string): BlockCell {
  if (formula.startsWith('=')) return { k: 'f', v: formula };
  if (value === '') return BLANK;
  if (typeof value === 'number') return { k: 'n', v: value };
  if (typeof value === 'boolean') return { k: 'b', v: value };
  return typeof value === 'string' ? { k: 't', v: value } : { k: 'd', v: value.d };
}

/** A cell of a tab, counted from 1, that is to hold something else than what stands there. */
export function cellChange(
  { name, values, formulas }: TabContent,
  row: number,
  column: number,
  after: BlockCell,
): CellChange {
  const before = keptCell(values[row - 1]?.[column - 1] ?? '', formulas[row - 1]?.[column - 1] ?? '');
  return { tab: name, row, column, before, after };
}
