import type { Book } from '../../block/book';
import { referencesIn } from '../../block/references';
import { writtenShape } from '../../block/written-shape';
import type { BlockInfo } from '../../contract';
import { standingOf } from '../standing';
import { LOG_BLOCK } from './log-block';
import { readyLookup } from './ready-lookup';

/** Cells outside our tables with the look-up that `letLogDecide` puts into the group list, wherever they stand now. */
export function readyCells(book: Book): readonly BlockInfo[] {
  const log = standingOf(book, LOG_BLOCK)?.reading;
  const ours = log && readyLookup(log, 'A1');
  if (ours === undefined) return [];
  const shape = writtenShape(ours);
  const looked = columnsLookedIn(ours);
  // Most formulas are none: a look at how they begin is much quicker than reading them.
  const isOurs = (formula: string): boolean =>
    /^=INDEX\(/i.test(formula) && writtenShape(formula) === shape && columnsLookedIn(formula) === looked;
  return book.tabs.flatMap(({ name: tab, formulas }) =>
    formulas.flatMap((row, r) =>
      row.flatMap((formula, c) =>
        isOurs(formula) ? [{ name: '', tab, row: r + 1, column: c + 1, rows: 1, columns: 1 }] : [],
      ),
    ),
  );
}

/** Of a look-up the column that it answers from and the one with the names, whatever rows it spans. */
function columnsLookedIn(lookup: string): string {
  const [answers, , names] = referencesIn(lookup);
  return JSON.stringify([answers, names].map((one) => [one?.tab?.toLowerCase(), one?.columns]));
}
