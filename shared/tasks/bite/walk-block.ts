/** The fence walk log as a block of cells: a summary in plain formulas over rows to type into. */

import { BLANK, blank, date, formula, number, text } from '../../block/cells';
import { composeBlock } from '../../block/compose-block';
import type { ComposedBlock } from '../../block/composed-block';
import { DAY_FORMAT } from '../../block/day-format';
import { TITLES } from '../../block/own-words';
import type { BlockCell, BlockStyle } from '../../contract';
import { type Draft, draftBlock, type Origin } from '../draft-block';
import { addEndLine } from '../end-line';
import { addLines } from '../look-out';
import { NEW_TABLE, roomToType, type TableRoom } from '../room-to-type';
import { addSettings, type SettingSpec, type SettingValues } from '../settings';
import type { Reading } from './walk-log';
import * as words from './words';

export const WALK_BLOCK = 'SOUNDER_FENCE_WALK';
export const WALK_HEADINGS = ['Date', 'Place', 'Volts', 'What was found', 'Says'] as const;
export const WALK_SETTINGS: readonly SettingSpec<'level'>[] = [
  {
    key: 'level',
    label: 'Volts below which to act',
    unit: 'V',
    start: 3000,
    above: 0,
    note: words.ACT_BELOW_NOTE,
  },
];
export const NO_NUMBER = 'type the volts as a number';
export const NO_DAY = 'type the day as a date';

/** Rows left free below the last reading. Judgement: a season of weekly walks. */
const FREE_ROWS = 40;
const STYLES: readonly BlockStyle[] = ['input', 'input', 'input', 'input', 'plain'];
const WIDTHS = [200, 160, 90, 300, 190];

/** A row as typed, or a reading that the sidebar adds. */
export type WalkRow = readonly [BlockCell, BlockCell, BlockCell, BlockCell];

export function readingRow({ day, place, volts, found }: Reading): WalkRow {
  return [date(day), text(place), number(volts), text(found)];
}

export function walkBlock(
  rows: readonly WalkRow[],
  settings: SettingValues<'level'>,
  origin: Origin,
  room: TableRoom = NEW_TABLE,
): ComposedBlock {
  const draft = draftBlock(origin);
  draft.add([text(TITLES.walk)], 'title');
  addLines(draft, words.WALK_CAUTION, 'warning');
  const { level } = addSettings(draft, WALK_SETTINGS, settings, 'US');
  const first = draft.next() + SUMMARY_ROWS + 1;
  const end = first + roomToType(rows.length, FREE_ROWS, room);
  // From the headings to the end line, so that rows put in above the first or below the last count.
  const dates = draft.down(first - 1, end, 0);
  const volts = draft.down(first - 1, end, 2);
  const figure = (label: string, body: string, format: string, unit: string): string =>
    draft.fixed(
      draft.add([text(label), formula(`=${body}`, format), text(unit)], ['plain', 'plain', 'muted']),
      1,
    );
  const lastDay = figure('Last walk', `IF(COUNT(${dates})=0;"";INT(MAX(${dates})))`, DAY_FORMAT, '');
  // A whole day, whatever time was typed with it. Readings that are no numbers are no 0 V: they are passed over.
  const lowestOn = (day: string): string => {
    const onDay = `${dates};">="&${day};${dates};"<"&${day}+1`;
    return `IF(${day}="";"";IF(COUNTIFS(${onDay};${volts};">=0")=0;"";MINIFS(${volts};${onDay};${volts};">=0")))`;
  };
  const now = figure('Lowest of the last walk', lowestOn(lastDay), '0', 'V');
  const before = figure(
    'Walk before',
    `IF(${lastDay}="";"";IF(COUNTIF(${dates};"<"&${lastDay})=0;"";INT(MAXIFS(${dates};${dates};"<"&${lastDay}))))`,
    DAY_FORMAT,
    '',
  );
  const then = figure('Lowest of the walk before', lowestOn(before), '0', 'V');
  figure('Change', `IF(OR(${now}="";${then}="");"";${now}-${then})`, '+0;-0;0', 'V');
  figure('Lowest of all', `IF(COUNT(${volts})=0;"";MIN(${volts}))`, '0', 'V');
  figure('Readings below the level', `COUNTIF(${volts};"<"&${level})`, '0', 'readings');
  draft.add(WALK_HEADINGS.map(text), 'heading');
  for (let row = first; row < end; row++) {
    const typed = rows[row - first] ?? [blank(DAY_FORMAT), BLANK, BLANK, BLANK];
    draft.add([...typed, formula(says(draft, row, level))], STYLES);
  }
  addEndLine(draft, TYPED_COLUMNS - 1);
  const low = draft.at(first, TYPED_COLUMNS);
  draft.rules.push({
    row: first - origin.row,
    column: TYPED_COLUMNS,
    rows: end - first,
    columns: 1,
    formula: `=AND(${low}<>"";${low}<>"${ENOUGH}")`,
    background: '#fde3c8',
  });
  const { cells, styles, ids } = composeBlock(draft.rows);
  return { cells, styles, ids, rules: draft.rules, widths: WIDTHS };
}

/** "type the day as a date; too low": each piece begins with "; ", and the first two signs are cut off. */
function says(draft: Draft, row: number, level: string): string {
  const [day, volts] = [draft.at(row, 0), draft.at(row, 2)];
  const isNumber = `ISNUMBER(${volts})`;
  const noDay = `IF(AND(NOT(ISNUMBER(${day}));COUNTA(${day};${volts})>0);"; ${NO_DAY}";"")`;
  const noNumber = `IF(AND(NOT(${isNumber});COUNTA(${volts})>0);"; ${NO_NUMBER}";"")`;
  return `=MID(${noDay}&${noNumber}&IF(${isNumber};IF(${volts}<${level};"; too low";"; ${ENOUGH}");"");3;200)`;
}

const ENOUGH = 'enough';
const TYPED_COLUMNS = 4;
/** Figures between the settings and the headings. */
const SUMMARY_ROWS = 7;
