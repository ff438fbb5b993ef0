import { foreignIn } from './foreign-in';
import type { LookedUp, OldRow } from './model';
import type { Reading } from './read-rotation';
import { rowsUnderHeadings } from './rows-under-headings';

const FIGURES: readonly LookedUp[] = ['head', 'startWeight', 'growthDays', 'dailyGain', 'area'];

/** For each row the figures that its formulas look up in the lists; none where they stand as values. */
export function lookupsOf(reading: Reading): (r: number) => OldRow['lookups'] {
  const { block, columns } = reading;
  const rows = rowsUnderHeadings(reading);
  const at = FIGURES.map((key) => ({
    key,
    column: columns.get(key),
    isForeign: foreignIn(reading, rows, key),
  }));
  // The growth of a past move has a formula too, with its day of weighing in it.
  const isLive = (r: number): boolean => block.formulas[r]![columns.get('plannedIn')!] !== '';
  return (r) =>
    at.flatMap(({ key, column, isForeign }) => {
      const isFormula = column !== undefined && block.formulas[r]![column] !== '';
      return isLive(r) && isFormula && !isForeign(r) ? [key] : [];
    });
}
