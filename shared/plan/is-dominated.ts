import { DAY_POINTS } from './points';
import type { SearchState } from './search-state';

/**
 * Whether `state` can end no better than `other`, seen from `day`: the groups stand alike in both, and `other` costs
 * less by at least 10 points for each day that a paddock is rested later in it. (Whatever is planned from `state` on
 * can be planned from `other` on, and only the next entry into each such paddock then falls short by more.)
 */
export function isDominated(state: SearchState, other: SearchState, day: number): boolean {
  for (let g = 0; g < state.next.length; g++) {
    if (state.next[g] !== other.next[g] || state.at[g] !== other.at[g]) return false;
  }
  let spare = state.cost - other.cost;
  for (let p = 0; p < state.ready.length && spare >= 0; p++) {
    spare -= DAY_POINTS * Math.max(0, other.ready[p]! - Math.max(state.ready[p]!, day));
  }
  return spare >= 0;
}
