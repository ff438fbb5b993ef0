import type { ColumnKey } from './columns';
import { foreignIn } from './foreign-in';
import { keptAt } from './kept-at';
import type { OldRow } from './model';
import type { Reading } from './read-rotation';
import { rowsUnderHeadings } from './rows-under-headings';
import { TO_COME } from './typed-over-moves';

/** Typed by the grower in every move, or by the builder as values. */
const VALUES: readonly ColumnKey[] = ['group', 'paddock', 'movedIn', 'days'];

/** For each row the formulas that are the grower's, where the builder writes a value or a formula of its own. */
export function ownFormulas(reading: Reading): (r: number) => OldRow['ownFormulas'] {
  const { block, columns } = reading;
  const rows = rowsUnderHeadings(reading);
  const isForeign = new Map(TO_COME.map((key) => [key, foreignIn(reading, rows, key)]));
  const plannedIn = columns.get('plannedIn')!;
  return (r) => {
    // A move that was past when the table was built has no formula of ours in these columns.
    const wasPast = block.formulas[r]![plannedIn] === '';
    const kept = [...VALUES, ...TO_COME].flatMap((key) => {
      const column = columns.get(key);
      if (column === undefined || block.formulas[r]![column] === '') return [];
      const isOwn = VALUES.includes(key) || wasPast || isForeign.get(key)!(r);
      return isOwn ? [[key, keptAt(block, r, column)] as const] : [];
    });
    return Object.fromEntries(kept);
  };
}
