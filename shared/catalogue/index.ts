/** All cell functions, in the order in which they are listed to people. */
import type { AnyEntry } from './define';
import { FENCE_GRID } from './fence/fence-grid';
import { FENCE_LENGTH } from './fence/fence-length';
import { PIG_WEIGHT } from './pigs/pig-weight';

export const CATALOGUE: readonly AnyEntry[] = [FENCE_LENGTH, FENCE_GRID, PIG_WEIGHT];
