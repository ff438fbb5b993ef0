import type { BlockContent } from '../block/read-block';
import type { BlockCell } from '../contract';
import { shiftFormula } from '../table/shift-formula';
import { rowsAgain } from './rows-again';

/**
 * The new block with the formulas that the grower typed into setting cells: where the new cell would hold the very
 * number that a formula gave there, the formula stays. A number changed in the sidebar takes its place.
 */
export function keepFormulas<Cells extends readonly (readonly BlockCell[])[]>(
  old: BlockContent,
  next: Cells,
): BlockCell[][] {
  const again = rowsAgain(old, next);
  const cells = next.map((row) => [...row]);
  for (const [r, row] of old.formulas.entries()) {
    const at = again[r];
    if (at === undefined) continue;
    for (const [c, formula] of row.entries()) {
      const now = cells[at]?.[c];
      if (formula === '' || now?.k !== 'n' || now.v !== old.values[r]?.[c]) continue;
      cells[at]![c] = { ...now, k: 'f', v: shiftFormula(formula, at - r) };
    }
  }
  return cells;
}
