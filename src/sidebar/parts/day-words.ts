/** Days and numbers of things in words. */
export { dayWords, MONTHS, WEEKDAYS } from '../../../shared/core/calendar/day-words';

/** "1 day", "3 days". */
export function count(number: number, one: string, many = `${one}s`): string {
  return `${number.toLocaleString()} ${number === 1 ? one : many}`;
}
