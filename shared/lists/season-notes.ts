/** What in the lists does not fit the season: usually a wrong year. Said, not refused, for it may be meant. */

import { cellBefore } from '../block/cell-on-tab';
import { type Day, isoFromDay } from '../core/calendar/day';
import type { ReadGroup, ReadPaddock } from './model';
import { type NotedSeason, weighingNotes } from './weighing-notes';

export interface NotedLists {
  readonly paddocks: readonly ReadPaddock[];
  readonly groups: readonly ReadGroup[];
  /** The tabs that the two lists stand on. */
  readonly paddockTab: string;
  readonly groupTab: string;
}

/**
 * A sentence, with its cell, for each paddock that is shut all season or was "last used" on a day to come, each group
 * that is not there in the season, and each weighing that tells little about the weight in it.
 */
export function seasonNotes(lists: NotedLists, season: NotedSeason): string[] {
  return [
    ...lists.paddocks.flatMap((paddock) => paddockNotes(paddock, lists.paddockTab, season)),
    ...lists.groups.flatMap((group) => {
      const away = groupNotes(group, lists.groupTab, season);
      return away.length > 0 ? away : weighingNotes(group, lists.groupTab, season);
    }),
  ];
}

function paddockNotes(
  { name, openFrom, openUntil, lastUsed, cells }: ReadPaddock,
  tab: string,
  { start, end, today }: NotedSeason,
): string[] {
  const unused = 'no pigs are planned there';
  if (openUntil !== undefined && openUntil < start) {
    return [`${cellBefore(tab, cells.openUntil)}“${name}” ${before('closes', openUntil, start)}: ${unused}.`];
  }
  if (openFrom !== undefined && openFrom >= end) {
    return [`${cellBefore(tab, cells.openFrom)}“${name}” ${after('opens', openFrom, end)}: ${unused}.`];
  }
  if (lastUsed === undefined || lastUsed <= Math.max(today, start)) return [];
  return [
    `${cellBefore(tab, cells.lastUsed)}“${name}” was last used on ${isoFromDay(lastUsed)}, a day still to come: its rest is counted from that day.`,
  ];
}

function groupNotes(
  { name, from, until, cells }: ReadGroup,
  tab: string,
  { start, end }: NotedSeason,
): string[] {
  const unmoved = 'no moves are planned for it';
  if (until !== undefined && until <= start) {
    return [`${cellBefore(tab, cells.until)}“${name}” ${before('leaves', until, start)}: ${unmoved}.`];
  }
  if (from !== undefined && from >= end) {
    return [`${cellBefore(tab, cells.from)}“${name}” ${after('comes in', from, end)}: ${unmoved}.`];
  }
  return [];
}

function before(verb: string, day: Day, start: Day): string {
  return `${verb} on ${isoFromDay(day)}, and the season begins on ${isoFromDay(start)}`;
}

function after(verb: string, day: Day, end: Day): string {
  return `${verb} on ${isoFromDay(day)}, and the season ends on ${isoFromDay(end)}`;
}
