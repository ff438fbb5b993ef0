/** Dates that stand in the sheet as text: "4/10/26", "10.04.2026", "Oct 2025", "3 juin". */
import { civilFromDay, type Day, dayFromCivil, dayFromIso } from '../core/calendar/day';
import type { DateOrder } from '../locale/date-order';

export type TextDay =
  /** A day, or the first and the last day of a month. */
  | { readonly first: Day; readonly last: Day }
  /** Two days that the text may mean. */
  | { readonly either: readonly [Day, Day] };

const NUMBERS = /^(\d{1,4})([./-])\s?(\d{1,4})(?:\2\s?(\d{2,4})?)?$/;
/** "v. 38", "KW 38/2026": a week of ISO 8601. */
const WEEK = /^(?:v\.|week|wk|kw|woche|vecka|uge|uke|semaine|sem\.)\s*(\d{1,2})(?:[\s,/-]+(20\d\d))?$/;
/** Words that stand between day, month and year. */
const SMALL_WORDS = /^(st|nd|rd|th|of|the|on|den|de|di|der|am|le|er|el|il|o|d|em|op)$/;
/** Centuries are left out of short years: pigs are of this one. */
const CENTURY = 2000;

/** The day or month that a text names; undefined where it names none, or a day without a year and `today` is unknown. */
export function textDay(text: string, order: DateOrder, today: Day | undefined): TextDay | undefined {
  const plain = text.trim();
  const [, week, ofYear] = WEEK.exec(fold(plain)) ?? [];
  if (week !== undefined) return weekOf(Number(week), ofYear, today);
  const [, a, mark, b, c] = NUMBERS.exec(plain) ?? [];
  if (a === undefined || b === undefined) return inWords(plain, today);
  if (a.length === 4) return c === undefined ? monthOf(yearOf(a), Number(b)) : dayOf(yearOf(a), b, c);
  if (b.length === 4) return c === undefined ? monthOf(yearOf(b), Number(a)) : undefined;
  const on = (day: string, month: string): TextDay | undefined =>
    c === undefined ? nearest(Number(month), Number(day), today) : dayOf(yearOf(c), month, day);
  const [dayFirst, monthFirst] = [on(a, b), on(b, a)];
  if (mark === '.' || !monthFirst) return dayFirst;
  if (!dayFirst || order === 'mdy' || a === b) return monthFirst;
  if (order === 'dmy') return dayFirst;
  return 'first' in dayFirst && 'first' in monthFirst
    ? { either: [monthFirst.first, dayFirst.first] }
    : undefined;
}

/** The day of a text that can only be one, whatever the sheet's order: 27 is no month, and "4/5/26" may be two days. */
export function onlyDay(text: string): Day | undefined {
  const read = textDay(text, undefined, undefined);
  return read && 'first' in read && read.first === read.last ? read.first : undefined;
}

/** The order that a text gives away: "20/10/25" can only begin with the day. */
export function orderGivenAway(text: string): DateOrder {
  const [, a, mark, b, c] = NUMBERS.exec(text.trim()) ?? [];
  if (mark === '.' || a === undefined || b === undefined || c === undefined || a.length > 2) return undefined;
  if (Number(a) > MONTHS === Number(b) > MONTHS) return undefined;
  return Number(a) > MONTHS ? 'dmy' : 'mdy';
}

const MONTHS = 12;
const LONGEST_MONTH = 31;

