import { NEVER, type PlanTables } from './plan-tables';

/** What one stay adds to the score for being a move, and for its days over the ground limit. */
export const MOVE_POINTS = 1;
export const STRIDE_POINTS = 0.5;
export const DAY_POINTS = 10;

/**
 * Calls `take(out day, points for days over the limit)` for every stay of a group that may begin in this
 * paddock on this day and end by `goal`. Every rule that concerns one stay alone stands here.
 */
export function stayChoices(
  tables: PlanTables,
  g: number,
  p: number,
  day: number,
  goal: number,
  take: (out: number, points: number) => void,
): void {
  const group = tables.groups[g]!;
  const closes = tables.closes[p]!;
  if (day < tables.openFrom[p]! || day >= closes) return;
  const { shortestStayDays, longestStayDays } = tables.problem.rules;
  const within = group.withinLimit ? group.withinLimit[p * (tables.days + 1) + day]! : NEVER;
  const latest = Math.min(day + longestStayDays, closes, goal);
  const earliest = day + (within < shortestStayDays ? 1 : shortestStayDays);
  const { moveDays } = tables;
  let at = earliest <= tables.days ? tables.moveIndex[earliest]! : moveDays.length;
  for (; at < moveDays.length; at++) {
    const out = moveDays[at]!;
    if (out > latest || out >= group.end) break;
    take(out, DAY_POINTS * Math.max(0, out - day - within));
  }
  if (group.end <= latest) take(group.end, DAY_POINTS * Math.max(0, group.end - day - within));
}
