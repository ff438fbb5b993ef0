import type { BudgetStay, StayNeeds } from './budget-model';

export interface SeasonNeeds {
  readonly feedKg: number;
  /** On the day that needs most: all groups that are out on it together. */
  readonly waterLiters: number;
  readonly hotWaterLiters: number;
  /** Largest shelter that one group needs. */
  readonly shelterSquareMeters: number;
}

/** The season's feed, and the most water of a day over all groups together. */
export function seasonNeeds(stays: readonly BudgetStay[], needs: readonly StayNeeds[]): SeasonNeeds {
  const most = (of: (need: StayNeeds) => number): number => {
    const starts = stays.map(({ inDay }) => inDay);
    return Math.max(0, ...starts.map((day) => onDay(day, stays, needs, of)));
  };
  return {
    feedKg: needs.reduce((sum, { feedKg }) => sum + feedKg, 0),
    waterLiters: most(({ waterLiters }) => waterLiters),
    hotWaterLiters: most(({ hotWaterLiters }) => hotWaterLiters),
    shelterSquareMeters: Math.max(0, ...needs.map(({ shelterSquareMeters }) => shelterSquareMeters)),
  };
}

function onDay(
  day: number,
  stays: readonly BudgetStay[],
  needs: readonly StayNeeds[],
  of: (need: StayNeeds) => number,
): number {
  return stays.reduce((sum, { inDay, days }, at) => {
    const need = needs[at];
    return need && inDay <= day && day < inDay + days ? sum + of(need) : sum;
  }, 0);
}
