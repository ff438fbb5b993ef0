import type { PlanProblem } from './model';
import type { PlanChange } from './plan-changes';
import type { Steps } from './steps';

/** Counts the times a problem is solved again, so that an explanation does not take longer than a plan or so. */
export interface Tries {
  left: number;
}

/**
 * The smallest number of steps of a change found with which the farm is `good`; undefined where none was found.
 * Begins with the fewest that `mayBeGood`, takes ever more until it is good, then halves the gap. What it returns has been
 * solved, so it is certain to help; that no smaller change would is not certain. What cannot be good is not solved.
 */
export function* smallestChange(
  change: PlanChange,
  good: (problem: PlanProblem) => Steps<boolean>,
  tries: Tries,
  mayBeGood: (problem: PlanProblem) => boolean = () => true,
): Steps<number | undefined> {
  const first = yield* fewestSteps(change, mayBeGood);
  let bad = first - 1;
  let enough: number | undefined;
  let more = Math.ceil(first / 4);
  for (let n = first; n <= change.most && enough === undefined && tries.left > 0; ) {
    if (yield* helps(n)) enough = n;
    else bad = n;
    n = n < change.most ? Math.min(n + more, change.most) : n + 1;
    more *= 2;
  }
  while (enough !== undefined && enough - bad > 1 && tries.left > 0) {
    const middle = (bad + enough) >> 1;
    if (yield* helps(middle)) enough = middle;
    else bad = middle;
  }
  return enough;

  function helps(n: number): Steps<boolean> {
    tries.left -= 1;
    return good(change.apply(n));
  }
}

/** The fewest steps that may be good, found by halving; one more than the most where none may. */
function* fewestSteps(
  { most, apply }: PlanChange,
  mayBeGood: (problem: PlanProblem) => boolean,
): Steps<number> {
  let low = 1;
  let high = most + 1;
  while (low < high) {
    yield 0;
    const middle = (low + high) >> 1;
    if (mayBeGood(apply(middle))) high = middle;
    else low = middle + 1;
  }
  return low;
}
