import type { Plan, PlanProblem, Stay } from './model';
import { type PlanTables, planTables } from './plan-tables';
import { scorePlan } from './score-plan';
import { searchAny, searchFlawless, searchPlan } from './search-plan';
import type { Move } from './search-state';
import { partOf, type Steps } from './steps';

/** The best plan found, or undefined; see planRotation for the model, searchPlan for the way. */
export function* findPlan(problem: PlanProblem): Steps<Plan | undefined> {
  if (!hasStays(problem)) return undefined;
  const flawless = yield* partOf(searchFlawless(yield* planTables(problem, true)), 0, 0.1);
  const tables = yield* planTables(problem);
  const moves = yield* searchPlan(tables, flawless);
  if (!moves) return undefined;
  const stays = staysFrom(tables, moves);
  return { stays, score: scorePlan(problem, stays) };
}

/** Whether a plan is found that falls short nowhere; quick, for the many tries of an explanation. */
export function* isFlawless(problem: PlanProblem): Steps<boolean> {
  return hasStays(problem) && (yield* searchFlawless(yield* planTables(problem, true))) !== undefined;
}

/** Whether any lawful plan is found; quick, for the same. */
export function* isPlannable(problem: PlanProblem): Steps<boolean> {
  return hasStays(problem) && (yield* searchAny(yield* planTables(problem))) !== undefined;
}

function hasStays({ rules, paddocks }: PlanProblem): boolean {
  const { shortestStayDays, longestStayDays } = rules;
  return shortestStayDays <= longestStayDays && longestStayDays >= 1 && paddocks.length > 0;
}

function staysFrom(tables: PlanTables, moves: readonly Move[]): Stay[] {
  const start = tables.problem.rules.seasonStart;
  return moves
    .map((move) => ({ group: move.g, paddock: move.p, inDay: start + move.inDay, outDay: start + move.out }))
    .sort((a, b) => a.inDay - b.inDay || a.group - b.group);
}
