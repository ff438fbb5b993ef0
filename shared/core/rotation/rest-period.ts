import { Refusal } from '../../refusals';

/**
 * Days that each paddock rests.
 *
 *   daysOn × (paddocks − groups) ÷ groups
 *
 * Source: pennState's paddocks = rest ÷ stay + 1, solved for the rest; several groups share the paddocks evenly.
 */
export function restPeriod(paddocks: number, daysOn: number, groups: number): number {
  if (paddocks < groups) {
    throw new Refusal('paddocks', `be at least groups (${groups})`, String(paddocks));
  }
  return (daysOn * (paddocks - groups)) / groups;
}
