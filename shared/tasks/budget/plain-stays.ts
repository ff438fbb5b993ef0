import type { Day } from '../../core/calendar/day';
import type { ReadGroup, ReadPaddock } from '../../lists/model';
import { headsOver, herdOn, meanHead } from '../../plan/herd-on';
import type { BudgetStay } from './budget-model';

export interface PlainSeason {
  readonly start: Day;
  /** The day the season ends: the last night is the one before. */
  readonly end: Day;
  readonly daysOn: number;
}

/**
 * Stays for a budget where no moves are planned yet: every group goes through the list in its order, `daysOn` days in
 * each paddock, groups spread evenly over the list. Open dates and rests are not looked at: that is what
 * "Plan the moves" is for.
 */
export function plainStays(
  paddocks: readonly ReadPaddock[],
  groups: readonly ReadGroup[],
  season: PlainSeason,
): readonly BudgetStay[] {
  if (paddocks.length === 0) return [];
  return groups.flatMap((group, g) => {
    const first = Math.floor((g * paddocks.length) / groups.length);
    const start = Math.max(group.from ?? season.start, season.start, group.weighedOn);
    const end = Math.min(group.until ?? season.end, season.end);
    const stays: BudgetStay[] = [];
    for (let day = start, move = 0; day < end; day += season.daysOn, move++) {
      const paddock = paddocks[(first + move) % paddocks.length];
      if (paddock) stays.push(stayIn(group, paddock, day, Math.min(season.daysOn, end - day)));
    }
    return stays;
  });
}

function stayIn(group: ReadGroup, paddock: ReadPaddock, inDay: Day, days: number): BudgetStay {
  const { weightKg, weighedOn } = herdOn(group, inDay);
  return {
    group: group.name,
    paddock: paddock.name,
    inDay,
    days,
    head: Math.max(...headsOver(group, inDay, inDay + days)),
    meanHead: meanHead(group, inDay, inDay + days),
    startWeightKg: weightKg,
    growthDays: inDay - weighedOn,
    ...(group.dailyGainKg !== undefined && { dailyGainKg: group.dailyGainKg }),
    areaSquareMeters: paddock.areaSquareMeters,
  };
}
