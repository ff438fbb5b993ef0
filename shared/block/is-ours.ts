import type { WireCell } from '../contract';
import { isMemory } from './memory';
import { MOVE_KEYS, STAY_KEYS } from './own-words';

/** How the titles of our tables begin. By them, or by headings that only ours have, one without a memory is known. */
const TITLES = [
  'Rotation from ',
  'Paddocks by week, ',
  'Paddocks on the map',
  'Fence materials',
  'Fence walk',
  'Will it bite',
  'Feed, water, shelter and ground',
  'Training pen',
  'Training log',
  'Herd log',
  'Today',
  'This file and its copies',
];
const KEYS: readonly unknown[] = [...Object.values(MOVE_KEYS), ...Object.values(STAY_KEYS)];

/**
 * Whether what stands in a named area is a table of ours. It is not where the name came to lie over something of the
 * grower's, nor where all that is left is the memory.
 */
export function isOurs(rows: readonly (readonly WireCell[])[]): boolean {
  const cells = rows.flat();
  if (cells.every((cell) => cell === '' || isMemory(cell))) return false;
  return cells.some((cell) => isMemory(cell) || KEYS.includes(cell) || isTitle(cell));
}

function isTitle(cell: WireCell): boolean {
  return typeof cell === 'string' && TITLES.some((title) => cell.startsWith(title));
}
