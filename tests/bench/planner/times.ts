import { explainSteps } from '../../../shared/plan/explain-plan';
import { planSteps } from '../../../shared/plan/plan-rotation';
import type { Steps } from '../../../shared/plan/steps';
import { largeFarm } from '../../plan/large-farm';

/** Processor time of a plan and its explanation, and of their longest step. */
export function times(): void {
  for (const [groups, paddocks, days, rest] of [
    [2, 14, 180, 60],
    [2, 14, 180, 90],
    [8, 60, 365, 35],
    [8, 60, 365, 75],
    [12, 120, 730, 35],
    [12, 120, 730, 90],
  ] as const) {
    for (const evenness of [0, 0.25]) {
      const farm = largeFarm(groups, paddocks, days);
      const problem = {
        ...farm,
        rules: { ...farm.rules, evenness, rest: { kind: 'fixed', days: rest } as const },
      };
      const plan = walk(planSteps(problem));
      const words = walk(explainSteps(problem, plan.value));
      const short = 'stays' in plan.value ? plan.value.score.restShortDays : NaN;
      console.log(
        `${groups} × ${paddocks} × ${days}, rest ${rest}, evenness ${evenness}: plan ${plan.ms.toFixed(0)} ms, explanation ${words.ms.toFixed(0)} ms, longest step ${Math.max(plan.longest, words.longest).toFixed(0)} ms; ${short} days short, ${words.value.changes.length} changes`,
      );
    }
  }
}

function walk<T>(steps: Steps<T>): { value: T; ms: number; longest: number } {
  let ms = 0;
  let longest = 0;
  for (;;) {
    const before = process.cpuUsage();
    const step = steps.next();
    const spent = process.cpuUsage(before).user / 1000;
    ms += spent;
    longest = Math.max(longest, spent);
    if (step.done) return { value: step.value, ms, longest };
  }
}
