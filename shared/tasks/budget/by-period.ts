import { civilFromDay, type Day, dayFromCivil, weekday } from '../../core/calendar/day';
import type { BudgetStay } from './budget-model';

export type Period = 'week' | 'month';

export interface PeriodSum {
  /** First day of the period. */
  readonly start: Day;
  /** First day of the next one. */
  readonly end: Day;
  readonly sum: number;
}

/**
 * An amount of each stay, spread evenly over its days and added up by week (from Monday) or calendar month.
 * Periods without a stay between the first and the last come with 0.
 */
export function byPeriod(
  stays: readonly BudgetStay[],
  amount: (stay: BudgetStay, at: number) => number,
  period: Period,
): readonly PeriodSum[] {
  if (stays.length === 0) return [];
  const last = Math.max(...stays.map(({ inDay, days }) => inDay + days));
  const sums: PeriodSum[] = [];
  for (let start = periodStart(Math.min(...stays.map(({ inDay }) => inDay)), period); start < last; ) {
    const end = periodEnd(start, period);
    const sum = stays.reduce((total, stay, at) => {
      const days = Math.min(stay.inDay + stay.days, end) - Math.max(stay.inDay, start);
      return days > 0 ? total + (amount(stay, at) * days) / stay.days : total;
    }, 0);
    sums.push({ start, end, sum });
    start = end;
  }
  return sums;
}

function periodStart(day: Day, period: Period): Day {
  if (period === 'week') return day - ((weekday(day) + 6) % 7);
  const { year, month } = civilFromDay(day);
  return dayFromCivil(year, month, 1);
}

function periodEnd(start: Day, period: Period): Day {
  if (period === 'week') return start + 7;
  const { year, month } = civilFromDay(start);
  return month === 12 ? dayFromCivil(year + 1, 1, 1) : dayFromCivil(year, month + 1, 1);
}
