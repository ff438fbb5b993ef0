import { cellA1 } from '../block/a1';
import { firstFew } from '../block/first-few';
import type { BlockContent } from '../block/read-block';
import type { BlockCell } from '../contract';
import { rowsAgain } from './rows-again';

/** Row and column in a block, from 0. */
export type Place = readonly [row: number, column: number];

/** Cells that hold a typed value where the new block has a formula in the same row and column. */
export function typedOverCells(old: BlockContent, next: readonly (readonly BlockCell[])[]): readonly Place[] {
  const again = rowsAgain(old, next);
  return old.values.flatMap((row, r) => {
    const now = next[again[r] ?? -1];
    return row.flatMap((value, c): Place[] => {
      const isTyped = value !== '' && (old.formulas[r]?.[c] ?? '') === '';
      return isTyped && now?.[c]?.k === 'f' ? [[r, c]] : [];
    });
  });
}

/** Refuses to write over values that were typed over formulas: the new block would set the formulas again. */
export function refuseTypedOver(old: BlockContent, places: readonly Place[]): void {
  if (places.length === 0) return;
  const cells = places.map(([r, c]) => cellA1(old.info.row + r, old.info.column + c));
  throw new Error(
    `These cells held formulas and were typed over: ${firstFew(cells)}. Writing anew would set the formulas again. Type the value where it comes from (a list, a setting, the rotation table) or note it outside the table, and clear the cells first. Nothing was written.`,
  );
}
