import type { PlanTables } from './plan-tables';
import { DAY_POINTS } from './points';
import type { SearchState } from './search-state';

/**
 * Makes a function that guesses the points for rest that will be missed in the next round of the paddocks.
 *
 * Entries are foreseen from each group's next move on, one every usual stay (or one every stay as long as may be), and matched in order of time with the
 * paddocks in order of readiness: among all ways to use each paddock once that is the one with the fewest days
 * short. A guess, not a bound: it only ranks states. `goal` is the day until which each group's moves count.
 */
export function restAhead(
  tables: PlanTables,
  goal: readonly number[],
  longStays: boolean,
): (state: SearchState) => number {
  const { groupCount, paddockCount, groups } = tables;
  const stays = groups.map((group) => (longStays ? group.longStay : group.usualStay));
  const ready = new Int32Array(paddockCount);
  const times = new Float64Array(groupCount);
  const soonest = (): number => {
    let first = 0;
    for (let g = 1; g < groupCount; g++) if (times[g]! < times[first]!) first = g;
    return first;
  };
  const moveOn = (g: number): void => {
    const time = times[g]! + stays[g]!;
    times[g] = time < goal[g]! ? time : Infinity;
  };
  return (state) => {
    for (let g = 0; g < groupCount; g++) times[g] = state.next[g]! < goal[g]! ? state.next[g]! : Infinity;
    const now = times[soonest()]!;
    let resting = 0;
    let rested = 0;
    for (let p = 0; p < paddockCount; p++) {
      const day = Math.max(state.ready[p]!, tables.openFrom[p]!);
      if (tables.closes[p]! <= day) continue;
      if (day > now) ready[resting++] = day;
      else rested += 1;
    }
    const waiting = ready.subarray(0, resting).sort();
    for (; rested > 0; rested--) moveOn(soonest());
    let points = 0;
    for (const day of waiting) {
      const g = soonest();
      if (times[g] === Infinity) break;
      points += DAY_POINTS * Math.max(0, day - times[g]!);
      moveOn(g);
    }
    return points;
  };
}
