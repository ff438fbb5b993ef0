import { fallsShort, findMends } from '../../shared/plan/explain-plan';
import type { PlanProblem } from '../../shared/plan/model';
import { planRotation } from '../../shared/plan/plan-rotation';
import { finish } from '../../shared/plan/steps';
import { checkPlan } from './check-plan';

/** Each change that would be offered, followed: its words, and whether nothing falls short any more. */
export function followAdvice(problem: PlanProblem): { words: string; holds: boolean; isLawful: boolean }[] {
  const plan = planRotation(problem);
  if (!('stays' in plan) || !fallsShort(plan)) return [];
  return finish(findMends(problem)).map(({ change, n }) => {
    const changed = change.apply(n);
    const better = planRotation(changed);
    const isLawful = 'stays' in better && checkPlan(changed, better.stays).faults.length === 0;
    return { words: change.words(n), holds: 'stays' in better && !fallsShort(better), isLawful };
  });
}
