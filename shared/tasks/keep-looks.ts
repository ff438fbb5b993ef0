import type { BlockContent } from '../block/read-block';
import type { BlockCell, BlockStyle } from '../contract';
import type { ComposedBlock } from './composed-block';
import { rowsAgain } from './rows-again';

/** Words of ours look as we make them; what stands in these was typed. */
const TYPED: readonly BlockStyle[] = ['input', 'plain'];

/** The new cells, those that hold what was typed in the old block with the look and number format it had there. */
export function keepLooks(old: BlockContent, { cells, styles }: ComposedBlock): BlockCell[][] {
  const again = rowsAgain(old, cells);
  const kept = cells.map((row) => [...row]);
  for (const [r, at] of again.entries()) {
    if (at === undefined) continue;
    for (const [c, cell] of (cells[at] ?? []).entries()) {
      const isTyped = c > 0 && TYPED.includes(styles[at]?.[c] ?? 'muted') && isSame(cell, old, r, c);
      if (isTyped && cell.k !== 'blank') kept[at]![c] = { ...cell, from: [r, c] };
    }
  }
  return kept;
}

/** A value that was typed there and is written again; formulas of ours look as we make them. */
function isSame(cell: BlockCell, old: BlockContent, r: number, c: number): boolean {
  if (cell.k === 'blank' || cell.k === 'f' || old.formulas[r]?.[c] !== '') return false;
  const value = old.values[r]?.[c];
  return typeof value === 'object' ? cell.k === 'd' && cell.v === value.d : cell.v === value;
}
