import type { BlockCell } from '../contract';
import { markOfCell } from './memory';

/**
 * An id for each row of a block: what its composer says, else its first cell (a label, a day) and which one of that
 * kind it is, else how far it stands below the last row that has one.
 */
export function rowIds(
  cells: readonly (readonly BlockCell[])[],
  own: readonly (string | undefined)[] = [],
): readonly string[] {
  const counts = new Map<string, number>();
  let last = '';
  let below = 0;
  return cells.map(([first], r) => {
    const named = own[r] ?? (first && first.k !== 'f' && first.k !== 'blank' ? markOfCell(first) : undefined);
    if (named === undefined) return `${last}+${++below}`;
    const count = (counts.get(named) ?? 0) + 1;
    counts.set(named, count);
    last = count === 1 ? named : `${named}.${count}`;
    below = 0;
    return last;
  });
}
