/** Days in remarks: from which a paddock is open ("under water til June 1", "nass bis Juni"), by which it must be empty ("out by 8/20"). */
import type { Day } from '../core/calendar/day';
import type { DateOrder } from '../locale/date-order';
import { fold, textDay } from './text-day';

/** Words after which the day stands on which something that keeps pigs out has ended. Collected by judgement. */
const UNTIL =
  /\b(?:until|til|till|before|bis|vor|jusqu'au|jusqu'a|jusqu'en|avant le|avant|hasta el|hasta|antes de|fino al|fino a|prima del|ate|tot|voor|indtil|fore|for)\s+/g;
/** Words in a day: "1 June 2026". */
const MOST_WORDS = 4;

/** Words after which the day stands by which pigs must be out. Collected by judgement. */
const OUT_BY =
  /\b(?:(?:out|off|gone|clear) (?:by|before)|(?:raus|weg) (?:bis|vor)|(?:sortir|sortis|vide) avant(?: le)?|(?:fuera|sacar|salen) antes de(?:l)?|(?:fuori|via) (?:entro|prima)(?: il| del)?|(?:fora|tirar|sair) (?:ate|antes de)|(?:eruit|weg) (?:voor|tegen)|(?:ut|bort) (?:fore|senast)|(?:ud|vaek) (?:inden|senest)|(?:ut|bort) (?:innen|for))\s+/g;

type DayOfRemark = (text: string, order: DateOrder, today: Day | undefined) => Day | undefined;

/** The day from which a remark says that a paddock is open; undefined where it says none, or one that could be two. */
export const openingRemarkDay: DayOfRemark = (text, order, today) =>
  dayBehind(OUT_BY, text, order, today) === undefined ? dayBehind(UNTIL, text, order, today) : undefined;

/** The day by which a remark says that pigs must be out. */
export const closingRemarkDay: DayOfRemark = (text, order, today) => dayBehind(OUT_BY, text, order, today);

function dayBehind(words: RegExp, text: string, order: DateOrder, today: Day | undefined): Day | undefined {
  for (const found of fold(text).matchAll(words)) {
    const next = fold(text)
      .slice(found.index + found[0].length)
      .split(/[\s,;()!]+/)
      .slice(0, MOST_WORDS);
    for (let count = next.length; count > 0; count--) {
      const day = textDay(next.slice(0, count).join(' ').replace(/[.:]$/, ''), order, today);
      if (day && 'first' in day) return day.first;
    }
  }
  return undefined;
}
