import { stridePoints } from './group-bound';
import type { PlanTables } from './plan-tables';
import { DAY_POINTS } from './points';
import { emptyState, type Move, type SearchState } from './search-state';
import { flawedDays, stayPoints } from './stay-points';

/** The state after some moves, in the order of their in days, with their points and all days that fall short, over the limit or too long. */
export function replay(tables: PlanTables, moves: readonly Move[]): SearchState & { readonly flaws: number } {
  const state = emptyState(tables);
  let cost = 0;
  let flaws = 0;
  for (const move of moves) {
    const { g, p, inDay, out } = move;
    const short = isStanding(tables, move) ? 0 : Math.max(0, state.ready[p]! - inDay);
    cost += stayPoints(tables, g, p, inDay, out) + stridePoints(tables, state.at[g]!, p) + DAY_POINTS * short;
    flaws += short + flawedDays(tables, g, p, inDay, out);
    state.next[g] = out;
    state.at[g] = p;
    state.left[p] = out;
    state.ready[p] = tables.ready[p * (tables.days + 1) + out]!;
  }
  return { ...state, cost, flaws };
}

/** Whether this is the stay in which the group already stands when the season begins. */
function isStanding(tables: PlanTables, { g, inDay }: Move): boolean {
  const { standing, entry } = tables.groups[g]!;
  return standing !== undefined && inDay === entry;
}
