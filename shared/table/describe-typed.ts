/** What becomes of things typed into moves, in sentences, to be read before a table is built anew. */
import { isoFromDay } from '../core/calendar/day';
import { cellWords } from './kept-lines';
import type { OldRow, PastRow } from './model';
import type { TableRow } from './table-rows';

/** As many moves as a sentence names. Judgement. */
const MOST_NAMED = 4;

/** Cover, notes and own cells that were typed into a move to come go along with it to another day. */
export function goesAlong(rows: readonly TableRow[]): string[] {
  const moved = rows.flatMap(({ past, kept, inDay }) => {
    if (past || !kept || kept.inDay === undefined || kept.inDay === inDay || !hasTyped(kept)) return [];
    return [`${nameOf(kept)} (to ${isoFromDay(inDay)})`];
  });
  return moved.length === 0
    ? []
    : [`What was typed beside these moves goes along to another day: ${few(moved)}.`];
}

/** The days of a past move end where the group's next move begins, whatever was planned or typed. */
export function daysSet(past: readonly PastRow[]): string[] {
  const set = past.flatMap((row) =>
    row.daysBefore === undefined ? [] : [`${nameOf(row)} (${row.daysBefore} becomes ${row.days})`],
  );
  return set.length === 0
    ? []
    : [`Days of past moves are set to the days up to the group’s next move: ${few(set)}.`];
}

/** A move without a day moved in counts as done once a later one of its group has such a day. */
export function countedAsDone(past: readonly PastRow[]): string[] {
  const isNew = ({ movedIn, lookups }: PastRow): boolean => movedIn === undefined && lookups.length > 0;
  const skipped = past.filter(isNew).map(nameOf);
  return skipped.length === 0
    ? []
    : [
        `Counted as done on the planned day, for a later move of the group has a day typed: ${few(skipped)}. Delete the row of a stop that was left out.`,
      ];
}

function hasTyped({ cover, note, extras }: OldRow): boolean {
  // A formula of an own column goes with its row and counts anew.
  return [cover, note, ...extras].some(({ value, formula }) => formula === '' && cellWords(value) !== '');
}

function nameOf({ group, paddock, inDay }: OldRow): string {
  const day = inDay === undefined ? '' : ` ${isoFromDay(inDay)}`;
  return `${group}, ${paddock}${day}`;
}

function few(names: readonly string[]): string {
  const more = names.length > MOST_NAMED ? ` and ${names.length - MOST_NAMED} more` : '';
  return names.slice(0, MOST_NAMED).join('; ') + more;
}