function inWords(text: string, today: Day | undefined): TextDay | undefined {
  const tokens = fold(text).match(/\p{L}+|'?\d+/gu) ?? [];
  const words = tokens.filter((token) => /\p{L}/u.test(token) && !SMALL_WORDS.test(token));
  const [month, ...others] = words.flatMap((word) => monthNamed(word) ?? []);
  const unknown = words.filter((word) => monthNamed(word) === undefined);
  // A weekday stands before the rest.
  if (month === undefined || others.length > 0 || unknown.length > 1) return undefined;
  if (unknown.length === 1 && (tokens[0] !== unknown[0] || tokens.length < 3)) return undefined;
  const numbers = tokens.filter((token) => /\d/.test(token));
  // "1 July, 200": a sum of money, no year.
  if (numbers.length > 2 || numbers.some((token) => !/^'?\d{1,2}$|^(19|20)\d\d$/.test(token)))
    return undefined;
  const isYear = (token: string): boolean => /^'|\d{4}/.test(token) || Number(token) > LONGEST_MONTH;
  const year = numbers.find(isYear) ?? numbers[1];
  const day = numbers.find((token) => token !== year);
  if (year === undefined) return nearest(month, day === undefined ? undefined : Number(day), today);
  return day === undefined ? monthOf(yearOf(year), month) : dayOf(yearOf(year), String(month), day);
}

function yearOf(text: string): number {
  const year = Number(text.replace("'", ''));
  return year < 100 ? CENTURY + year : year;
}

function dayOf(year: number, month: string, day: string): TextDay | undefined {
  const first = dayFromIso([pad(year, 4), pad(Number(month)), pad(Number(day))].join('-'));
  return first === undefined ? undefined : { first, last: first };
}

function monthOf(year: number, month: number): TextDay | undefined {
  if (month < 1 || month > MONTHS) return undefined;
  const after = month === MONTHS ? dayFromCivil(year + 1, 1, 1) : dayFromCivil(year, month + 1, 1);
  return { first: dayFromCivil(year, month, 1), last: after - 1 };
}

function pad(value: number, digits = 2): string {
  return String(value).padStart(digits, '0');
}

/** A day or month without a year: that of the year in which it lies nearest to today. */
function nearest(month: number, day: number | undefined, today: Day | undefined): TextDay | undefined {
  if (today === undefined) return undefined;
  const { year } = civilFromDay(today);
  const near = [year - 1, year, year + 1].flatMap((one): { first: Day; last: Day }[] => {
    const found = day === undefined ? monthOf(one, month) : dayOf(one, String(month), String(day));
    return found && 'first' in found ? [found] : [];
  });
  return near.sort((p, q) => Math.abs(p.first - today) - Math.abs(q.first - today))[0];
}

const WEEK_DAYS = 7;

/** From Monday to Sunday; without a year the nearest to today. The week with 4 January is the first (ISO 8601). */
function weekOf(week: number, ofYear: string | undefined, today: Day | undefined): TextDay | undefined {
  if (week < 1 || week > LONGEST_YEAR_WEEKS || (ofYear === undefined && today === undefined))
    return undefined;
  const near = civilFromDay(today ?? 0).year;
  const years = ofYear === undefined ? [near - 1, near, near + 1] : [Number(ofYear)];
  const mondays = years.map((year) => {
    const fourth = dayFromCivil(year, 1, 4);
    return fourth - ((((fourth - A_MONDAY) % WEEK_DAYS) + WEEK_DAYS) % WEEK_DAYS) + WEEK_DAYS * (week - 1);
  });
  const [first] = mondays.sort((p, q) => Math.abs(p - (today ?? p)) - Math.abs(q - (today ?? q)));
  return first === undefined ? undefined : { first, last: first + WEEK_DAYS - 1 };
}

const LONGEST_YEAR_WEEKS = 53;
const A_MONDAY = dayFromCivil(2026, 1, 5);

/** Lower case without accents, as growers also type words. */
export function fold(text: string): string {
  return text
    .toLowerCase()
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .replace(/ß/g, 'ss')
    .replace(/ø/g, 'o')
    .replace(/æ/g, 'ae')
    .replace(/’/g, "'");
}

const LANGUAGES = ['en', 'de', 'fr', 'es', 'it', 'pt', 'nl', 'sv', 'da', 'nb'];
const SHORTEST_MONTH = 3;
let months: readonly (readonly [string, number])[] | undefined;

/** The month, 1 to 12, of a month's name or of the beginning of one in any of the languages; "Sept" and "janv" too. */
function monthNamed(word: string): number | undefined {
  months ??= LANGUAGES.flatMap((language) => {
    const format = new Intl.DateTimeFormat(language, { month: 'long', timeZone: 'UTC' });
    return Array.from(
      { length: MONTHS },
      (_, m) => [fold(format.format(Date.UTC(CENTURY, m, 1))), m + 1] as const,
    );
  });
  if (word.length < SHORTEST_MONTH) return undefined;
  const meant = new Set(months.filter(([name]) => name.startsWith(word)).map(([, month]) => month));
  return meant.size === 1 ? [...meant][0] : undefined;
}
