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

/** The one day with a number that stands anywhere in a text; undefined: none, several, or one that could be two. */
export const onlyDayIn: DayOfRemark = (text, order, today) => {
  const parts = text.split(BETWEEN);
  const days = new Set<Day | undefined>();
  for (let first = 0; first < parts.length; first++) {
    const { day, count } = longestDay(parts.slice(first, first + MOST_WORDS), order, today) ?? NO_DAY;
    if (count === 0 || !parts.slice(first, first + count).some((part) => /\d/.test(part))) continue;
    days.add(day);
    first += count - 1;
  }
  return days.size === 1 ? [...days][0] : undefined;
};

const BETWEEN = /[\s,;()!]+/;
const NO_DAY = { day: undefined, count: 0 };

/** The day that the most of the first words make, `day` undefined where it could be two. */
function longestDay(
  parts: readonly string[],
  order: DateOrder,
  today: Day | undefined,
): { day: Day | undefined; count: number } | undefined {
  for (let count = parts.length; count > 0; count--) {
    const day = textDay(parts.slice(0, count).join(' ').replace(/[.:]$/, ''), order, today);
    if (day) return { day: 'first' in day ? day.first : undefined, count };
  }
  return undefined;
}

function dayBehind(words: RegExp, text: string, order: DateOrder, today: Day | undefined): Day | undefined {
  for (const found of fold(text).matchAll(words)) {
    const next = fold(text)
      .slice(found.index + found[0].length)
      .split(BETWEEN)
      .slice(0, MOST_WORDS);
    const read = longestDay(next, order, today);
    if (read?.day !== undefined) return read.day;
  }
  return undefined;
}
