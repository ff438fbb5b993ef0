import type { PlanProblem } from './model';
import type { PlanChange } from './plan-changes';
import type { Steps } from './steps';

/** Counts the times a problem is solved again, so that an explanation does not take longer than a plan or so. */
export interface Tries {
  left: number;
}

/**
 * The smallest number of steps of a change found with which the farm is `good`; undefined where none was found.
 * Doubles the steps until it is good, then halves the gap. What it returns has been solved, so it is certain
 * to help; that no smaller change would is not certain. What cannot be good is not solved, nor counted as a try.
 */
export function* smallestChange(
  change: PlanChange,
  good: (problem: PlanProblem) => Steps<boolean>,
  tries: Tries,
  mayBeGood: (problem: PlanProblem) => boolean = () => true,
): Steps<number | undefined> {
  let bad = 0;
  let enough: number | undefined;
  for (let n = 1; n <= change.most && enough === undefined && tries.left > 0; n = nextSize(n, change.most)) {
    if (yield* helps(n)) enough = n;
    else bad = n;
  }
  while (enough !== undefined && enough - bad > 1 && tries.left > 0) {
    const middle = (bad + enough) >> 1;
    if (yield* helps(middle)) enough = middle;
    else bad = middle;
  }
  return enough;

  function* helps(n: number): Steps<boolean> {
    const changed = change.apply(n);
    if (!mayBeGood(changed)) return false;
    tries.left -= 1;
    return yield* good(changed);
  }
}

function nextSize(n: number, most: number): number {
  return n < most ? Math.min(2 * n, most) : most + 1;
}
