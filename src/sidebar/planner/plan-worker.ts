/** The page's own script, started again as a worker: it waits for a problem and tells what it finds. */
import type { PlanProblem } from '../../../shared/plan/model';
import { type PlanNews, planNews } from '../../../shared/plan/plan-news';
import { nowAndThen } from './now-and-then';

interface WorkerScope {
  onmessage: (event: { readonly data: PlanProblem }) => void;
  readonly postMessage: (news: PlanNews) => void;
}

export function waitAsWorker(): void {
  const scope = globalThis as unknown as WorkerScope;
  scope.onmessage = ({ data }) => {
    const tell = nowAndThen((news) => scope.postMessage(news));
    for (const news of planNews(data)) tell(news);
  };
}
