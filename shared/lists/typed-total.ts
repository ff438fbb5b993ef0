import { cellOnTab } from '../block/cell-on-tab';
import type { RowReader } from './read-list-cell';
import * as words from './words';

/** Fewer rows may add up to the last one by chance. Judgement. */
const FEWEST_ROWS = 3;
/** Totals are often rounded. Judgement. */
const ROUNDING = 0.001;

/**
 * A sentence where the last item is as much as all above it together: a total of a name that is not known, typed and
 * not worked out by a formula.
 */
export function typedTotalNotes(
  items: readonly { readonly name: string }[],
  amounts: readonly number[],
  readers: readonly RowReader[],
): string[] {
  const last = items.length - 1;
  const [item, reader, amount] = [items[last], readers[last], amounts[last]];
  const column = reader?.list.columns.name;
  if (!item || !reader || amount === undefined || column === undefined || last < FEWEST_ROWS) return [];
  const above = amounts.slice(0, last).reduce((sum, one) => sum + one, 0);
  if (Math.abs(amount - above) > ROUNDING * above) return [];
  const cell = cellOnTab(reader.tab.name, reader.row, column);
  return [words.maybeTotal(cell, item.name)];
}
