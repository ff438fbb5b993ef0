import { useState } from 'preact/hooks';
import type { NoPlan, Plan, PlanProblem, PlanRules } from '../../../../shared/plan/model';
import { planRotation } from '../../../../shared/plan/plan-rotation';
import { afterPaint } from '../../parts/after-paint';
import { useWork, type Work } from '../../parts/use-work';
import { planProblem } from './plan-problem';
import type { Lists } from './use-lists';

/** A plan and the problem it answers. */
export interface Made {
  readonly problem: PlanProblem;
  readonly plan: Plan;
}

export interface Planner extends Work {
  readonly made: Made | undefined;
  readonly noPlan: NoPlan | undefined;
  /** What stands in the way of planning at all, as a sentence. */
  readonly missing: string | undefined;
  /** Lists or rules have changed since the plan was made. */
  readonly stale: boolean;
  readonly plan: () => void;
}

export function usePlan(lists: Lists, rules: PlanRules | undefined): Planner {
  const [result, setResult] = useState<{ of: string; problem: PlanProblem; outcome: Plan | NoPlan }>();
  const work = useWork();
  const missing = whatIsMissing(lists, rules);
  const problem = rules && !missing ? planProblem(lists.paddocks, lists.groups, rules) : undefined;
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
    missing,
    stale: result !== undefined && result.of !== key,
    plan,
  };
}

function whatIsMissing(lists: Lists, rules: PlanRules | undefined): string | undefined {
  if (!lists.chosen.paddocks || !lists.chosen.groups) return 'First both lists must be found (step 1).';
  if (lists.problems.length > 0) return 'First put right what is wrong in the lists (step 1).';
  if (lists.paddocks.length === 0 || lists.groups.length === 0)
    return 'First both lists must hold something (step 1).';
  return rules ? undefined : 'First put right what is wrong in the rules (step 2).';
}
