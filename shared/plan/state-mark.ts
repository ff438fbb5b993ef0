import type { PlanTables } from './plan-tables';
import type { SearchState } from './search-state';

/**
 * A number that is equal for states from which the same futures cost the same, seen from `day`: paddocks of one
 * kind may change places, and a paddock that is rested is rested, since whenever. 53 bits of a hash.
 */
export function stateMark(tables: PlanTables, kind: Int32Array, state: SearchState, day: number): number {
  let a = 0;
  let b = 0;
  const { paddockCount, groupCount } = tables;
  for (let p = 0; p < paddockCount; p++) {
    const wait = Math.max(0, state.ready[p]! - day);
    const busy = Math.max(0, state.left[p]! - day);
    if (wait === 0 && busy === 0) continue;
    const h = scramble(scramble((kind[p]! << 16) ^ wait) ^ busy);
    a = (a + h) | 0;
    b = (b + scramble(h ^ 0x5bd1e995)) | 0;
  }
  for (let g = 0; g < groupCount; g++) {
    const at = state.at[g]!;
    const h = scramble(scramble((g << 20) ^ state.next[g]!) ^ (at === paddockCount ? -1 : kind[at]!));
    a = (a + h) | 0;
    b = (b + scramble(h ^ 0x27d4eb2f)) | 0;
  }
  return (a >>> 0) * 0x200000 + (b & 0x1fffff);
}

/** The finisher of MurmurHash3 (A. Appleby, public domain; from memory). */
function scramble(value: number): number {
  let h = Math.imul(value ^ (value >>> 16), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return h ^ (h >>> 16);
}
