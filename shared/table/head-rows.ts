/** The rows above the headings: title, hint, and what the plan has to say. */

import { BLANK, date, text } from '../block/cells';
import type { BlockRow } from '../block/compose-block';
import { TITLES } from '../block/own-words';
import type { BlockCell, BlockStyle } from '../contract';
import { FROZEN_COLUMNS } from './columns';
import type { RotationBlockInput } from './model';
import * as words from './words';

/** Its days stand beside it. */
const TITLE = `${TITLES.rotation}… to`;
/** Begins each line of warnings, so that what a grower types there is not taken for one. */
export const WARNING = 'About this plan: ';
/** Title and hint. */
const FIRST_LINES = 2;

export function rowsAbove(input: RotationBlockInput): BlockRow[] {
  const { seasonStart, seasonEnd } = input.settings.rules;
  // Behind the frozen columns, so that a long line can be scrolled.
  const aside = Array<BlockCell>(FROZEN_COLUMNS - 1).fill(BLANK);
  return [TITLE, words.TYPE_DAY, ...warningLines(input)].map(
    (line, r): BlockRow => ({
      cells:
        r === 0 ? [text(line), ...aside, date(seasonStart), date(seasonEnd)] : [BLANK, ...aside, text(line)],
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

/**
 * One line, and as many as stand in a table that is written anew: formulas elsewhere point at its rows, so the headings
 * stay in theirs.
 */
function warningLines({ warnings, headRows = 0 }: RotationBlockInput): string[] {
  const [first, ...more] = warnings;
  const others = more.length > 0 ? ` ${words.andMoreWarnings(more.length)}` : '';
  const blank = Array<string>(Math.max(0, headRows - FIRST_LINES - 1)).fill('');
  return [first === undefined ? '' : `${WARNING}${first}${others}`, ...blank];
}
