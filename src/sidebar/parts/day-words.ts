/** Days in words. */
import { civilFromDay, type Day, weekday } from '../../../shared/core/calendar/day';

export const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];
export const WEEKDAYS = ['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat'];

/** "Sat 2 May". */
export function dayWords(day: Day): string {
  const { month, dayOfMonth } = civilFromDay(day);
  return `${WEEKDAYS[weekday(day)]} ${dayOfMonth} ${MONTHS[month - 1]}`;
}

/** "1 day", "3 days". */
export function count(number: number, one: string, many = `${one}s`): string {
  return `${number.toLocaleString()} ${number === 1 ? one : many}`;
}
