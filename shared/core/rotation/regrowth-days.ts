import { plainNumber, Refusal } from '../../refusals';
import { civilFromDay, type Day, dayFromCivil } from '../calendar/day';

/** Two years: growth that has not come by then will not come. Judgement. */
const LONGEST_DAYS = 730;

/**
 * Days until growth adds up to what is needed, the start day counted, the last day as a fraction.
 *
 * monthlyGrowth holds growth per day (mass per area) for each month, January first; growthNeeded is in the same
 * mass per area. Walked month by month. Refuses where two years are not enough. Source: definition.
 */
export function regrowthDays(startDay: Day, monthlyGrowth: readonly number[], growthNeeded: number): number {
  let { year, month } = civilFromDay(startDay);
  let day = startDay;
  let missing = growthNeeded;
  const end = startDay + LONGEST_DAYS;
  while (day < end) {
    const nextMonth = Math.min(dayFromCivil(month === 12 ? year + 1 : year, (month % 12) + 1, 1), end);
    const perDay = monthlyGrowth[month - 1] ?? 0;
    const inMonth = perDay * (nextMonth - day);
    if (inMonth >= missing) return day - startDay + missing / perDay;
    missing -= inMonth;
    day = nextMonth;
    year += month === 12 ? 1 : 0;
    month = (month % 12) + 1;
  }
  throw new Refusal(
    'growth_needed',
    `be grown within ${LONGEST_DAYS} days`,
    `${plainNumber(growthNeeded)}, of which ${plainNumber(missing)} would still be missing`,
  );
}
