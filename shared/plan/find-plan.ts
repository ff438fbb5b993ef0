import { hasRoom } from './has-room';
import { isInSpan } from './keep-wishes';
import type { Plan, PlanProblem, Stay, Wish } from './model';
import { planTables } from './plan-tables';
import { scorePlan } from './score-plan';
import { searchAny, searchFlawless, searchFrom, searchPlan } from './search-plan';
import type { Move } from './search-state';
import type { Steps } from './steps';

/** The best plan found, or undefined; see planRotation for the model, searchPlan for the way. */
export function* findPlan(problem: PlanProblem): Steps<Plan | undefined> {
  if (!hasStays(problem)) return undefined;
  const { wishes = [], ...free } = problem;
  const possible = wishes.filter((wish) => isInSpan(problem, wish));
  const withAll = possible.length > 0 ? { ...problem, wishes: possible } : free;
  const stays = yield* findStays(withAll);
  if (stays) return planOf(withAll, stays, wishes);
  if (possible.length === 0) return undefined;
  const withSome = yield* withoutLeast(withAll, possible);
  const others = yield* findStays(withSome);
  return others && planOf(withSome, others, wishes);
}

function planOf(problem: PlanProblem, stays: readonly Stay[], wishes: readonly Wish[]): Plan {
  const droppedWishes = wishes.filter((wish) => !problem.wishes?.includes(wish));
  const plan = { stays, score: scorePlan(problem, stays) };
  return droppedWishes.length > 0 ? { ...plan, droppedWishes } : plan;
}

/** The wish of the nearest day is the last one to be given up. */
function* withoutLeast(problem: PlanProblem, wishes: readonly Wish[]): Steps<PlanProblem> {
  let some: PlanProblem = { ...problem, wishes: [] };
  for (const wish of [...wishes].sort((a, b) => a.day - b.day)) {
    const more = { ...problem, wishes: [...(some.wishes ?? []), wish] };
    if (yield* isPlannable(more)) some = more;
  }
  return some;
}

/**
 * Beside a plan before, the plan that would be made without it is looked for too: where both are one, nothing has
 * changed and nothing changes.
 */
function* findStays(problem: PlanProblem): Steps<Stay[] | undefined> {
  const { before, ...fresh } = problem;
  const moves = before ? yield* movesAfter(problem, fresh) : yield* freshMoves(fresh);
  const start = problem.rules.seasonStart;
  return moves
    ?.map((move) => ({ group: move.g, paddock: move.p, inDay: start + move.inDay, outDay: start + move.out }))
    .sort((a, b) => a.inDay - b.inDay || a.group - b.group);
}

function* freshMoves(problem: PlanProblem): Steps<readonly Move[] | undefined> {
  const flawless = hasRoom(problem) ? yield* searchFlawless(yield* planTables(problem, true)) : undefined;
  return yield* searchPlan(yield* planTables(problem), flawless);
}

function* movesAfter(problem: PlanProblem, fresh: PlanProblem): Steps<readonly Move[] | undefined> {
  const moves = yield* freshMoves(fresh);
  return yield* searchFrom(yield* planTables(problem), moves);
}

/**
 * Whether a plan is found that falls short nowhere, on a farm that has room for one; quick, for the many tries of an
 * explanation.
 */
export function* isFlawless(problem: PlanProblem): Steps<boolean> {
  return hasStays(problem) && (yield* searchFlawless(yield* planTables(problem, true), true)) !== undefined;
}

/** Whether any lawful plan is found; quick, for the same. */
export function* isPlannable(problem: PlanProblem): Steps<boolean> {
  return hasStays(problem) && (yield* searchAny(yield* planTables(problem))) !== undefined;
}

function hasStays({ rules, paddocks }: PlanProblem): boolean {
  const { shortestStayDays, longestStayDays } = rules;
  return shortestStayDays <= longestStayDays && longestStayDays >= 1 && paddocks.length > 0;
}
