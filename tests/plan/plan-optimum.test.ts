import { describe, expect, it } from 'vitest';
import { planRotation } from '../../shared/plan/plan-rotation';
import { checkPlan } from './check-plan';
import { planOptimum } from './plan-optimum';
import { randomFarm } from './random-farm';

/**
 * Random farms that the solver finishes in a quarter of a second each, so that the test stays short; the benchmark
 * `tests/bench/plan-optimum.ts` runs many more, of several kinds.
 */
const FARMS = [
  3, 4, 5, 7, 8, 9, 10, 11, 12, 13, 15, 21, 24, 26, 28, 29, 30, 32, 33, 34, 35, 36, 38, 39, 40, 41, 42, 43,
  45, 46, 47, 48, 52, 53, 54, 56, 59, 60, 75, 76, 77, 78, 79, 80, 87, 90,
];
/** The demands on the planner: mean and worst share above the proven optimum. */
const MEAN_GAP = 0.01;
const WORST_GAP = 0.05;

describe('plans of small random farms against the exact optimum (HiGHS on an independent program)', () => {
  it('break no rule and stay within 1 % of the optimum on the mean, 5 % at worst', {
    timeout: 120_000,
  }, async () => {
    const gaps: number[] = [];
    for (const seed of FARMS) {
      const problem = randomFarm(seed);
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
      expect(verdict.score, `farm ${seed}`).toEqual(plan.score);
      expect(verdict.score.total, `farm ${seed}`).toBeGreaterThanOrEqual(optimum.total - 1e-6);
      gaps.push(verdict.score.total / optimum.total - 1);
    }
    expect(gaps.length).toBeGreaterThan(35);
    expect(gaps.reduce((sum, gap) => sum + gap, 0) / gaps.length).toBeLessThanOrEqual(MEAN_GAP);
    expect(Math.max(...gaps)).toBeLessThanOrEqual(WORST_GAP);
  });
});
