import { civilFromDay, type Day } from '../core/calendar/day';

/** A day as a part of a formula that every locale reads: "DATE(2026;4;1)". */
export function dateCall(day: Day): string {
  const { year, month, dayOfMonth } = civilFromDay(day);
  return `DATE(${year};${month};${dayOfMonth})`;
}
