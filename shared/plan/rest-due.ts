import type { Day } from '../core/calendar/day';
import { monthIndex } from '../core/calendar/day';
import { growBack } from '../core/rotation/grow-back';
import type { PlanPaddock, RestRule } from './model';

/**
 * Rest due, in whole days, for a paddock that was last left on `left`.
 *
 * The paddock's own rest if it has one; else the rule: one number; the number of the month of `left`; or the
 * days of growth from `left` on that reach `needed`, as REGROWTH_DAYS counts them, 730 at most.
 * Fractions of a day are rounded up.
 */
export function restDue(paddock: PlanPaddock, rule: RestRule, left: Day): number {
  if (paddock.restDays !== undefined) return Math.ceil(paddock.restDays);
  if (rule.kind === 'fixed') return Math.ceil(rule.days);
  if (rule.kind === 'monthly') return Math.ceil(rule.days[monthIndex(left)] ?? 0);
  return Math.ceil(growBack(left, rule.growth, rule.needed).days);
}
