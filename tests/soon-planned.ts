import type { NoPlan, Plan, PlanProblem } from '../shared/plan/model';
import { planRotation } from '../shared/plan/plan-rotation';

/** A plan for tests of what is done with one: found with little searching, so not the best there is. */
export function soonPlanned(problem: PlanProblem): Plan | NoPlan {
  return planRotation({ ...problem, effort: 0.05 });
}
