/**
 * The herd log as a block of cells: who, from which day on, how many, what they weigh. It is the record that head and
 * weight of every day come from; the group list is where it begins.
 */

import { BLANK, blank, date, formula, number, text } from '../../block/cells';
import { composeBlock } from '../../block/compose-block';
import type { ComposedBlock } from '../../block/composed-block';
import { DAY_FORMAT, DAY_WIDTH } from '../../block/day-format';
import { TITLES } from '../../block/own-words';
import type { BlockCell, BlockStyle } from '../../contract';
import type { Day } from '../../core/calendar/day';
import { keyFormula } from '../../table/move-formulas';
import { GROWING_LIGHTEST_KG } from '../../tables/growing-weights';
import { fromInside, symbolOf, type UnitSystem } from '../../units/units';
import { type Draft, draftBlock, type Origin } from '../draft-block';
import { addEndLine } from '../end-line';
import { NEW_TABLE, roomToType, type TableRoom } from '../room-to-type';
import { addUnits } from '../settings';
import * as words from './words';

export const HERD_BLOCK = 'SOUNDER_HERD';
export const HERD_HEADINGS = ['Group', 'Day', 'Head from then on', 'Weight each', 'Note', 'Says'] as const;
export const HERD_KEY = 'Group of the log';
/** See `HerdSource`. */
export const HERD_WORKING = [HERD_KEY, 'Change of head', 'Change × day'] as const;

/** Rows left free below the last one. Judgement: a season of sales and weighings. */
const FREE_ROWS = 40;
const STYLES: readonly BlockStyle[] = [
  'input',
  'input',
  'input',
  'input',
  'input',
  'plain',
  'working',
  'working',
  'working',
];
const WIDTHS = [165, DAY_WIDTH, 92, 92, 220, 220, 110, 80, 80];

/** A row as typed, or one that the sidebar adds. */
export type HerdRow = readonly [BlockCell, BlockCell, BlockCell, BlockCell, BlockCell];

export interface HerdEntry {
  readonly group: string;
  readonly day: Day;
  readonly head?: number;
  readonly weightKg?: number;
}

export function herdRow({ group, day, head, weightKg }: HerdEntry, note: string, units: UnitSystem): HerdRow {
  return [
    text(group),
    date(day),
    head === undefined ? BLANK : number(head, '0'),
    weightKg === undefined ? BLANK : number(rounded(fromInside(weightKg, 'mass', units))),
    text(note),
  ];
}

/** Whole number of lb or kg under which a weight is no weaned pig's, and no cell function answers. */
export function leastWeight(units: UnitSystem): number {
  return Math.floor(fromInside(GROWING_LIGHTEST_KG, 'mass', units));
}

/** A weight that came through kilograms stands as it was typed. */
function rounded(value: number): number {
  return Number(value.toFixed(6));
}

export function herdBlock(
  rows: readonly HerdRow[],
  units: UnitSystem,
  origin: Origin,
  room: TableRoom = NEW_TABLE,
): ComposedBlock {
  const draft = draftBlock(origin);
  draft.add([text(TITLES.herd)], 'title');
  draft.add([text(words.ONE_ROW)], 'muted');
  draft.add([text(words.COUNTS_FROM)], 'muted');
  addUnits(draft, units);
  draft.add([BLANK, BLANK, text('pigs'), text(symbolOf('mass', units))], 'muted');
  draft.add([...HERD_HEADINGS, ...HERD_WORKING].map(text), 'heading');
  const first = draft.next();
  const end = first + roomToType(rows.length, FREE_ROWS, room);
  for (let row = first; row < end; row++) {
    const typed = rows[row - first] ?? [BLANK, blank(DAY_FORMAT), BLANK, BLANK, BLANK];
    const working = [keyOf(draft, row), changeOf(draft, row, first, end), changeDay(draft, row)];
    draft.add(
      [...typed, formula(says(draft, row, first, end, units)), ...working.map((one) => formula(one, '0'))],
      STYLES,
    );
  }
  addEndLine(draft, 4);
  const said = draft.at(first, 5);
  draft.rules.push({
    row: first - origin.row,
    column: 5,
    rows: end - first,
    columns: 1,
    formula: `=${said}<>""`,
    background: '#fde3c8',
  });
  const { cells, styles, ids } = composeBlock(draft.rows);
  return { cells, styles, ids, rules: draft.rules, widths: WIDTHS };
}

function keyOf(draft: Draft, row: number): string {
  const name = draft.at(row, 0);
  return `=IF(${name}="";"";${keyFormula(`TRIM(${name})`).slice(1)})`;
}

/** Head less the group's head before that day, 0 where there was none; of two heads on one day the larger counts. */
function changeOf(draft: Draft, row: number, first: number, end: number): string {
  const [key, day, head] = [6, 1, 2].map((column) => draft.at(row, column));
  const [keys, days, heads] = [6, 1, 2].map((column) => draft.down(first - 1, end, column));
  const sameDay = `${keys};${key};${days};${day}`;
  const last = `MAXIFS(${days};${keys};${key};${days};"<"&${day};${heads};">=0")`;
  const change = `(${head}-MAXIFS(${heads};${keys};${key};${days};${last}))/COUNTIFS(${sameDay};${heads};${head})`;
  const isLess = `COUNTIFS(${sameDay};${heads};">"&${head})>0`;
  return `=IF(AND(${key}<>"";ISNUMBER(${day});ISNUMBER(${head}));IF(${head}<0;"";IF(${isLess};"";${change}));"")`;
}

function changeDay(draft: Draft, row: number): string {
  return `=IF(ISNUMBER(${draft.at(row, 7)});${draft.at(row, 7)}*${draft.at(row, 1)};"")`;
}

/** What keeps a row from counting, or two from being told apart; '' where all is well. */
function says(draft: Draft, row: number, first: number, end: number, units: UnitSystem): string {
  const [group, day, head, weight] = [0, 1, 2, 3].map((column) => draft.at(row, column)) as [
    string,
    string,
    string,
    string,
  ];
  // From the headings to the end line, so that rows put in above the first or below the last count.
  const down = (column: number): string => draft.down(first - 1, end, column);
  const least = leastWeight(units);
  const twice = (column: number): string =>
    `COUNTIFS(${down(6)};${draft.at(row, 6)};${down(1)};${day};${down(column)};">=0")>1`;
  const isWrong = (cell: string, wrong: string): string =>
    `IF(COUNTA(${cell})=0;FALSE;IF(ISNUMBER(${cell});${wrong};TRUE))`;
  const rules: readonly (readonly [when: string, words: string])[] = [
    [`COUNTA(${draft.at(row, 0)}:${draft.at(row, 3)})=0`, ''],
    [`${group}=""`, 'which group?'],
    [`NOT(ISNUMBER(${day}))`, 'type the day as a date'],
    [`COUNTA(${head};${weight})=0`, 'type a head or a weight'],
    [isWrong(head, `OR(${head}<0;${head}<>INT(${head}))`), words.HEAD_MUST],
    [isWrong(weight, `${weight}<${least}`), words.weightLeast(least, symbolOf('mass', units))],
    [`IF(ISNUMBER(${head});${twice(2)};FALSE)`, 'two heads on one day: the larger counts'],
    [`IF(ISNUMBER(${weight});${twice(3)};FALSE)`, 'two weights on one day: the larger counts'],
  ];
  return `=${rules.reduceRight((otherwise, [when, words]) => `IF(${when};"${words}";${otherwise})`, '""')}`;
}
