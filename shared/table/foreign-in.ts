import { formulaShape } from '../block/formula-shape';
import type { ColumnKey } from './columns';
import { knownShapes } from './known-shapes';
import type { Reading } from './read-rotation';

/** A formula unlike ours, where others in the column are like ours: a program may have rewritten all of them. */
export function foreignIn(
  { block, columns }: Reading,
  rows: readonly number[],
  key: ColumnKey,
): (r: number) => boolean {
  const known = knownShapes(key);
  const column = columns.get(key);
  if (!known || column === undefined) return () => false;
  const isOurs = (r: number): boolean => known.has(formulaShape(block.formulas[r]![column]!));
  const filled = rows.filter((r) => block.formulas[r]![column] !== '');
  // Where the lists say nothing the column is blank, and a formula in it is nobody's but the grower's.
  const isSparse = 2 * filled.length <= rows.length;
  const hasOurs = filled.some(isOurs);
  return (r) => (hasOurs || isSparse) && block.formulas[r]![column] !== '' && !isOurs(r);
}
