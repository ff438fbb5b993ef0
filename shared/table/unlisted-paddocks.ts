import { dayWords } from '../core/calendar/day-words';
import { nameKey } from '../lists/read-list-cell';
import type { PlanPaddock } from '../plan/model';
import type { OldRow, PastRow } from './model';
import * as words from './words';

/**
 * One sentence for each paddock that pigs have stood in and that is not in the list: a slip of the pen, or a paddock
 * that was given another name. Its stays count as no use of any paddock, so the rest of the right one is wrong.
 */
export function unlistedPaddocks(past: readonly PastRow[], paddocks: readonly PlanPaddock[]): string[] {
  const listed = new Set(paddocks.map(({ name }) => nameKey(name)));
  const last = new Map<string, PastRow>();
  for (const row of past) {
    const key = nameKey(row.paddock);
    const before = last.get(key);
    if (!listed.has(key) && (before === undefined || row.outDay > before.outDay)) last.set(key, row);
  }
  return [...last.values()].map((row) =>
    words.notInPaddocks(row.paddock, row.sheetRow, dayWords(row.outDay)),
  );
}

/** One sentence for each paddock typed on a move to come that is not in the list: it cannot be a wish. */
export function unlistedWishes(future: readonly OldRow[], paddocks: readonly PlanPaddock[]): string[] {
  const listed = new Set(paddocks.map(({ name }) => nameKey(name)));
  return future
    .filter(({ typed, paddock }) => typed.includes('paddock') && !listed.has(nameKey(paddock)))
    .map(({ paddock, sheetRow }) => words.wishNotListed(paddock, sheetRow));
}
