import { civilFromDay, type Day, dayFromCivil } from '../calendar/day';

/** Two years: growth that has not come by then will not come. Judgement. */
export const LONGEST_REGROWTH_DAYS = 730;

/** Part of the growth needed that counts as rounding: sums of decimal rates miss a whole by less. */
const ROUNDING = 1e-9;

/**
 * How long growth takes to add up to what is needed, from the start day on (that day counted), the last day as a
 * fraction; or the two years and what is then still missing.
 *
 * monthlyGrowth holds growth per day (mass per area) for each month, January first; needed is in the same mass per
 * area. Walked month by month. A need that the growth of whole days meets but for rounding is met.
 */
export function growBack(
  startDay: Day,
  monthlyGrowth: readonly number[],
  needed: number,
): { readonly days: number; readonly missing: number } {
  const end = startDay + LONGEST_REGROWTH_DAYS;
  const rounding = needed * ROUNDING;
  let missing = needed;
  let day = startDay;
  while (day < end && missing > rounding) {
    const { year, month } = civilFromDay(day);
    const nextMonth = Math.min(dayFromCivil(year + Math.floor(month / 12), (month % 12) + 1, 1), end);
    const perDay = monthlyGrowth[month - 1] ?? 0;
    const left = missing - perDay * (nextMonth - day);
    if (left <= rounding && perDay > 0) {
      const whole = Math.floor(missing / perDay);
      const more = missing - perDay * whole > rounding ? missing / perDay : whole;
      return { days: day - startDay + more, missing: 0 };
    }
    missing = left;
    day = nextMonth;
  }
  return { days: day - startDay, missing: missing > rounding ? missing : 0 };
}
