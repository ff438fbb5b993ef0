import { describe, expect, it } from 'vitest';
import { explainPlan, explainSteps } from '../../shared/plan/explain-plan';
import { planRotation, planSteps } from '../../shared/plan/plan-rotation';
import type { Steps } from '../../shared/plan/steps';
import { largeFarm } from './large-farm';

/** The shares told on the way, and what comes out. */
function walk<T>(steps: Steps<T>): { shares: number[]; value: T } {
  const shares: number[] = [];
  for (;;) {
    const step = steps.next();
    if (step.done) return { shares, value: step.value };
    shares.push(step.value);
  }
}

describe('planning in steps', () => {
  const farm = largeFarm(2, 8, 120);
  const plan = walk(planSteps(farm));
  const words = walk(explainSteps(farm, plan.value));

  it('comes to the same as at once', () => {
    expect(plan.value).toEqual(planRotation(farm));
    expect(words.value).toEqual(explainPlan(farm, plan.value));
    expect(words.value.changes.length).toBeGreaterThan(0);
  });

  it('tells shares from 0 to 1 that never fall, many of them', () => {
    for (const { shares } of [plan, words]) {
      expect(shares.length).toBeGreaterThan(100);
      expect(Math.min(...shares)).toBeGreaterThanOrEqual(0);
      expect(Math.max(...shares)).toBeLessThanOrEqual(1);
      expect(shares).toEqual([...shares].sort((a, b) => a - b));
    }
  });

  it('can be left alone half way, and nothing is kept of it', () => {
    const steps = planSteps(farm);
    let taken = 0;
    for (const _ of steps) if (++taken === 50) break;
    expect(steps.next().done).toBe(true);
    expect(planRotation(farm)).toEqual(plan.value);
  });
});
