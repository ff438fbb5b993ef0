/** Days from which a paddock is open, in a remark: "under water til June 1", "nass bis Juni". */
import type { Day } from '../core/calendar/day';
import type { DateOrder } from '../locale/date-order';
import { fold, textDay } from './text-day';

/** Words after which the day stands on which something that keeps pigs out has ended. Collected by judgement. */
const UNTIL =
  /\b(?:until|til|till|before|bis|vor|jusqu'au|jusqu'a|jusqu'en|avant le|avant|hasta el|hasta|antes de|fino al|fino a|prima del|ate|tot|voor|indtil|fore|for)\s+/g;
/** Words in a day: "1 June 2026". */
const MOST_WORDS = 4;

/** The day that a remark names behind "until"; undefined where it names none, or one that could be two. */
export function remarkDay(text: string, order: DateOrder, today: Day | undefined): Day | undefined {
  for (const found of fold(text).matchAll(UNTIL)) {
    const words = fold(text)
      .slice(found.index + found[0].length)
      .split(/[\s,;()!]+/)
      .slice(0, MOST_WORDS);
    for (let count = words.length; count > 0; count--) {
      const day = textDay(words.slice(0, count).join(' ').replace(/[.:]$/, ''), order, today);
      if (day && 'first' in day) return day.first;
    }
  }
  return undefined;
}
