import type { Plan, PlanProblem, Stay } from './model';
import { type PlanTables, planTables } from './plan-tables';
import { scorePlan } from './score-plan';
import { searchPlan, type Thoroughness } from './search-plan';
import type { Move } from './search-state';

/** The best plan found, or undefined; see planRotation for the model, searchPlan for the way. */
export function findPlan(problem: PlanProblem, thoroughness: Thoroughness): Plan | undefined {
  const { shortestStayDays, longestStayDays } = problem.rules;
  if (shortestStayDays > longestStayDays || longestStayDays < 1) return undefined;
  const tables = planTables(problem);
  const moves = searchPlan(tables, thoroughness);
  if (!moves) return undefined;
  const stays = staysFrom(tables, moves);
  return { stays, score: scorePlan(problem, stays) };
}

function staysFrom(tables: PlanTables, moves: readonly Move[]): Stay[] {
  const start = tables.problem.rules.seasonStart;
  return moves
    .map((move) => ({ group: move.g, paddock: move.p, inDay: start + move.inDay, outDay: start + move.out }))
    .sort((a, b) => a.inDay - b.inDay || a.group - b.group);
}
