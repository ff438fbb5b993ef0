import { describe, expect, it } from 'vitest';
import { dayFromCivil } from '../../shared/core/calendar/day';
import { groupWeightOn } from '../../shared/plan/group-weights';
import type { PlanProblem } from '../../shared/plan/model';
import { restDue } from '../../shared/plan/rest-due';
import { scorePlan } from '../../shared/plan/score-plan';

const START = dayFromCivil(2026, 5, 1);

/** Three paddocks in a row, the third not adjoining the first. */
const problem: PlanProblem = {
  paddocks: [
    { name: 'A', areaSquareMeters: 1000, lastUsed: START - 10, adjoins: [1] },
    { name: 'B', areaSquareMeters: 1000, adjoins: [0, 2] },
    { name: 'C', areaSquareMeters: 1000, restDays: 3, lastUsed: START - 100, adjoins: [1] },
  ],
  groups: [{ name: 'G', head: 10, weightKg: 50, weighedOn: START, dailyGainKg: 1, from: START }],
  rules: {
    rest: { kind: 'fixed', days: 12 },
    shortestStayDays: 1,
    longestStayDays: 7,
    groundLimit: 1.6,
    moveWeekdays: [true, true, true, true, true, true, true],
    noMoveDays: [],
    seasonStart: START,
    seasonEnd: START + 12,
  },
};

describe('scorePlan, worked by hand', () => {
  it('counts rest, days over the limit, moves and strides', () => {
    const stays = [
      { group: 0, paddock: 0, inDay: START, outDay: START + 4 },
      { group: 0, paddock: 2, inDay: START + 4, outDay: START + 7 },
      { group: 0, paddock: 1, inDay: START + 7, outDay: START + 9 },
      { group: 0, paddock: 0, inDay: START + 9, outDay: START + 12 },
    ];
    // Rest: A had 10 of 12 days, 2 short; C 104 of its own 3; B never used; A again 5 of 12, 7 short. 9 in all.
    // Limit: 1.6 × 1000 m² = 1600 kg·day. Weights at mid-day 50.5, 51.5, … × 10 head:
    //   A days 0–3: 505, 1020, 1545, 2080 → over on the 4th day.          1
    //   C days 4–6: 545, 1100, 1665       → over on the 3rd.              1
    //   B days 7–8: 575, 1160             → none.
    //   A days 9–11: 595, 1200, 1815      → over on the 3rd.              1
    // Strides: A → C. C → B and B → A adjoin.
    expect(scorePlan(problem, stays)).toEqual({
      total: 10 * 9 + 10 * 3 + 4 + 0.5,
      restShortDays: 9,
      overLimitDays: 3,
      moves: 4,
      strides: 1,
    });
  });

  it('takes the rest rule of the month in which the paddock was left, and forage with the start day counted', () => {
    const plain = { name: 'A', areaSquareMeters: 1 };
    const monthly = { kind: 'monthly', days: [60, 50, 40, 30, 20, 21, 22, 23, 24, 25, 26, 27] } as const;
    expect(restDue(plain, monthly, dayFromCivil(2026, 4, 30))).toBe(30);
    expect(restDue(plain, monthly, dayFromCivil(2026, 5, 1))).toBe(20);
    // The worked example of the cell function REGROWTH_DAYS: 26.625 days, so 27 whole ones.
    const growth = [0, 0, 20, 50, 80, 60, 35, 30, 40, 25, 5, 0];
    expect(restDue(plain, { kind: 'forage', growth, needed: 1800 }, dayFromCivil(2026, 4, 20))).toBe(27);
    expect(restDue({ ...plain, restDays: 9 }, monthly, START)).toBe(9);
  });

  it('grows pigs by the bands of NRC 2012 Table 16-1 (from memory), forwards and backwards', () => {
    const pig = { name: 'G', head: 1, weightKg: 25, weighedOn: 0, from: 0 };
    // 25 → 50 at 0.758 kg a day takes 32.98 days; 60 days leave 27.02 at 0.9: 74.32 kg (the example of PIG_WEIGHT).
    expect(groupWeightOn(pig, 60)).toBeCloseTo(74.32, 2);
    expect(groupWeightOn({ ...pig, weightKg: 74.32, weighedOn: 60 }, 0)).toBeCloseTo(25, 2);
    // Outside 5–135 kg the nearest gain is held (judgement).
    expect(groupWeightOn({ ...pig, weightKg: 140 }, 10)).toBeCloseTo(148.67, 6);
    expect(groupWeightOn({ ...pig, weightKg: 4 }, 10)).toBeCloseTo(5 + (10 - 1 / 0.21) * 0.21, 6);
  });
});
