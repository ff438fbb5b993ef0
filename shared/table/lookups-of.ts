import { foreignIn } from './foreign-in';
import type { LookedUp, OldRow } from './model';
import type { Reading } from './read-rotation';

const FIGURES: readonly LookedUp[] = ['head', 'startWeight', 'growthDays', 'dailyGain', 'area'];

/** For each row the figures that its formulas look up in the lists; none where they stand as values. */
export function lookupsOf({ block, columns, headingRow, endRow }: Reading): (r: number) => OldRow['lookups'] {
  const rows = Array.from({ length: endRow - headingRow - 1 }, (_, i) => headingRow + 1 + i);
  const at = FIGURES.map((key) => ({
    key,
    column: columns.get(key),
    isForeign: foreignIn({ block, columns }, rows, key),
  }));
  // The growth of a past move has a formula too, with its day of weighing in it.
  const isLive = (r: number): boolean => block.formulas[r]![columns.get('plannedIn')!] !== '';
  return (r) =>
    at.flatMap(({ key, column, isForeign }) => {
      const isFormula = column !== undefined && block.formulas[r]![column] !== '';
      return isLive(r) && isFormula && !isForeign(r) ? [key] : [];
    });
}
