/** Puts the lists as read and the rules together into what the planner wants. */
import type { ReadGroup, ReadPaddock } from '../../../../shared/lists/model';
import type { PlanProblem, PlanRules } from '../../../../shared/plan/model';

export function planProblem(
  paddocks: readonly ReadPaddock[],
  groups: readonly ReadGroup[],
  rules: PlanRules,
): PlanProblem {
  return {
    paddocks: paddocks.map(({ cells: _, fenceLengthMeters: __, ...paddock }) => paddock),
    groups: groups.map(({ cells: _, ...group }) => ({ ...group, from: group.from ?? rules.seasonStart })),
    rules,
  };
}
