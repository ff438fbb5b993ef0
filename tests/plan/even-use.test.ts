/** Even use of the ground: the even share and the points worked by hand, plans against the exact optimum. */
import { describe, expect, it } from 'vitest';
import { dayFromCivil } from '../../shared/core/calendar/day';
import { evenShare } from '../../shared/plan/even-share';
import type { Plan, PlanProblem } from '../../shared/plan/model';
import { planRotation } from '../../shared/plan/plan-rotation';
import { scorePlan } from '../../shared/plan/score-plan';
import { loadSpread, paddockUse } from '../../shared/plan/stay-loads';
import { checkPlan } from './check-plan';
import { planOptimum } from './plan-optimum';
import { randomFarm } from './random-farm';

const START = dayFromCivil(2026, 5, 4);

/** 10 pigs of 50 kg that do not grow: 500 kg·day a day. */
function farm(areas: readonly number[], evenness: number, days: number): PlanProblem {
  return {
    paddocks: areas.map((areaSquareMeters, p) => ({ name: `P${p + 1}`, areaSquareMeters })),
    groups: [{ name: 'G', head: 10, weightKg: 50, weighedOn: START, dailyGainKg: 0, from: START }],
    rules: {
      rest: { kind: 'fixed', days: 20 },
      shortestStayDays: 1,
      longestStayDays: 14,
      evenness,
      moveWeekdays: Array<boolean>(7).fill(true),
      noMoveDays: [],
      seasonStart: START,
      seasonEnd: START + days,
    },
  };
}

function planned(problem: PlanProblem): Plan {
  const plan = planRotation(problem);
  if (!('stays' in plan)) throw new Error(plan.reason);
  return plan;
}

describe('even use of the ground', () => {
  it('the even share, by hand', () => {
    // 500 kg × 20 days × 5 ÷ (5 − 1) ÷ 10 000 m² = 1.25 kg·day/m²: 25 days go once round 1 ha.
    expect(evenShare(farm([2000, 2000, 2000, 2000, 2000], 1, 50))).toBeCloseTo(1.25, 12);
  });

  it('the points of each stay, by hand', () => {
    // Even share 1.25. 5 days on 2000 m² are 2500 ÷ 2000 = 1.25, the share: 1 × w. 10 days are twice it: 4 × w.
    const problem = farm([2000, 2000, 2000, 2000, 2000], 0.25, 15);
    const score = scorePlan(problem, [
      { group: 0, paddock: 0, inDay: START, outDay: START + 5 },
      { group: 0, paddock: 1, inDay: START + 5, outDay: START + 15 },
    ]);
    expect(score.unevenPoints).toBeCloseTo(0.25 * (1 + 4), 12);
    expect(score.total).toBeCloseTo(2 + 1.25, 12);
  });

  it('a small pen gets a shorter stay than a large field, and the hardest use falls', () => {
    const areas = [200, 2000, 2000, 4000, 8000, 20000];
    const uneven = planned(farm(areas, 0, 120));
    const even = planned(farm(areas, 1, 120));
    const worst = (plan: Plan): number => loadSpread(farm(areas, 0, 120), plan.stays)!.worst;
    expect(worst(even)).toBeLessThan(worst(uneven) / 2);
    const longest = (p: number): number =>
      Math.max(0, ...even.stays.filter(({ paddock }) => paddock === p).map((s) => s.outDay - s.inDay));
    expect(longest(0)).toBeLessThan(longest(5));
    expect(even.score.restShortDays).toBe(0);
  });

  it('stays within 5 % of the exact optimum (HiGHS on an independent program)', {
    timeout: 120_000,
  }, async () => {
    for (const seed of [3, 8, 24, 33, 54]) {
      const plain = randomFarm(seed);
      const problem = { ...plain, rules: { ...plain.rules, evenness: 0.25 } };
      const plan = planRotation(problem);
      const optimum = await planOptimum(problem);
      if (optimum === 'infeasible') {
        expect(plan, `farm ${seed} has no plan`).not.toHaveProperty('stays');
        continue;
      }
      if (!('total' in optimum)) throw new Error(`farm ${seed}: HiGHS did not finish`);
      if (!('stays' in plan)) throw new Error(`farm ${seed}: no plan found`);
      const verdict = checkPlan(problem, plan.stays);
      expect(verdict.faults, `farm ${seed}`).toEqual([]);
      expect(verdict.score.total, `farm ${seed}`).toBeCloseTo(plan.score.total, 8);
      expect(plan.score.total, `farm ${seed}`).toBeLessThanOrEqual(1.05 * optimum.total);
    }
  });
});

describe('load figures', () => {
  it('worst, median, the stays above twice the median and the use of each paddock, by hand', () => {
    const problem = farm([1000, 2000, 500, 700], 0, 13);
    const stay = (paddock: number, from: number, to: number) => ({
      group: 0,
      paddock,
      inDay: START + from,
      outDay: START + to,
    });
    // 500 kg·day a day: 4 days on 1000 m² are 2, 3 on 2000 0.75, 2 on 1000 1, 4 on 500 4. The median of 0.75, 1, 2
    // and 4 is 1.5; twice that is 3.
    const stays = [stay(0, 0, 4), stay(1, 4, 7), stay(0, 7, 9), stay(2, 9, 13)];
    expect(loadSpread(problem, stays)).toEqual({
      median: 1.5,
      worst: 4,
      worstStay: stays[3],
      hard: [{ stay: stays[3], load: 4 }],
    });
    expect(paddockUse(problem, stays)).toEqual([
      { stays: 2, days: 6, load: 3 },
      { stays: 1, days: 3, load: 0.75 },
      { stays: 1, days: 4, load: 4 },
      { stays: 0, days: 0, load: 0 },
    ]);
    expect(loadSpread(problem, [])).toBeUndefined();
  });
});
