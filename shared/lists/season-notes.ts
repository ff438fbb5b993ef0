/** What in the lists does not fit the season: usually a wrong year. Said, not refused, for it may be meant. */

import { cellBefore } from '../block/cell-on-tab';
import { isoFromDay } from '../core/calendar/day';
import type { ReadGroup, ReadPaddock } from './model';
import { type NotedSeason, weighingNotes } from './weighing-notes';
import * as words from './words';

export interface NotedLists {
  readonly paddocks: readonly ReadPaddock[];
  readonly groups: readonly ReadGroup[];
  /** The tabs that the two lists stand on. */
  readonly paddockTab: string;
  readonly groupTab: string;
}

/**
 * A sentence, with its cell, for each paddock that is shut all season or was "last used" on a day to come, each group
 * that is not there in the season or has long stood in one place, and each weighing that tells little about the weight in
 * it.
 */
export function seasonNotes(lists: NotedLists, season: NotedSeason): string[] {
  return [
    ...lists.paddocks.flatMap((paddock) => paddockNotes(paddock, lists.paddockTab, season)),
    ...lists.groups.flatMap((group) => {
      const away = groupNotes(group, lists.groupTab, season);
      if (away.length > 0) return away;
      return [
        ...standingNotes(group, lists.groupTab, season),
        ...weighingNotes(group, lists.groupTab, season),
      ];
    }),
  ];
}

function paddockNotes(
  { name, openFrom, openUntil, lastUsed, cells }: ReadPaddock,
  tab: string,
  { start, end, today }: NotedSeason,
): string[] {
  if (openUntil !== undefined && openUntil < start) {
    const cell = cellBefore(tab, cells.openUntil);
    return [words.closesBefore(cell, name, isoFromDay(openUntil), isoFromDay(start))];
  }
  if (openFrom !== undefined && openFrom >= end) {
    const cell = cellBefore(tab, cells.openFrom);
    return [words.opensAfter(cell, name, isoFromDay(openFrom), isoFromDay(end))];
  }
  if (lastUsed === undefined || lastUsed <= Math.max(today, start)) return [];
  return [words.usedAhead(cellBefore(tab, cells.lastUsed), name, isoFromDay(lastUsed))];
}

function groupNotes(
  { name, from, until, cells }: ReadGroup,
  tab: string,
  { start, end }: NotedSeason,
): string[] {
  if (until !== undefined && until <= start) {
    return [words.leavesBefore(cellBefore(tab, cells.until), name, isoFromDay(until), isoFromDay(start))];
  }
  if (from !== undefined && from >= end) {
    return [words.comesAfter(cellBefore(tab, cells.from), name, isoFromDay(from), isoFromDay(end))];
  }
  return [];
}

/** Longer than pigs are left in one paddock: they have rather moved since the list was written. Judgement. */
const LONG_DAYS = 60;

/** Once moves have happened the table says where the group stands. */
function standingNotes(
  { name, standsIn, cells }: ReadGroup,
  tab: string,
  { today, isUnderWay }: NotedSeason,
): string[] {
  const { paddock = '', since = today } = standsIn ?? {};
  if (isUnderWay || today - since <= LONG_DAYS) return [];
  const cell = cellBefore(tab, cells.since ?? cells.paddock);
  return [words.standsLong(cell, name, paddock, isoFromDay(since), today - since)];
}
