import type { BudgetStay, StayNeeds } from './budget-model';
import type { BudgetSettings } from './budget-settings';

export interface PaddockLoad {
  readonly paddock: string;
  readonly areaSquareMeters: number;
  readonly stays: number;
  readonly days: number;
  /** kg/m² in the season, elemental, evenly spread. */
  readonly nitrogen: number;
  readonly phosphorus: number;
  readonly potassium: number;
  /** Which of the grower's limits is passed: "N", "P", "K". */
  readonly over: readonly string[];
}

/** What the season drops on each paddock, beside the limits; `settings` in inside units. In order of first use. */
export function paddockLoads(
  stays: readonly BudgetStay[],
  needs: readonly StayNeeds[],
  settings: BudgetSettings,
): readonly PaddockLoad[] {
  const loads = new Map<string, Omit<PaddockLoad, 'over'>>();
  stays.forEach((stay, at) => {
    const load = loads.get(stay.paddock);
    const need = needs[at];
    loads.set(stay.paddock, {
      paddock: stay.paddock,
      areaSquareMeters: stay.areaSquareMeters,
      stays: (load?.stays ?? 0) + 1,
      days: (load?.days ?? 0) + stay.days,
      nitrogen: (load?.nitrogen ?? 0) + (need?.nitrogen ?? 0),
      phosphorus: (load?.phosphorus ?? 0) + (need?.phosphorus ?? 0),
      potassium: (load?.potassium ?? 0) + (need?.potassium ?? 0),
    });
  });
  const isOver = (load: number, limit: number | undefined): boolean => limit !== undefined && load > limit;
  return [...loads.values()].map((load) => ({
    ...load,
    over: [
      ...(isOver(load.nitrogen, settings.limitN) ? ['N'] : []),
      ...(isOver(load.phosphorus, settings.limitP) ? ['P'] : []),
      ...(isOver(load.potassium, settings.limitK) ? ['K'] : []),
    ],
  }));
}
