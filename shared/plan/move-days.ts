import { type Day, weekday } from '../core/calendar/day';
import type { PlanRules } from './model';

/** The days of the season on which pigs may be moved, in rising order. */
export function moveDaysOf({ moveWeekdays, noMoveDays, seasonStart, seasonEnd }: PlanRules): Day[] {
  const barred = new Set(noMoveDays);
  const days: Day[] = [];
  for (let day = seasonStart; day < seasonEnd; day++) {
    if (moveWeekdays[weekday(day)] && !barred.has(day)) days.push(day);
  }
  return days;
}
