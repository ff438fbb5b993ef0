import { findPlan } from './find-plan';
import type { Plan } from './model';
import type { PlanChange } from './plan-changes';

/** Counts the times a problem is solved again, so that an explanation does not take longer than a plan or so. */
export interface Tries {
  left: number;
}

/**
 * The smallest number of steps of a change found with which a plan is `good`; undefined where none was found.
 * Doubles the steps until the plan is good, then halves the gap. What it returns has been solved, so it is certain
 * to help; that no smaller change would is not certain.
 */
export function smallestChange(
  change: PlanChange,
  good: (plan: Plan) => boolean,
  tries: Tries,
): number | undefined {
  let bad = 0;
  let enough: number | undefined;
  for (let n = 1; n <= change.most && enough === undefined && tries.left > 0; n = nextSize(n, change.most)) {
    if (helps(change, n, good, tries)) enough = n;
    else bad = n;
  }
  while (enough !== undefined && enough - bad > 1 && tries.left > 0) {
    const middle = (bad + enough) >> 1;
    if (helps(change, middle, good, tries)) enough = middle;
    else bad = middle;
  }
  return enough;
}

function nextSize(n: number, most: number): number {
  return n < most ? Math.min(2 * n, most) : most + 1;
}

function helps(change: PlanChange, n: number, good: (plan: Plan) => boolean, tries: Tries): boolean {
  tries.left -= 1;
  const plan = findPlan(change.apply(n), 'quick');
  return plan !== undefined && good(plan);
}
