import type { BudgetStay, StayNeeds } from './budget-model';
import type { BudgetSettings } from './budget-settings';

export interface SeasonNeeds {
  readonly feedKg: number;
  /** On the day that needs most: all groups that are out on it together. */
  readonly waterLiters: number;
  readonly hotWaterLiters: number;
  /** Largest shelter that one group needs. */
  readonly shelterSquareMeters: number;
  /** Absent without a price of feed; of fence without its cost. */
  readonly money: SeasonMoney | undefined;
}

export interface SeasonMoney {
  readonly feed: number | undefined;
  /** Each group with the most head that it has in a stay, so that a pig lost on the way counts. */
  readonly pigs: number;
  /** The whole cost ÷ `pigs`, however long each of them is out. */
  readonly feedPerPig: number | undefined;
  readonly feedPerKgGained: number | undefined;
  /** As `feedPerPig`. */
  readonly fencePerPig: number | undefined;
}

/** The season's feed, and the most water of a day over all groups together. */
export function seasonNeeds(
  stays: readonly BudgetStay[],
  needs: readonly StayNeeds[],
  settings: BudgetSettings,
): SeasonNeeds {
  const most = (of: (need: StayNeeds) => number): number => {
    const starts = stays.map(({ inDay }) => inDay);
    return Math.max(0, ...starts.map((day) => onDay(day, stays, needs, of)));
  };
  return {
    feedKg: needs.reduce((sum, { feedKg }) => sum + feedKg, 0),
    waterLiters: most(({ waterLiters }) => waterLiters),
    hotWaterLiters: most(({ hotWaterLiters }) => hotWaterLiters),
    shelterSquareMeters: Math.max(0, ...needs.map(({ shelterSquareMeters }) => shelterSquareMeters)),
    money: seasonMoney(stays, needs, settings),
  };
}

/** What feed and fence cost, from the grower's own prices; `settings` in inside units. */
function seasonMoney(
  stays: readonly BudgetStay[],
  needs: readonly StayNeeds[],
  { feedPrice, feedPriced, fenceCost }: BudgetSettings,
): SeasonMoney | undefined {
  if ((feedPrice === undefined && fenceCost === undefined) || stays.length === 0) return undefined;
  const sum = (of: (stay: BudgetStay, need: StayNeeds | undefined) => number): number =>
    stays.reduce((total, stay, at) => total + of(stay, needs[at]), 0);
  const feed =
    feedPrice === undefined || !feedPriced
      ? undefined
      : (sum((_, need) => need?.feedKg ?? 0) * feedPrice) / feedPriced;
  const gainedKg = sum(({ meanHead }, need) => (need ? meanHead * (need.weightOutKg - need.weightInKg) : 0));
  const mostHead = new Map<string, number>();
  for (const { group, head } of stays) mostHead.set(group, Math.max(head, mostHead.get(group) ?? 0));
  const pigs = [...mostHead.values()].reduce((total, head) => total + head, 0);
  const perPig = (cost: number | undefined): number | undefined =>
    cost === undefined || pigs === 0 ? undefined : cost / pigs;
  return {
    pigs,
    feed,
    feedPerPig: perPig(feed),
    feedPerKgGained: feed === undefined || gainedKg <= 0 ? undefined : feed / gainedKg,
    fencePerPig: perPig(fenceCost),
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
