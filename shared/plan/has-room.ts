import { groupSpan } from './group-span';
import type { PlanPaddock, PlanProblem } from './model';
import { restDue } from './rest-due';

/**
 * Whether the paddocks have room for all nights of the groups if every rest is had and no stay is too long. Where not,
 * every plan falls short somewhere, and none need be looked for. That there is room does not say that there is a plan.
 *
 * Between the day it is ready and the day it closes a paddock bears stays of the longest length with the least rest
 * between them, and no more; days between on which it is shut are not looked at.
 */
export function hasRoom(problem: PlanProblem): boolean {
  const { paddocks, groups, rules } = problem;
  const nights = groups
    .map((group) => groupSpan(group, rules))
    .reduce((sum, { entry, end }) => sum + Math.max(0, end - Math.max(entry, rules.seasonStart)), 0);
  const leastRest = leastRests(problem);
  const room = paddocks
    .map((paddock, p) => mostNights(problem, paddock, p, leastRest(paddock)))
    .reduce((sum, most) => sum + most, 0);
  return nights <= room;
}

/** The least rest that a paddock is due on any day of the season; looked up once for those that follow the farm's rule. */
function leastRests({ rules }: PlanProblem): (paddock: PlanPaddock) => number {
  let least: number | undefined;
  return (paddock) => {
    if (paddock.restDays !== undefined) return restDue(paddock, rules.rest, rules.seasonStart);
    if (least !== undefined) return least;
    least = Number.POSITIVE_INFINITY;
    for (let day = rules.seasonStart; day < rules.seasonEnd; day++)
      least = Math.min(least, restDue(paddock, rules.rest, day));
    return least;
  };
}

function mostNights(
  { rules, groups }: PlanProblem,
  { openFrom, openUntil, lastUsed, ...paddock }: PlanPaddock,
  p: number,
  rest: number,
): number {
  const isInUse = groups.some(({ standing }) => standing?.paddock === p);
  const ready =
    lastUsed === undefined || isInUse ? rules.seasonStart : lastUsed + restDue(paddock, rules.rest, lastUsed);
  const from = isInUse ? rules.seasonStart : Math.max(rules.seasonStart, ready, openFrom ?? -Infinity);
  const until = Math.min(rules.seasonEnd, openUntil === undefined ? Infinity : openUntil + 1);
  const days = Math.max(0, until - from);
  const round = rules.longestStayDays + rest;
  return Math.floor(days / round) * rules.longestStayDays + Math.min(rules.longestStayDays, days % round);
}
