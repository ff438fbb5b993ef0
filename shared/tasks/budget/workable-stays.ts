import { dayWords } from '../../core/calendar/day-words';
import { Refusal } from '../../refusals';
import type { UnitSystem } from '../../units/units';
import type { BudgetStay, StayNeeds } from './budget-model';
import type { BudgetSettings } from './budget-settings';
import { stayNeeds } from './stay-needs';
import * as words from './words';

export interface WorkableStays {
  readonly stays: readonly BudgetStay[];
  readonly needs: readonly StayNeeds[];
  /** One sentence for each group with stays that cannot be worked out. */
  readonly leftOut: readonly string[];
}

/**
 * The stays that can be worked out, with their needs, and why others cannot: a pig without a daily gain grows past
 * the end of the growth table. `settings` in inside units.
 */
export function workableStays(
  all: readonly BudgetStay[],
  settings: BudgetSettings,
  units: UnitSystem,
): WorkableStays {
  const stays: BudgetStay[] = [];
  const needs: StayNeeds[] = [];
  const failed = new Map<string, { from: number; count: number; why: string }>();
  for (const stay of all) {
    try {
      needs.push(stayNeeds(stay, settings));
      stays.push(stay);
    } catch (error) {
      if (!(error instanceof Refusal)) throw error;
      const before = failed.get(stay.group);
      failed.set(stay.group, {
        from: Math.min(stay.inDay, before?.from ?? stay.inDay),
        count: (before?.count ?? 0) + 1,
        why: before?.why ?? error.sentence('', units).replace(/^: /, ''),
      });
    }
  }
  const leftOut = [...failed].map(([group, { from, count, why }]) =>
    words.stayLeftOut(group, count, dayWords(from), why),
  );
  return { stays, needs, leftOut };
}
