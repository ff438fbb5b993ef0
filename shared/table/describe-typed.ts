/** What becomes of things typed into moves, in sentences, to be read before a table is built anew. */
import { firstFew } from '../block/first-few';
import { isoFromDay } from '../core/calendar/day';
import type { ColumnKey } from './columns';
import type { PastRow } from './model';
import { moveName } from './move-name';
import { type TableRow, wishesIn } from './table-rows';

/** Cover and notes that were typed into a move to come go along with it to another day. */
export function goesAlong(rows: readonly TableRow[]): string[] {
  const moved = rows.flatMap(({ past, old, inDay }) => {
    const isMoved = !past && old?.inDay !== undefined && old.inDay !== inDay;
    return isMoved && SEEN.some((key) => old.typed.includes(key))
      ? [`${moveName(old)} (to ${isoFromDay(inDay)})`]
      : [];
  });
  return told('What was typed beside these moves goes along to another day', moved);
}

const SEEN: readonly ColumnKey[] = ['cover', 'note'];

/** Days that were typed on a move to come and that the plan does not have. */
export function daysTyped(rows: readonly TableRow[]): string[] {
  const typed = rows.flatMap((row) => {
    const planned = row.outDay - row.inDay;
    const isOther = wishesIn(row).includes('days') && row.old!.days !== planned;
    return isOther ? [`${moveName(row)} (${row.old!.days}; the plan was made with ${planned})`] : [];
  });
  return told('Days typed on moves to come stay, and the group’s later moves shift with them', typed);
}

/** The days of a past move end where the group's next move begins, whatever was planned or typed. */
export function daysSet(past: readonly PastRow[]): string[] {
  const set = past.flatMap((row) =>
    row.daysBefore === undefined ? [] : [`${moveName(row)} (${row.daysBefore} becomes ${row.days})`],
  );
  return told('Days of past moves are set to the days up to the group’s next move', set);
}

/** A move without a day moved in counts as done once a later one of its group has such a day. */
export function countedAsDone(past: readonly PastRow[]): string[] {
  const skipped = past.filter(({ movedIn, isLive }) => movedIn === undefined && isLive);
  const why = 'Counted as done on the planned day, for a later move of the group has a day typed';
  return told(why, skipped.map(moveName), 'Where a stop was left out, type skipped instead of the day.');
}

/** As many moves as a sentence names. Judgement. */
const MOST_NAMED = 4;
/** A move's name has a comma in it. */
const BETWEEN = '; ';

function told(what: string, moves: readonly string[], also?: string): string[] {
  if (moves.length === 0) return [];
  return [[`${what}: ${firstFew(moves, MOST_NAMED, BETWEEN)}.`, ...(also ? [also] : [])].join(' ')];
}
