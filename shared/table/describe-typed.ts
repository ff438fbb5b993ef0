/** What becomes of things typed into moves, in sentences, to be read before a table is built anew. */
import { firstFew } from '../block/first-few';
import { isoFromDay } from '../core/calendar/day';
import { cellWords } from './kept-lines';
import type { OldRow, PastRow } from './model';
import { moveName } from './move-name';
import type { TableRow } from './table-rows';

/** As many moves as a sentence names. Judgement. */
const MOST_NAMED = 4;
/** A move's name has a comma in it. */
const BETWEEN = '; ';

/** Cover, notes and own cells that were typed into a move to come go along with it to another day. */
export function goesAlong(rows: readonly TableRow[]): string[] {
  const moved = rows.flatMap(({ past, kept, inDay }) => {
    if (past || !kept || kept.inDay === undefined || kept.inDay === inDay || !hasTyped(kept)) return [];
    return [`${moveName(kept)} (to ${isoFromDay(inDay)})`];
  });
  return moved.length === 0
    ? []
    : [
        `What was typed beside these moves goes along to another day: ${firstFew(moved, MOST_NAMED, BETWEEN)}.`,
      ];
}

/** What was typed over cells of ours and stays there. */
export function staysTyped(rows: readonly TableRow[]): string[] {
  const said = rows.flatMap(({ kept }) => {
    const words = kept?.typedOver.flatMap((typed) => (typed.stays ? [typed.words] : [])) ?? [];
    return kept && words.length > 0 ? [`${moveName(kept)} (${words.join(', ')})`] : [];
  });
  return said.length === 0
    ? []
    : [
        `What was typed over the table’s own formulas stays: ${firstFew(said, MOST_NAMED, BETWEEN)}. Clear a cell and build anew to have its formula again.`,
      ];
}

/** The days of a past move end where the group's next move begins, whatever was planned or typed. */
export function daysSet(past: readonly PastRow[]): string[] {
  const set = past.flatMap((row) =>
    row.daysBefore === undefined ? [] : [`${moveName(row)} (${row.daysBefore} becomes ${row.days})`],
  );
  return set.length === 0
    ? []
    : [
        `Days of past moves are set to the days up to the group’s next move: ${firstFew(set, MOST_NAMED, BETWEEN)}.`,
      ];
}

/** A move without a day moved in counts as done once a later one of its group has such a day. */
export function countedAsDone(past: readonly PastRow[]): string[] {
  const isNew = ({ movedIn, lookups }: PastRow): boolean => movedIn === undefined && lookups.length > 0;
  const skipped = past.filter(isNew).map(moveName);
  return skipped.length === 0
    ? []
    : [
        `Counted as done on the planned day, for a later move of the group has a day typed: ${firstFew(skipped, MOST_NAMED, BETWEEN)}. Delete the row of a stop that was left out.`,
      ];
}

function hasTyped({ cover, note, extras }: OldRow): boolean {
  // A formula of an own column goes with its row and counts anew.
  return [cover, note, ...extras].some(({ value, formula }) => formula === '' && cellWords(value) !== '');
}
