/** What becomes of things typed into moves, in sentences, to be read before a table is built anew. */
import { firstFew } from '../block/first-few';
import { dayWords } from '../core/calendar/day-words';
import type { ColumnKey } from './columns';
import type { PastRow } from './model';
import { moveName } from './move-name';
import { type TableRow, wishesIn } from './table-rows';
import * as words from './words';

/** Cover and notes that were typed into a move to come go along with it to another day. */
export function goesAlong(rows: readonly TableRow[]): string[] {
  const moved = rows.flatMap(({ past, old, inDay }) => {
    const isMoved = !past && old?.inDay !== undefined && old.inDay !== inDay;
    return isMoved && SEEN.some((key) => old.typed.includes(key))
      ? [words.toDay(moveName(old), dayWords(inDay))]
      : [];
  });
  return told(words.goesAlong, moved);
}

const SEEN: readonly ColumnKey[] = ['cover', 'note'];

/** Days that were typed on a move to come and that the plan does not have. */
export function daysTyped(rows: readonly TableRow[]): string[] {
  const typed = rows.flatMap((row) => {
    const planned = row.outDay - row.inDay;
    const isOther = wishesIn(row).includes('days') && row.old!.days !== planned;
    return isOther ? [words.daysPlanned(moveName(row), row.old!.days!, planned)] : [];
  });
  return told(words.daysStay, typed);
}

/** The days of a past move end where the group's next move begins, whatever was planned or typed. */
export function daysSet(past: readonly PastRow[]): string[] {
  const set = past.flatMap((row) =>
    row.daysBefore === undefined ? [] : [words.daysBecome(moveName(row), row.daysBefore, row.days)],
  );
  return told(words.pastDays, set);
}

/** A move without a day moved in counts as done once a later one of its group has such a day. */
export function countedAsDone(past: readonly PastRow[]): string[] {
  const skipped = past.filter(({ movedIn, isLive }) => movedIn === undefined && isLive);
  return told(words.countedDone, skipped.map(moveName));
}

/** As many moves as a sentence names. Judgement. */
const MOST_NAMED = 4;
/** A move's name has a comma in it. */
const BETWEEN = '; ';

function told(say: (moves: string) => string, moves: readonly string[]): string[] {
  return moves.length === 0 ? [] : [say(firstFew(moves, MOST_NAMED, BETWEEN))];
}
