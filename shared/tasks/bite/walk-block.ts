/** The fence walk log as a block of cells: a summary in plain formulas over rows to type into. */
import { BLANK, date, formula, number, text } from '../../block/cells';
import { composeBlock } from '../../block/compose-block';
import type { BlockCell, BlockStyle } from '../../contract';
import type { ComposedBlock } from '../composed-block';
import { draftBlock, type Origin } from '../draft-block';
import { addSettings, type SettingSpec, type SettingValues } from '../settings';
import type { Reading } from './walk-log';

export const WALK_BLOCK = 'SOUNDER_FENCE_WALK';
export const WALK_HEADINGS = ['Date', 'Place', 'Volts', 'What was found', 'Says'] as const;
export const WALK_SETTINGS: readonly SettingSpec<'level'>[] = [
  {
    key: 'level',
    label: 'Volts below which to act',
    unit: 'V',
    start: 3000,
    above: 0,
    note: 'Trained pigs 2,000 at least, aim 3,000 to 4,000: from memory, no official level for pigs was found.',
  },
];
export const WALK_CAUTION =
  'Measure with a fence tester, at the far end and in the worst growth. Switch the energizer off before you mend.';

/** Rows left free below the last reading. Judgement: a season of weekly walks. */
const FREE_ROWS = 40;
const STYLES: readonly BlockStyle[] = ['input', 'input', 'input', 'input', 'plain'];
const WIDTHS = [200, 160, 90, 300, 110];

/** A row as typed, or a reading that the sidebar adds. */
export type WalkRow = readonly [BlockCell, BlockCell, BlockCell, BlockCell];

export function readingRow({ day, place, volts, found }: Reading): WalkRow {
  return [date(day), text(place), number(volts), text(found)];
}

export function walkBlock(
  rows: readonly WalkRow[],
  settings: SettingValues<'level'>,
  origin: Origin,
): ComposedBlock {
  const draft = draftBlock(origin);
  draft.add([text('Fence walk')], 'title');
  draft.add([text(WALK_CAUTION)], 'warning');
  const { level } = addSettings(draft, WALK_SETTINGS, settings, 'US');
  const first = draft.next() + SUMMARY_ROWS + 1;
  const last = first + rows.length + FREE_ROWS - 1;
  const dates = draft.down(first, last, 0);
  const volts = draft.down(first, last, 2);
  const figure = (label: string, body: string, format: string, unit: string): string =>
    draft.fixed(
      draft.add([text(label), formula(`=${body}`, format), text(unit)], ['plain', 'plain', 'muted']),
      1,
    );
  const lastDay = figure('Last walk', `IF(COUNT(${dates})=0;"";MAX(${dates}))`, 'yyyy-mm-dd', '');
  const lowestOn = (day: string): string => `IF(${day}="";"";MINIFS(${volts};${dates};${day}))`;
  const now = figure('Lowest of the last walk', lowestOn(lastDay), '0', 'V');
  const before = figure(
    'Walk before',
    `IF(${lastDay}="";"";IF(COUNTIF(${dates};"<"&${lastDay})=0;"";MAXIFS(${dates};${dates};"<"&${lastDay})))`,
    'yyyy-mm-dd',
    '',
  );
  const then = figure('Lowest of the walk before', lowestOn(before), '0', 'V');
  figure('Change', `IF(OR(${now}="";${then}="");"";${now}-${then})`, '+0;-0;0', 'V');
  figure('Lowest of all', `IF(COUNT(${volts})=0;"";MIN(${volts}))`, '0', 'V');
  figure('Readings below the level', `COUNTIF(${volts};"<"&${level})`, '0', 'readings');
  draft.add(WALK_HEADINGS.map(text), 'heading');
  for (let row = first; row <= last; row++) {
    const cell = draft.at(row, 2);
    const says = formula(`=IF(ISNUMBER(${cell});IF(${cell}<${level};"too low";"enough");"")`);
    draft.add([...(rows[row - first] ?? [BLANK, BLANK, BLANK, BLANK]), says], STYLES);
  }
  const low = draft.at(first, 4);
  draft.rules.push({
    row: first - origin.row,
    column: 4,
    rows: last - first + 1,
    columns: 1,
    formula: `=${low}="too low"`,
    background: '#fde3c8',
  });
  const { cells, styles } = composeBlock(draft.rows);
  return { cells, styles, rules: draft.rules, widths: WIDTHS };
}

/** Figures between the settings and the headings. */
const SUMMARY_ROWS = 7;
