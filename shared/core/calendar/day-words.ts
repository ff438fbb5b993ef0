/** Days in words, as page, table and sample farms write them. */
import { civilFromDay, type Day, weekday } from './day';

export const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];
export const WEEKDAYS = ['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat'];

/** "Sat 2 May". */
export function dayWords(day: Day): string {
  const { month, dayOfMonth } = civilFromDay(day);
  return `${WEEKDAYS[weekday(day)]} ${dayOfMonth} ${MONTHS[month - 1]}`;
}
