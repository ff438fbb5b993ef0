import { stridePoints } from './group-bound';
import type { PlanTables } from './plan-tables';
import { DAY_POINTS } from './points';
import { emptyState, type Move, type SearchState } from './search-state';
import { stayPoints } from './stay-points';

/** The state after some moves, in the order of their in days, with their points. */
export function replay(tables: PlanTables, moves: readonly Move[]): SearchState {
  const state = emptyState(tables);
  let cost = 0;
  for (const move of moves) {
    const { g, p, inDay, out } = move;
    cost += stayPoints(tables, g, p, inDay, out) + stridePoints(tables, state.at[g]!, p);
    if (!isStanding(tables, move)) cost += DAY_POINTS * Math.max(0, state.ready[p]! - inDay);
    state.next[g] = out;
    state.at[g] = p;
    state.left[p] = out;
    state.ready[p] = tables.ready[p * (tables.days + 1) + out]!;
  }
  return { ...state, cost };
}

/** Whether this is the stay in which the group already stands when the season begins. */
function isStanding(tables: PlanTables, { g, inDay }: Move): boolean {
  const { standing, entry } = tables.groups[g]!;
  return standing !== undefined && inDay === entry;
}
