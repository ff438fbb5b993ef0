import { daysOn } from '../core/rotation/days-on';
import { groupSpan } from './group-span';
import type { PlanProblem, PlanRules } from './model';
import { moveDaysOf } from './move-days';
import { isOpen } from './open-days';
import { restDue } from './rest-due';

/** Between these the form's start for the longest stay lies: the design of this tool (judgement). */
const SHORTEST_START = 7;
const LONGEST_START = 14;

/**
 * The longest stay to begin with, in days: the shortest of 7 to 14 that lets the rest be had, so that an ordinary farm
 * does not begin short of rest; 14 where none does, and never below the shortest stay. `longestStayDays` is not read.
 *
 * Needed is the most of daysOn(open paddocks, mean rest due in them, groups in the rotation) over the days of the
 * season. A longest stay gives what stays as long as the move days let them be last on the mean.
 */
export function startLongestStay(problem: PlanProblem): number {
  const shortest = Math.max(SHORTEST_START, problem.rules.shortestStayDays);
  const longest = Math.max(LONGEST_START, shortest);
  const needed = stayForRest(problem);
  let days = shortest;
  while (days < longest && meanStayDays(problem.rules, days) < needed) days += 1;
  return days;
}

function stayForRest({ paddocks, groups, rules }: PlanProblem): number {
  const spans = groups.map((group) => groupSpan(group, rules));
  let most = 0;
  for (let day = rules.seasonStart; day < rules.seasonEnd; day++) {
    const here = spans.filter(({ entry, end }) => entry <= day && day < end).length;
    const open = paddocks.filter((paddock) => isOpen(paddock, day));
    if (here === 0) continue;
    if (open.length <= here) return Infinity;
    const rest = open.reduce((sum, paddock) => sum + restDue(paddock, rules.rest, day), 0) / open.length;
    most = Math.max(most, daysOn(open.length, rest, here));
  }
  return most;
}

/** Mean length of stays that each end on the last move day within `longest` days, or else on the first one after; the season cuts none short. */
function meanStayDays(rules: PlanRules, longest: number): number {
  const days = moveDaysOf(rules);
  let at = 0;
  let stays = 0;
  while (at + 1 < days.length && days[at]! + longest <= days[days.length - 1]!) {
    let next = at + 1;
    while (next + 1 < days.length && days[next + 1]! - days[at]! <= longest) next += 1;
    at = next;
    stays += 1;
  }
  return stays === 0 ? longest : (days[at]! - days[0]!) / stays;
}
