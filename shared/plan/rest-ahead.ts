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
  /** Groups that still move, the soonest first, from `first` on to before `after`. */
  const queue = new Int32Array(2 * groupCount + paddockCount);
  let first = 0;
  let after = 0;
  const put = (g: number, time: number): void => {
    if (time >= goal[g]!) return;
    times[g] = time;
    let at = after++;
    for (; at > first && isSooner(g, queue[at - 1]!); at--) queue[at] = queue[at - 1]!;
    queue[at] = g;
  };
  const isSooner = (g: number, other: number): boolean =>
    times[g]! < times[other]! || (times[g] === times[other] && g < other);
  const moveOn = (): void => {
    const g = queue[first++]!;
    put(g, times[g]! + stays[g]!);
  };
  return (state) => {
    first = 0;
    after = 0;
    for (let g = 0; g < groupCount; g++) put(g, state.next[g]!);
    if (first === after) return 0;
    const now = times[queue[first]!]!;
    let resting = 0;
    let rested = 0;
    for (let p = 0; p < paddockCount; p++) {
      const day = Math.max(state.ready[p]!, tables.openFrom[p]!);
      if (tables.closes[p]! <= day) continue;
      if (day > now) ready[resting++] = day;
      else rested += 1;
    }
    for (; rested > 0 && first < after; rested--) moveOn();
    if (first === after) return 0;
    let points = 0;
    for (const day of ready.subarray(0, resting).sort()) {
      if (first === after) break;
      points += DAY_POINTS * Math.max(0, day - times[queue[first]!]!);
      moveOn();
    }
    return points;
  };
}
