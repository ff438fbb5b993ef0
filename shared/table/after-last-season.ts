import type { Day } from '../core/calendar/day';
import { nameKey } from '../lists/read-list-cell';
import type { PlanPaddock } from '../plan/model';
import type { OldRow } from './model';

/** Paddocks for a new season: used last as the list says or as the moves of the season before really were. */
export function afterLastSeason(
  paddocks: readonly PlanPaddock[],
  rows: readonly OldRow[],
): readonly PlanPaddock[] {
  const left = new Map<string, Day>();
  for (const { paddock, movedIn, out, days } of rows) {
    if (movedIn === undefined) continue;
    const key = nameKey(paddock);
    left.set(key, Math.max(left.get(key) ?? -Infinity, out ?? movedIn + (days ?? 1)));
  }
  return paddocks.map((paddock) => {
    const day = left.get(nameKey(paddock.name));
    return day === undefined ? paddock : { ...paddock, lastUsed: Math.max(day, paddock.lastUsed ?? day) };
  });
}
