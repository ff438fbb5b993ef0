/** A farm of equal paddocks and groups that do not grow, all in from the first day. Invented. */
import { dayFromCivil } from '../../shared/core/calendar/day';
import type { PlanProblem, PlanRules } from '../../shared/plan/model';

/** A Monday. */
export const START = dayFromCivil(2026, 5, 4);

export function plainFarm(
  paddocks: number,
  groups: number,
  rules: Pick<PlanRules, 'rest' | 'seasonEnd'> & Partial<PlanRules>,
): PlanProblem {
  return {
    paddocks: Array.from({ length: paddocks }, (_, p) => ({ name: `P${p + 1}`, areaSquareMeters: 1000 })),
    groups: Array.from({ length: groups }, (_, g) => ({
      name: `G${g + 1}`,
      head: 10,
      weightKg: 50,
      weighedOn: START,
      dailyGainKg: 0,
      from: START,
    })),
    rules: {
      shortestStayDays: 3,
      longestStayDays: 7,
      moveWeekdays: Array<boolean>(7).fill(true),
      noMoveDays: [],
      seasonStart: START,
      ...rules,
    },
  };
}
