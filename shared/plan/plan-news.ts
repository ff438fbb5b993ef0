import { explainSteps, type PlanWords } from './explain-plan';
import type { NoPlan, Plan, PlanProblem } from './model';
import { planSteps } from './plan-rotation';
import type { Steps } from './steps';

/** What is heard of a plan while it is being worked out. Plain data, so that a worker can send it. */
export type PlanNews =
  /** Of the plan until it is there, then of the words. */
  | { readonly kind: 'share'; readonly share: number }
  | { readonly kind: 'plan'; readonly outcome: Plan | NoPlan }
  /** The last news. */
  | { readonly kind: 'words'; readonly words: PlanWords };

/** Plans and explains, news by news: the one way for a worker and for a page that goes in slices. */
export function* planNews(problem: PlanProblem): Generator<PlanNews, void> {
  const outcome = yield* sharesOf(planSteps(problem));
  yield { kind: 'plan', outcome };
  yield { kind: 'words', words: yield* sharesOf(explainSteps(problem, outcome)) };
}

function* sharesOf<Result>(steps: Steps<Result>): Generator<PlanNews, Result> {
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
    yield { kind: 'share', share: step.value };
  }
}
