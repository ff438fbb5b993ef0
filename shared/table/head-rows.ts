/** The rows above the headings: title, hint, and what the plan has to say. */
import { BLANK, text } from '../block/cells';
import type { BlockRow } from '../block/compose-block';
import type { BlockCell, BlockStyle } from '../contract';
import { isoFromDay } from '../core/calendar/day';
import type { KeptCell, RotationBlockInput } from './model';
import { movedCell } from './moved-cell';

/** Above the table, so that headings can stay in sight; the rest of the warnings is in the check column. */
const MOST_WARNINGS = 4;
/** What the title looks like where nobody typed another one. */
export const TITLE = /^Rotation from \d{4}-\d\d-\d\d to \d{4}-\d\d-\d\d$/;
export const HINT =
  'When a group has moved, type the day under Moved in: all later moves of the group shift. Days, cover left and note are yours to type too. Build again to plan the rest anew: it plans days and paddock of moves still to come. When head or weights in your list change, build the table anew first, so that the past keeps its figures: past rows follow the list until then.';
/** Begins each line of warnings, so that what a grower types there is not taken for one. */
export const WARNING = 'About this plan: ';
/** Title and hint. */
const FIRST_LINES = 2;

export function rowsAbove(input: RotationBlockInput): BlockRow[] {
  const { settings, own } = input;
  const { seasonStart, seasonEnd } = settings.rules;
  const title = own?.title ?? `Rotation from ${isoFromDay(seasonStart)} to ${isoFromDay(seasonEnd)}`;
  const lines = [title, HINT, ...warningLines(input)];
  return lines.map((line, r): BlockRow => {
    const first = line === '' ? BLANK : text(line);
    const typed = own?.headCells.filter(({ from }) => from?.[0] === r) ?? [];
    const style = styleOf(r, line);
    return typed.length === 0 ? { cells: [first], style } : withTyped(first, typed, style);
  });
}

/** A row with cells of the grower's, which stay in their places. */
function withTyped(first: BlockCell, typed: readonly KeptCell[], style: BlockStyle): BlockRow {
  const cells = [first];
  const styles = [style];
  for (const cell of typed) {
    const column = cell.from?.[1] ?? 0;
    while (cells.length <= column) {
      cells.push(BLANK);
      styles.push(style);
    }
    cells[column] = movedCell(cell, cell.sheetRow);
    styles[column] = 'plain';
  }
  return { cells, style: styles };
}

function styleOf(row: number, line: string): BlockStyle {
  if (row === 0) return 'title';
  if (row < FIRST_LINES) return 'muted';
  return line === '' ? 'plain' : 'warning';
}

/** Formulas elsewhere point at rows of the table: however much there is to say, the headings stay in their row. */
function warningLines({ warnings, own }: RotationBlockInput): string[] {
  const shown = warnings.length > MOST_WARNINGS ? warnings.slice(0, MOST_WARNINGS - 1) : warnings;
  const more = warnings.length - shown.length;
  const sentences = more > 0 ? [...shown, `And ${more} more: see the Check column.`] : [...shown];
  // One line is left free in a first table: most rebuilds have something to say.
  const room = Math.max(1, own ? own.headRows - FIRST_LINES : sentences.length);
  const fitting = sentences.slice(0, room - 1);
  const last = sentences.slice(room - 1).join(' ');
  return Array.from({ length: room }, (_, i) => fitting[i] ?? (i === fitting.length ? last : '')).map(
    (line) => (line === '' ? '' : WARNING + line),
  );
}
