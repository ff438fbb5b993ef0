import { Refusal } from '../../refusals';

/**
 * Longest stay that still gives the rest, in days.
 *
 *   restDays × groups ÷ (paddocks − groups)
 *
 * Source: pennState's paddocks = rest ÷ stay + 1, solved for the stay.
 */
export function daysOn(paddocks: number, restDays: number, groups: number): number {
  if (paddocks <= groups) {
    throw new Refusal('paddocks', `be more than groups (${groups})`, String(paddocks));
  }
  return (restDays * groups) / (paddocks - groups);
}
