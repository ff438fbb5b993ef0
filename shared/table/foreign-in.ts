import { formulaShape } from '../block/formula-shape';
import type { ColumnKey } from './columns';
import { knownShapes } from './known-shapes';
import type { Reading } from './read-rotation';

/** A formula unlike ours, where others in the column are like ours: a program may have rewritten all of them. */
export function foreignIn(
  { block, columns }: Pick<Reading, 'block' | 'columns'>,
  rows: readonly number[],
  key: ColumnKey,
): (r: number) => boolean {
  const known = knownShapes(key);
  const column = columns.get(key);
  if (!known || column === undefined) return () => false;
  const isOurs = (r: number): boolean => known.has(formulaShape(block.formulas[r]![column]!));
  const hasOurs = rows.some((r) => block.formulas[r]![column] !== '' && isOurs(r));
  return (r) => hasOurs && block.formulas[r]![column] !== '' && !isOurs(r);
}
