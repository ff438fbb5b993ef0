/** The rows above the headings: title, hint, and what the plan has to say. */

import { BLANK, text } from '../block/cells';
import type { BlockRow } from '../block/compose-block';
import { TITLES } from '../block/own-words';
import type { BlockStyle } from '../contract';
import { isoFromDay } from '../core/calendar/day';
import type { RotationBlockInput } from './model';
import * as words from './words';

/** Above the table, so that headings can stay in sight; the rest of the warnings is in the check column. */
const MOST_WARNINGS = 4;
/** What the title looks like where nobody typed another one. */
export const TITLE = /^Rotation from \d{4}-\d\d-\d\d to \d{4}-\d\d-\d\d$/;
/** Begins each line of warnings, so that what a grower types there is not taken for one. */
export const WARNING = 'About this plan: ';
/** Title and hint. */
const FIRST_LINES = 2;

export function rowsAbove(input: RotationBlockInput): BlockRow[] {
  const { seasonStart, seasonEnd } = input.settings.rules;
  const title = `${TITLES.rotation}${isoFromDay(seasonStart)} to ${isoFromDay(seasonEnd)}`;
  return [title, words.TYPE_DAY, ...warningLines(input)].map(
    (line, r): BlockRow => ({
      cells: [line === '' ? BLANK : text(line)],
      style: styleOf(r, line),
      id: headRowName(r),
    }),
  );
}

/** What the row is called from one write to the next, counted from 0. */
export function headRowName(row: number): string {
  return `above the moves ${row}`;
}

function styleOf(row: number, line: string): BlockStyle {
  if (row === 0) return 'title';
  if (row < FIRST_LINES) return 'muted';
  return line === '' ? 'plain' : 'warning';
}

/** Formulas elsewhere point at rows of the table: however much there is to say, the headings stay in their row. */
function warningLines({ warnings, headRows }: RotationBlockInput): string[] {
  const shown = warnings.length > MOST_WARNINGS ? warnings.slice(0, MOST_WARNINGS - 1) : warnings;
  const more = warnings.length - shown.length;
  const sentences = more > 0 ? [...shown, words.andMoreChecks(more)] : [...shown];
  // One line is left free in a first table: most rebuilds have something to say.
  const room = Math.max(1, headRows === undefined ? sentences.length : headRows - FIRST_LINES);
  const fitting = sentences.slice(0, room - 1);
  const last = sentences.slice(room - 1).join(' ');
  return Array.from({ length: room }, (_, i) => fitting[i] ?? (i === fitting.length ? last : '')).map(
    (line) => (line === '' ? '' : WARNING + line),
  );
}
