import { isoFromDay } from '../../../../shared/core/calendar/day';
import { nameKey } from '../../../../shared/lists/read-list-cell';
import type { Card, FarmNow } from '../../../../shared/tasks/happened/farm-now';
import type { Happened, What } from '../../../../shared/tasks/happened/happened';

/** What the form of something that has happened begins with. */
export function startsWith({ today, lists, cards }: FarmNow, what: What, card?: Card): Happened {
  const day = isoFromDay(today);
  const own = { what, ...(card && { group: card.group }), day };
  const { next, at, moves = [] } = card ?? {};
  switch (what) {
    case 'moved':
    case 'skipped':
      return { ...own, move: next?.id ?? '' };
    case 'not yet':
      return { ...own, move: next?.id ?? '', day: isoFromDay(Math.max(today, next?.inDay ?? today) + 1) };
    case 'cover': {
      const left = at && moves[moves.indexOf(at) - 1];
      return { ...own, move: (left ?? at)?.id ?? '' };
    }
    case 'shut': {
      const taken = cards.map((one) => nameKey(one.at?.paddock ?? ''));
      const free = lists.paddocks.find(({ name }) => !taken.includes(nameKey(name)));
      return { ...own, paddock: free?.name ?? '', until: '' };
    }
    default:
      return own;
  }
}
