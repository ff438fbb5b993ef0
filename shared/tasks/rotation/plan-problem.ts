/** Puts the lists as read and the rules together into what the planner wants. */
import type { Day } from '../../core/calendar/day';
import type { ReadGroup, ReadPaddock } from '../../lists/model';
import { standingPlace } from '../../lists/standing-place';
import type { PlanGroup, PlanProblem, PlanRules } from '../../plan/model';

export function planProblem(
  paddocks: readonly ReadPaddock[],
  groups: readonly ReadGroup[],
  rules: PlanRules,
): PlanProblem {
  const planned = groups.map(({ cells: _, standsIn, ...group }): PlanGroup => {
    const paddock = standingPlace(standsIn, paddocks);
    const since = standsIn?.since;
    const from = group.from ?? since ?? rules.seasonStart;
    const isPlaced = paddock !== undefined && paddock >= 0 && since !== undefined;
    return { ...group, from, ...(isPlaced && { standing: { paddock, since } }) };
  });
  return {
    paddocks: paddocks.map(({ cells: _, fenceLengthMeters: __, lastUsed, ...paddock }, p) => {
      // Of a paddock in use, the day the last pigs left counts only where it lies before these came.
      const inUse = planned.find(({ standing }) => standing?.paddock === p)?.standing;
      const isBefore = lastUsed !== undefined && lastUsed <= (inUse?.since ?? lastUsed);
      return isBefore ? { ...paddock, lastUsed } : paddock;
    }),
    groups: planned,
    rules,
  };
}

/** The problem from today on where pigs stand already: no move is planned into the past. */
export function fromToday(problem: PlanProblem, today: Day): PlanProblem {
  if (problem.groups.every(({ standing }) => standing === undefined)) return problem;
  const seasonStart = Math.max(problem.rules.seasonStart, today);
  return { ...problem, rules: { ...problem.rules, seasonStart } };
}
