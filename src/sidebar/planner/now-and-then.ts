import type { PlanNews } from '../../../shared/plan/plan-news';

/** How often the share done is told; judgement: as often as a reader can follow. */
const EVERY_MS = 250;

/** Passes news on, the share done only now and then: there are thousands of steps. */
export function nowAndThen(hear: (news: PlanNews) => void): (news: PlanNews) => void {
  let next = performance.now() + EVERY_MS;
  return (news) => {
    if (news.kind === 'share') {
      if (performance.now() < next) return;
      next = performance.now() + EVERY_MS;
    }
    hear(news);
  };
}
