import type { Day } from '../core/calendar/day';
import { groupWeightOn } from './group-weights';
import type { PlanGroup, PlanRules } from './model';

/**
 * The days of a group in the rotation: from `entry` to the day before `end`; none where entry ≥ end.
 *
 *   entry = since, where the group already stands, else max(from, seasonStart)
 *   end   = min(until, seasonEnd, first day at or above untilWeightKg)
 */
export function groupSpan(group: PlanGroup, rules: PlanRules): { entry: Day; end: Day } {
  const entry = group.standing ? group.standing.since : Math.max(group.from, rules.seasonStart);
  const latest = Math.min(group.until ?? rules.seasonEnd, rules.seasonEnd);
  const end = latest <= rules.seasonStart ? entry : firstDayAtWeight(group, entry, latest);
  return end <= rules.seasonStart ? { entry, end: entry } : { entry, end };
}

function firstDayAtWeight(group: PlanGroup, entry: Day, latest: Day): Day {
  if (group.untilWeightKg === undefined) return latest;
  let day = entry;
  while (day < latest && groupWeightOn(group, day) < group.untilWeightKg) day += 1;
  return day;
}
