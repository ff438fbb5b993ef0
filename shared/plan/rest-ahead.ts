import type { PlanTables } from './plan-tables';
import type { SearchState } from './search-state';
import type { SearchTask } from './search-task';
import { DAY_POINTS } from './stay-choices';

/**
 * Guess of the points for rest that will be missed in the next round of the paddocks.
 *
 * Entries are foreseen from each group's next move on, one every mean stay, and matched in order of time with the
 * paddocks in order of readiness: among all ways to use each paddock once that is the one with the fewest days
 * short. A guess, not a bound: it only ranks states.
 */
export function restAhead(tables: PlanTables, task: SearchTask, state: SearchState): number {
  const times: number[] = [];
  const steps: number[] = [];
  for (let g = 0; g < tables.groupCount; g++) {
    times.push(state.next[g]!);
    steps.push(tables.groups[g]!.usualStay);
  }
  const ready: number[] = [];
  for (let p = 0; p < tables.paddockCount; p++) {
    if (tables.closes[p]! > times[0]!) ready.push(Math.max(state.ready[p]!, tables.openFrom[p]!));
  }
  ready.sort((a, b) => a - b);
  const last = ready[ready.length - 1] ?? 0;
  let points = 0;
  for (const day of ready) {
    let first = -1;
    for (let g = 0; g < times.length; g++) {
      if (
        times[g]! < Math.min(task.goal[g]!, tables.groups[g]!.end) &&
        (first < 0 || times[g]! < times[first]!)
      )
        first = g;
    }
    if (first < 0 || times[first]! >= last) break;
    points += DAY_POINTS * Math.max(0, day - times[first]!);
    times[first] = times[first]! + steps[first]!;
  }
  return points;
}
