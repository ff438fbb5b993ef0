/**
 * The training log as a live block: typed days on the left, plain formulas that say what is still missing.
 *
 * Ready is a pig or batch only by what was seen here: in the pen, saw the wire, backed off, passed a check with
 * an observer, long enough in. What the seller says is kept and changes nothing.
 *
 *   ready from = the later of (day of the check, day in the pen + minimum days), or the words "not ready"
 *
 * A group is ready only when every row that names it is: also a row without a name or without formulas of its own,
 * which was put in between or typed right below the log.
 *
 * "not ready" is text on purpose: a group list that points at the cell then stops the rotation plan with a
 * message instead of starting the group on the first day.
 */

import { BLANK, blank, formula, text } from '../../block/cells';
import { composeBlock } from '../../block/compose-block';
import type { ComposedBlock } from '../../block/composed-block';
import { DAY_FORMAT, DAY_WIDTH } from '../../block/day-format';
import { TITLES } from '../../block/own-words';
import type { BlockCell, BlockStyle } from '../../contract';
import { type Draft, draftBlock, type Origin } from '../draft-block';
import { addEndLine } from '../end-line';
import { FREE_COLUMNS } from '../name-blank-headings';
import { NEW_TABLE, roomToType, type TableRoom } from '../room-to-type';
import { addSettings, type SettingSpec, type SettingValues } from '../settings';
import { LOG_HEADINGS, LOG_INPUTS, NAME_MISSING, NOT_READY } from './log-headings';
import { type LogTable, resultCells } from './log-results';
import * as words from './words';
import { MINIMUM_DAYS_NOTE } from './words';

export const LOG_BLOCK = 'SOUNDER_TRAINING_LOG';

export const LOG_SETTINGS: readonly SettingSpec<'minimumDays'>[] = [
  {
    key: 'minimumDays',
    label: 'Fewest days in the pen',
    unit: 'days',
    start: 3,
    note: MINIMUM_DAYS_NOTE,
    min: 0,
    max: 60,
    whole: true,
  },
];

/** Rows ready to type into. Judgement. */
const FREE_ROWS = 15;

/** Typed cells of one row, by heading; also under headings that the grower added. */
export type LogRow = ReadonlyMap<string, BlockCell>;

/** `headings`: those of the log that stands, in its order and with its free columns; empty for a first one. */
export function composeLogBlock(
  settings: SettingValues<'minimumDays'>,
  typed: readonly LogRow[],
  headings: readonly string[],
  origin: Origin,
  room: TableRoom = NEW_TABLE,
): ComposedBlock {
  const draft = draftBlock(origin);
  draft.add([text(TITLES.log)], 'title');
  for (const caution of words.LOG_HEAD_CAUTIONS) draft.add([text(caution)], 'warning');
  const { minimumDays } = addSettings(draft, LOG_SETTINGS, settings, 'US');
  const beside = (note: string, ...cells: readonly BlockCell[]): number =>
    draft.add([...cells, BLANK, text(note)], ['plain', 'plain', 'plain', 'muted']);
  const todayRow = beside(words.TYPE_DAYS, text('Today'), formula('=TODAY()', DAY_FORMAT));
  beside(words.LET_IT_DECIDE, BLANK, BLANK);
  draft.add();
  const across = withFreeColumns(headings.length > 0 ? headings : LOG_HEADINGS);
  const ours: readonly string[] = LOG_HEADINGS;
  const headRow = draft.add(
    across.map(text),
    // The headings of free columns and of the grower's own are the grower's to type.
    across.map((heading): BlockStyle => (ours.includes(heading) ? 'heading' : 'input')),
  );
  const endRow = headRow + roomToType(typed.length, FREE_ROWS, room) + 1;
  const table: LogTable = {
    headings: across,
    minimumDays,
    today: draft.fixed(todayRow, 1),
    headRow,
    endRow,
    lastInput: Math.max(...LOG_INPUTS.map((heading) => across.indexOf(heading))),
  };
  while (draft.next() < endRow) addLogRow(draft, table, typed[draft.next() - headRow - 1] ?? new Map());
  addEndLine(draft, table.lastInput);
  const status = across.indexOf('Status');
  const colour = (condition: (cell: string) => string, background: string) => ({
    row: headRow + 1 - origin.row,
    column: status,
    rows: endRow - headRow - 1,
    columns: 1,
    formula: `=${condition(draft.at(headRow + 1, status))}`,
    background,
  });
  return {
    ...composeBlock(draft.rows),
    rules: [
      colour((cell) => `OR(${cell}="${NOT_READY}";${cell}="${NAME_MISSING}")`, '#fdecea'),
      colour((cell) => `${cell}="ready"`, '#e6f4ea'),
    ],
    widths: [
      170,
      DAY_WIDTH,
      60,
      DAY_WIDTH,
      DAY_WIDTH,
      DAY_WIDTH,
      DAY_WIDTH,
      DAY_WIDTH,
      70,
      100,
      260,
      DAY_WIDTH,
      130,
      150,
      200,
    ],
  };
}

/** The headings with free columns at their right, where none is left. */
function withFreeColumns(headings: readonly string[]): readonly string[] {
  return headings.includes('') ? headings : [...headings, ...Array<string>(FREE_COLUMNS).fill('')];
}

function addLogRow(draft: Draft, table: LogTable, typed: LogRow): void {
  const results = resultCells(draft, draft.next(), table);
  const { headings } = table;
  // A heading that stands twice counts where it stands first.
  const isFirst = (heading: string, c: number): boolean => heading !== '' && headings.indexOf(heading) === c;
  const cells = headings.map((heading, c) =>
    isFirst(heading, c) ? (results.get(heading) ?? typed.get(heading) ?? blankOf(heading)) : BLANK,
  );
  const styles = headings.map(
    (heading, c): BlockStyle => (isFirst(heading, c) && results.has(heading) ? 'plain' : 'input'),
  );
  draft.add(cells, styles);
}

/** Where a day is to be typed it shows as days do. */
function blankOf(heading: string): BlockCell {
  return heading.endsWith(' on') ? blank(DAY_FORMAT) : BLANK;
}
