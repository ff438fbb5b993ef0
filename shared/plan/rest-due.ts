import type { Day } from '../core/calendar/day';
import { monthIndex } from '../core/calendar/day';
import type { PlanPaddock, RestRule } from './model';

/** Rest that forage needs when it does not grow back within two years; the limit of REGROWTH_DAYS. */
const MOST_REGROWTH_DAYS = 730;
const ROUNDING = 1e-9;

/**
 * Rest due, in whole days, for a paddock that was last left on `left`.
 *
 * The paddock's own rest if it has one; else the rule: one number; the number of the month of `left`; or the
 * smallest n for which the growth of the n days from `left` on (that day counted) reaches `needed`, 730 at most.
 * Fractions of a day are rounded up.
 */
export function restDue(paddock: PlanPaddock, rule: RestRule, left: Day): number {
  if (paddock.restDays !== undefined) return Math.ceil(paddock.restDays);
  if (rule.kind === 'fixed') return Math.ceil(rule.days);
  if (rule.kind === 'monthly') return Math.ceil(rule.days[monthIndex(left)] ?? 0);
  return regrowthDays(rule.growth, rule.needed, left);
}

function regrowthDays(growth: readonly number[], needed: number, left: Day): number {
  let grown = 0;
  let days = 0;
  while (grown < needed - ROUNDING && days < MOST_REGROWTH_DAYS) {
    grown += growth[monthIndex(left + days)] ?? 0;
    days += 1;
  }
  return days;
}
