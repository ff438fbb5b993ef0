import type { WireCell } from '../contract';
import { isMemory } from './memory';
import { MOVE_KEYS, STAY_KEYS, TITLES } from './own-words';

/** Headings that only tables of ours have. */
const KEYS: readonly unknown[] = [...Object.values(MOVE_KEYS), ...Object.values(STAY_KEYS)];

/**
 * Whether what stands in a named area is a table of ours. It is not where the name came to lie over something of the
 * grower's, nor where all that is left is the memory. One without a memory is known by its title or headings.
 */
export function isOurs(rows: readonly (readonly WireCell[])[]): boolean {
  const cells = rows.flat();
  if (cells.every((cell) => cell === '' || isMemory(cell))) return false;
  return cells.some((cell) => isMemory(cell) || KEYS.includes(cell) || isTitle(cell));
}

function isTitle(cell: WireCell): boolean {
  return typeof cell === 'string' && Object.values(TITLES).some((title) => cell.startsWith(title));
}
