import { dayFromCivil } from '../../shared/core/calendar/day';
import type { PlanProblem } from '../../shared/plan/model';

/** The metric sample farm, planned as its text says: a rest of 35 days, moves on Wednesday and Saturday. */
export function larchVale(evenness = 0): PlanProblem {
  const hectares = [0.21, 0.19, 0.22, 0.18, 0.24, 0.2, 0.17, 0.23, 0.19, 0.2, 0.22, 0.18, 0.21, 0.2];
  const rests: Readonly<Record<number, number>> = { 2: 45, 3: 50, 10: 50, 11: 50 };
  const red = dayFromCivil(2026, 4, 20);
  const blue = dayFromCivil(2026, 6, 5);
  const end = dayFromCivil(2026, 10, 31);
  return {
    paddocks: hectares.map((area, p) => ({
      name: `P${p + 1}`,
      areaSquareMeters: area * 10_000,
      ...(rests[p] !== undefined && { restDays: rests[p] }),
      ...(p === 5 && { lastUsed: dayFromCivil(2026, 3, 28) }),
    })),
    groups: [
      {
        name: 'Red batch',
        head: 11,
        weightKg: 38,
        weighedOn: dayFromCivil(2026, 4, 14),
        dailyGainKg: 0.6,
        from: red,
        until: dayFromCivil(2026, 9, 12),
      },
      {
        name: 'Blue batch',
        head: 9,
        weightKg: 27,
        weighedOn: dayFromCivil(2026, 6, 1),
        dailyGainKg: 0.58,
        from: blue,
        until: end,
      },
    ],
    rules: {
      rest: { kind: 'fixed', days: 35 },
      shortestStayDays: 3,
      longestStayDays: 7,
      evenness,
      moveWeekdays: [false, false, false, true, false, false, true],
      noMoveDays: [],
      seasonStart: red,
      seasonEnd: end,
    },
  };
}
