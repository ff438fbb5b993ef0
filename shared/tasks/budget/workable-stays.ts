import { dayWords } from '../../core/calendar/day-words';
import { Refusal } from '../../refusals';
import { GROWING_HEAVIEST_KG, GROWING_LIGHTEST_KG } from '../../tables/growing-weights';
import { NRC_HEAVIEST_KG, NRC_LIGHTEST_KG } from '../../tables/nrc-growth';
import { fromInside, symbolOf, type UnitSystem } from '../../units/units';
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
 * The stays that can be worked out, with their needs, and why others cannot: pigs that are too light or too heavy for
 * the figures, those without a daily gain for the growth table. `settings` in inside units. `gainCell`: where a group's
 * daily gain is typed.
 */
export function workableStays(
  all: readonly BudgetStay[],
  settings: BudgetSettings,
  units: UnitSystem,
  gainCell: (group: string) => string | undefined = () => undefined,
): WorkableStays {
  const stays: BudgetStay[] = [];
  const needs: StayNeeds[] = [];
  const failed = new Map<string, { from: number; count: number; hasGain: boolean }>();
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
        hasGain: stay.dailyGainKg !== undefined,
      });
    }
  }
  const leftOut = [...failed].map(([group, { from, count, hasGain }]) => {
    const why = hasGain
      ? words.notGrowing(pigs(GROWING_LIGHTEST_KG, GROWING_HEAVIEST_KG, units))
      : words.growthUnknown(pigs(NRC_LIGHTEST_KG, NRC_HEAVIEST_KG, units), gainCell(group));
    return words.stayLeftOut(group, count, dayWords(from), why);
  });
  return { stays, needs, leftOut };
}

/** "11 to 297 lb": whole units, to the side that is accepted. */
function pigs(lightestKg: number, heaviestKg: number, units: UnitSystem): string {
  const [least, most] = [lightestKg, heaviestKg].map((kg) => fromInside(kg, 'mass', units)) as [
    number,
    number,
  ];
  return `${Math.ceil(least)} to ${Math.floor(most)} ${symbolOf('mass', units)}`;
}
