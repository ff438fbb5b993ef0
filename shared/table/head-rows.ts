/** The rows above the headings: title, hint, and what the plan has to say; what more it says stands below the settings. */

import { BLANK, text } from '../block/cells';
import type { BlockRow } from '../block/compose-block';
import { TITLES } from '../block/own-words';
import type { BlockCell, BlockStyle } from '../contract';
import { civilFromDay, type Day } from '../core/calendar/day';
import { dayWords } from '../core/calendar/day-words';
import { FROZEN_COLUMNS } from './columns';
import type { RotationBlockInput } from './model';
import * as words from './words';

/** Begins each line of warnings, so that what a grower types there is not taken for one; a colon ends it. */
export const WARNING = 'About this plan';
/** Title and hint. */
const FIRST_LINES = 2;

export function rowsAbove(input: RotationBlockInput): BlockRow[] {
  const { seasonStart, seasonEnd } = input.settings.rules;
  const season = `${dayAndYear(seasonStart)} to ${dayAndYear(seasonEnd)}`;
  return [season, words.TYPE_DAY, ...warningLines(input)].map(
    (line, r): BlockRow => ({
      cells: aside(line, r === 0 ? text(TITLES.rotation) : BLANK),
      style: styleOf(r, line),
      id: headRowName(r),
    }),
  );
}

/** What more the plan says than the line above the moves. */
export function rowsBelow({ warnings }: RotationBlockInput): BlockRow[] {
  return warnings.slice(1).map(
    (line, r): BlockRow => ({
      cells: aside(`${WARNING}: ${line}`),
      style: 'warning',
      id: `below the settings ${r}`,
    }),
  );
}

/** What such a line says of the plan; undefined for any other. */
export function warningIn(cell: unknown): string | undefined {
  if (typeof cell !== 'string' || !cell.startsWith(WARNING)) return undefined;
  return cell.slice(cell.indexOf(':') + 2);
}

/** Behind the frozen columns, so that a long line can be scrolled. */
function aside(line: string, first: BlockCell = BLANK): BlockCell[] {
  return [first, ...Array<BlockCell>(FROZEN_COLUMNS - 1).fill(BLANK), text(line)];
}

function dayAndYear(day: Day): string {
  return `${dayWords(day)} ${civilFromDay(day).year}`;
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

/**
 * One line, and as many as stand in a table that is written anew: formulas elsewhere point at its rows, so the headings
 * stay in theirs.
 */
function warningLines({ warnings, headRows = 0 }: RotationBlockInput): string[] {
  const [first, ...more] = warnings;
  const others = more.length > 0 ? words.othersBelow(more.length) : '';
  const blank = Array<string>(Math.max(0, headRows - FIRST_LINES - 1)).fill('');
  return [first === undefined ? '' : `${WARNING}${others}: ${first}`, ...blank];
}
