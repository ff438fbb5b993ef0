import { useState } from 'preact/hooks';
import { explainPlan, type PlanWords } from '../../../../shared/plan/explain-plan';
import type { NoPlan, Plan, PlanProblem } from '../../../../shared/plan/model';
import { planRotation } from '../../../../shared/plan/plan-rotation';
import { usePage } from '../../page';
import { afterPaint } from '../../parts/after-paint';
import { useWork, type Work } from '../../parts/use-work';

/** A plan and the problem it answers. */
export interface Made {
  readonly problem: PlanProblem;
  readonly plan: Plan;
  /** The plan in words; absent while what would mend it is still being looked for. */
  readonly words: PlanWords | undefined;
}

export interface Planner extends Work {
  readonly made: Made | undefined;
  readonly noPlan: NoPlan | undefined;
  /** Lists, rules or typed moves have changed since the plan was made. */
  readonly stale: boolean;
  readonly plan: () => void;
}

interface Result {
  /** The problem as text, to see whether it is still the same. */
  readonly of: string;
  readonly problem: PlanProblem;
  readonly outcome: Plan | NoPlan;
  readonly words: PlanWords | undefined;
}

/**
 * Plans on demand. The planner takes a second or so and what would mend the plan a few more, during which the page
 * stands still; so it is drawn before each, and "Working…" and then the plan are seen.
 */
export function usePlan(problem: PlanProblem | undefined): Planner {
  const [result, setResult] = useState<Result>();
  const work = useWork();
  const { say } = usePage();
  const key = JSON.stringify(problem ?? null);
  const plan = (): void => {
    if (!problem) return;
    work.start(async () => {
      await afterPaint();
      const outcome = planRotation(problem);
      setResult({ of: key, problem, outcome, words: undefined });
      say('stays' in outcome ? 'The plan is ready.' : 'There is no plan under these rules.');
      await afterPaint();
      setResult({ of: key, problem, outcome, words: explainPlan(problem, outcome) });
    });
  };
  return {
    ...work,
    made: result && madeOf(result),
    noPlan: result && 'reason' in result.outcome ? result.outcome : undefined,
    stale: result !== undefined && result.of !== key,
    plan,
  };
}

function madeOf({ problem, outcome, words }: Result): Made | undefined {
  return 'stays' in outcome ? { problem, plan: outcome, words } : undefined;
}
