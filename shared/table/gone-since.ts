import type { Day } from '../core/calendar/day';
import { nameKey } from '../lists/read-list-cell';
import { groupSpan } from '../plan/group-span';
import type { PlanGroup, PlanRules } from '../plan/model';
import type { PastRow } from './model';

/**
 * Groups whose time in the rotation is over when the new plan begins, with the day they left, by name key. They
 * stand nowhere: the paddock of their last move has been resting since that day.
 */
export function goneSince(
  groups: readonly PlanGroup[],
  past: readonly PastRow[],
  rules: PlanRules,
  planStart: Day,
): ReadonlyMap<string, Day> {
  return new Map(
    groups.flatMap((group): [string, Day][] => {
      const key = nameKey(group.name);
      const first = past.find((row) => nameKey(row.group) === key);
      if (!first) return [];
      const { end } = groupSpan({ ...group, from: first.inDay }, { ...rules, seasonStart: first.inDay });
      return end <= planStart ? [[key, end]] : [];
    }),
  );
}

/** A past row that ends no later than the day its group left; a stay is one day at least. */
export function untilGone(row: PastRow, gone: ReadonlyMap<string, Day>): PastRow {
  const left = gone.get(nameKey(row.group));
  if (left === undefined || row.outDay <= left) return row;
  const outDay = Math.max(row.inDay + 1, left);
  return { ...row, outDay, days: outDay - row.inDay };
}
