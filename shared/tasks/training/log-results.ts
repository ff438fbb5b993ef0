/** The formulas of one row of the training log: what is still missing, and from when the pigs and their group are ready. */

import { formula } from '../../block/cells';
import { DAY_FORMAT } from '../../block/day-format';
import type { BlockCell } from '../../contract';
import type { Draft } from '../draft-block';
import { isFilledBelow } from '../end-line';
import { type LOG_HEADINGS, LOG_INPUTS, LOG_REMARKS, NAME_MISSING, NOT_READY } from './log-headings';

type Heading = (typeof LOG_HEADINGS)[number];

/** Rows right below the log in which a group is looked for, where they touch it. Judgement. */
const ROWS_BELOW = 20;

/** Where the log stands in the sheet. */
export interface LogTable {
  readonly headings: readonly string[];
  readonly minimumDays: string;
  readonly today: string;
  readonly headRow: number;
  /** Row of the end line. */
  readonly endRow: number;
  /** Last column that is typed into, from 0; remarks aside. */
  readonly lastInput: number;
}

/** Formulas of a row by the headings they stand under. */
export function resultCells(draft: Draft, row: number, table: LogTable): ReadonlyMap<string, BlockCell> {
  const { headings, headRow, endRow, minimumDays, today } = table;
  const at = (heading: Heading): string => draft.at(row, headings.indexOf(heading));
  const down = (heading: Heading): string => draft.down(headRow, endRow, headings.indexOf(heading));
  const [group, inPen, check] = [at('Group'), at('In the pen on'), at('Passed check on')];
  const [missing, ready] = [at('Still missing'), at('Ready from')];
  const typed = [...LOG_INPUTS, ...LOG_REMARKS].map(at).join(';');
  const ifUsed = (then: string): string => `=IF(COUNTA(${typed})=0;"";${then})`;
  const latest = `MAX(${ready};MAXIFS(${down('Ready from')};${down('Group')};${group}))`;
  return new Map<Heading, BlockCell>([
    [
      'Days in',
      formula(
        ifUsed(`IF(ISNUMBER(${inPen});MAX(0;IF(ISNUMBER(${check});${check};${today})-${inPen});"")`),
        '0',
      ),
    ],
    [
      'Status',
      formula(
        ifUsed(
          `IF(TRIM(${at('Pig or batch')})="";"${NAME_MISSING}";IF(${missing}<>"";"${NOT_READY}";IF(${ready}>${today};"wait";"ready")))`,
        ),
      ),
    ],
    ['Still missing', formula(ifUsed(missingText(at, today)))],
    [
      'Ready from',
      formula(ifUsed(`IF(${missing}="";MAX(${check};${inPen}+${minimumDays});"${NOT_READY}")`), DAY_FORMAT),
    ],
    [
      'Group ready from',
      formula(
        ifUsed(`IF(${group}="";"";IF(${rowsNotReady(draft, table, group)}>0;"${NOT_READY}";${latest}))`),
        DAY_FORMAT,
      ),
    ],
  ]);
}

/** How many rows name the group and have no day from which they are ready; those right below the log among them. */
function rowsNotReady(
  draft: Draft,
  { headings, headRow, endRow, lastInput }: LogTable,
  group: string,
): string {
  const [groups, ready] = [headings.indexOf('Group'), headings.indexOf('Ready from')];
  const between = (first: number, last: number): string =>
    `SUMPRODUCT((TRIM(${draft.down(first, last, groups)})=TRIM(${group}))*(1-ISNUMBER(${draft.down(first, last, ready)})))`;
  // The ranges begin at the headings, so that a row put in above the first one counts; the heading itself does not.
  const heading = `IF(${draft.fixed(headRow, groups)}=TRIM(${group});1;0)`;
  const below = `IF(${isFilledBelow(draft, endRow, lastInput)};${between(endRow, endRow + ROWS_BELOW)};0)`;
  return `${between(headRow, endRow)}-${heading}+${below}`;
}

/** "saw the wire; an observer": each piece begins with "; ", and the first two signs are cut off. */
function missingText(at: (heading: Heading) => string, today: string): string {
  const [name, group, inPen, saw, back, check, observer, seller] = [
    at('Pig or batch'),
    at('Group'),
    at('In the pen on'),
    at('Saw the wire on'),
    at('Backed off on'),
    at('Passed check on'),
    at('Observer'),
    at('Seller says trained'),
  ];
  const days = [inPen, saw, back, check].join(';');
  const piece = (isMissing: string, words: string): string => `IF(${isMissing};"; ${words}";"")`;
  const pieces = [
    piece(`TRIM(${name})=""`, 'name of the pig or batch'),
    piece(`LEN(${group})<>LEN(TRIM(${group}))`, 'the group’s name without a space too many'),
    piece(`NOT(ISNUMBER(${inPen}))`, 'day in the pen'),
    piece(`NOT(ISNUMBER(${saw}))`, 'saw the wire'),
    piece(`NOT(ISNUMBER(${back}))`, 'backed off'),
    piece(`NOT(ISNUMBER(${check}))`, 'passed the check'),
    piece(`${observer}=""`, 'name of the observer'),
    piece(
      `COUNT(${days})<COUNTA(${days})`,
      'a day that is typed as words (Format > Number > Date, then type it again)',
    ),
    piece(
      `OR(AND(COUNT(${inPen};${saw})=2;${saw}<${inPen});AND(COUNT(${saw};${back})=2;${back}<${saw});AND(COUNT(${back};${check})=2;${check}<${back}))`,
      'days in their order',
    ),
    piece(`MAX(${days};0)>${today}`, 'a day that lies ahead'),
  ].join('&');
  const seen = `COUNT(${days})=4`;
  const word = `IF(AND(${seller}<>"";NOT(${seen}));" (a seller’s word does not count)";"")`;
  return `MID(${pieces};3;500)&${word}`;
}
