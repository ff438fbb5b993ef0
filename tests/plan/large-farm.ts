import type { PlanProblem } from '../../shared/plan/model';
import { seededNumbers } from './random-farm';

const SEASON_START = 20_545; // 2026-04-02

/**
 * An invented farm of a given size with uneven adjoining paddocks and a ground limit. The weights stay as they are, so
 * that each day asks for as much planning as the next and times can be compared.
 */
export function largeFarm(groups: number, paddocks: number, days: number): PlanProblem {
  const random = seededNumbers(7);
  return {
    paddocks: Array.from({ length: paddocks }, (_, p) => ({
      name: `P${p + 1}`,
      areaSquareMeters: 1500 + Math.floor(random() * 2000),
      adjoins: [p - 1, p + 1].filter((q) => q >= 0 && q < paddocks),
    })),
    groups: Array.from({ length: groups }, (_, g) => ({
      name: `G${g + 1}`,
      head: 8 + Math.floor(random() * 10),
      weightKg: 50 + Math.floor(random() * 40),
      dailyGainKg: 0,
      weighedOn: SEASON_START,
      from: SEASON_START + Math.floor(random() * 7),
    })),
    rules: {
      rest: { kind: 'fixed', days: 35 },
      shortestStayDays: 3,
      longestStayDays: 10,
      groundLimit: 6,
      moveWeekdays: [true, true, true, true, true, true, true],
      noMoveDays: [],
      seasonStart: SEASON_START,
      seasonEnd: SEASON_START + days,
    },
  };
}
