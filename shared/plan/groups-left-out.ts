import { isoFromDay } from '../core/calendar/day';
import { groupSpan } from './group-span';
import { groupWeightOn } from './group-weights';
import type { PlanGroup, PlanProblem, PlanRules } from './model';

/** One sentence for each group that is on no day in the rotation, with the reason. */
export function groupsLeftOut({ groups, rules }: PlanProblem): string[] {
  return groups.flatMap((group) => {
    const { entry, end } = groupSpan(group, rules);
    return entry < end ? [] : [`“${group.name}” is not in the plan: ${reasonFor(group, rules)}.`];
  });
}

function reasonFor(group: PlanGroup, { seasonStart, seasonEnd }: PlanRules): string {
  const entry = group.standing ? group.standing.since : Math.max(group.from, seasonStart);
  if (entry >= seasonEnd) return `it comes in on ${isoFromDay(entry)}, after the season has ended`;
  if (group.until !== undefined && group.until <= Math.max(entry, seasonStart))
    return `it leaves on ${isoFromDay(group.until)}, before the first day to plan`;
  const isHeavy = group.untilWeightKg !== undefined && groupWeightOn(group, entry) >= group.untilWeightKg;
  if (isHeavy) return `on ${isoFromDay(entry)} it has the weight at which it leaves already`;
  return 'it has left before the first day to plan';
}
