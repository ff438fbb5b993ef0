import { expect, it } from 'vitest';
import type { PlanProblem } from '../../shared/plan/model';
import type { PastRow } from '../../shared/table/model';
import { seasonUse } from '../../shared/table/season-use';

const GAINLESS = { weightKg: 100, weighedOn: 20_000, dailyGainKg: 0, from: 20_000 };
const PROBLEM: PlanProblem = {
  paddocks: [
    { name: 'North', areaSquareMeters: 1000 },
    { name: 'South', areaSquareMeters: 500 },
    { name: 'Oak', areaSquareMeters: 2000 },
  ],
  groups: [{ name: 'Reds', head: 10, ...GAINLESS }],
  rules: {
    rest: { kind: 'fixed', days: 0 },
    shortestStayDays: 1,
    longestStayDays: 9,
    moveWeekdays: new Array<boolean>(7).fill(true),
    noMoveDays: [],
    seasonStart: 20_010,
    seasonEnd: 20_020,
  },
};
const SCORE = { total: 0, restShortDays: 0, overLimitDays: 0, moves: 0, strides: 0 };

function past(paddock: string, inDay: number, outDay: number, figures: Partial<PastRow>): PastRow {
  return { sheetRow: 1, id: '', group: 'Reds', paddock, inDay, outDay, lookups: [], typed: [], ...figures };
}

it('adds what happened to what is planned, the stay that goes on once', () => {
  const plan = {
    score: SCORE,
    stays: [
      { group: 0, paddock: 1, inDay: 20_006, outDay: 20_012 },
      { group: 0, paddock: 0, inDay: 20_012, outDay: 20_015 },
    ],
  };
  const figures = { head: 8, startWeightKg: 50, growthDays: 0, dailyGainKg: 0, areaSquareMeters: 1000 };
  const use = seasonUse(PROBLEM, plan, [
    past('north ', 19_990, 19_991, { cover: 0.9 }),
    past('north ', 20_000, 20_005, { ...figures, cover: 0.7 }),
    past('Gone', 20_005, 20_006, figures),
    past('South', 20_006, 20_010, { ...figures, areaSquareMeters: 500 }),
    past('Oak', 20_001, 20_003, {}),
  ]);
  // North: 8 × 50 kg × 5 days ÷ 1000 m² = 2, and 10 × 100 kg × 3 days ÷ 1000 m² = 3. South: 10 × 100 × 6 ÷ 500 = 12.
  // Oak: two days whose figures are not known.
  expect(use).toEqual([
    // The cover left is that of the last stay for which it was typed.
    { stays: 3, days: 9, load: 5, cover: 0.7 },
    { stays: 1, days: 6, load: 12 },
    { stays: 1, days: 2, load: 0 },
  ]);
});
