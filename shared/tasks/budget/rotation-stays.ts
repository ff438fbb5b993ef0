import type { OldRow } from '../../table/model';
import type { BudgetStay } from './budget-model';
import * as words from './words';

/** Stays out of the rotation table as it stands; rows that lack a figure are named, not guessed. */
export function rotationStays(
  rows: readonly OldRow[],
  tab: string,
): { readonly stays: readonly BudgetStay[]; readonly problems: readonly string[] } {
  const problems: string[] = [];
  const stays = rows.flatMap((row): BudgetStay[] => {
    const { inDay, out, days, head, startWeightKg, growthDays, areaSquareMeters, dailyGainKg } = row;
    if (
      inDay === undefined ||
      days === undefined ||
      head === undefined ||
      startWeightKg === undefined ||
      growthDays === undefined ||
      areaSquareMeters === undefined
    ) {
      problems.push(words.badMove(tab, row.sheetRow));
      return [];
    }
    return [
      {
        group: row.group,
        paddock: row.paddock,
        inDay,
        days: out === undefined ? days : out - inDay,
        head: row.mostHead ?? head,
        meanHead: row.meanHead ?? head,
        startWeightKg,
        growthDays,
        ...(dailyGainKg !== undefined && { dailyGainKg }),
        areaSquareMeters,
        rotationRow: row.sheetRow,
      },
    ];
  });
  return { stays, problems };
}
