import type { PlanProblem } from '../../../shared/plan/model';
import { type PlanNews, planNews } from '../../../shared/plan/plan-news';
import { nowAndThen } from './now-and-then';

export interface Listener {
  readonly hear: (news: PlanNews) => void;
  /** The planner itself broke. */
  readonly fail: (message: string) => void;
}

/** How long the page works before it draws and listens again; a step more may go over it. Judgement. */
const SLICE_MS = 12;

/** Plans on the page itself, slice by slice. Returns what stops it. */
export function inSlices(problem: PlanProblem, { hear, fail }: Listener): () => void {
  const steps = planNews(problem);
  const tell = nowAndThen(hear);
  const slice = (): void => {
    const until = performance.now() + SLICE_MS;
    try {
      while (performance.now() < until) {
        const step = steps.next();
        if (step.done) return;
        tell(step.value);
      }
    } catch (error) {
      fail(String(error));
      return;
    }
    timer = setTimeout(slice, 0);
  };
  let timer = setTimeout(slice, 0);
  return () => clearTimeout(timer);
}
