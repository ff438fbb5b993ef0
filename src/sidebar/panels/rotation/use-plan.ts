import { useState } from 'preact/hooks';
import type { NoPlan, Plan, PlanProblem } from '../../../../shared/plan/model';
import { planRotation } from '../../../../shared/plan/plan-rotation';
import { afterPaint } from '../../parts/after-paint';
import { useWork, type Work } from '../../parts/use-work';

/** A plan and the problem it answers. */
export interface Made {
  readonly problem: PlanProblem;
  readonly plan: Plan;
}

export interface Planner extends Work {
  readonly made: Made | undefined;
  readonly noPlan: NoPlan | undefined;
  /** Lists, rules or typed moves have changed since the plan was made. */
  readonly stale: boolean;
  readonly plan: () => void;
}

/** Plans on demand; the page is drawn first, so that "Working…" is seen. */
export function usePlan(problem: PlanProblem | undefined): Planner {
  const [result, setResult] = useState<{ of: string; problem: PlanProblem; outcome: Plan | NoPlan }>();
  const work = useWork();
  const key = JSON.stringify(problem ?? null);
  const plan = (): void => {
    if (!problem) return;
    work.start(async () => {
      await afterPaint();
      setResult({ of: key, problem, outcome: planRotation(problem) });
    });
  };
  const outcome = result?.outcome;
  return {
    ...work,
    made: result && outcome && 'stays' in outcome ? { problem: result.problem, plan: outcome } : undefined,
    noPlan: outcome && 'reason' in outcome ? outcome : undefined,
    stale: result !== undefined && result.of !== key,
    plan,
  };
}
