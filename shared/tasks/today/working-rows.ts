/**
 * What today's page works out of the rotation table, a row for each group: the cells of the cards and the trigger
 * behind the boxes read it there. Plain formulas, for TODAY() may not reach a cell function.
 *
 * - Recorded is the last day moved in that is typed. Where none is, the page goes by the plan.
 * - "At" and "Next at" are places in the ranges of the table, from its blank row on; 0 where there is none. The group
 *   stands at the last one up to today of those recorded, and goes to the next after it.
 */
import { BLANK, formula, text } from '../../block/cells';
import type { BlockCell } from '../../contract';
import { type HerdSource, herdFormulas } from '../../table/herd-formulas';
import { keyFormula } from '../../table/move-formulas';
import type { Draft } from '../draft-block';
import type { TrainingFormulas } from '../training/group-training';
import type { BoundColumn, BoundTable } from './bound-table';
import { TICK } from './tick-words';
import * as words from './words';

const DAY = 'yyyy-mm-dd';
const WHOLE = '0';

export const WORKING_HEADINGS = [
  'Working',
  'Group key',
  TICK.today,
  'Recorded',
  'Since',
  'Without a day',
  'At',
  'Next day',
  TICK.next,
  'Head now',
  'Weight now',
  'Trained',
  TICK.row,
  TICK.column,
  TICK.days,
  TICK.refusal,
] as const;
export type WorkingHeading = (typeof WORKING_HEADINGS)[number];

/** The rotation table, the herd log where there is one in the same units, and the training log. */
export interface TodayTable extends BoundTable {
  readonly herd?: HerdSource;
  readonly training?: TrainingFormulas;
}

/** With the logs that there are; the herd log only in the units of the table. */
export function withLogs(
  table: BoundTable,
  {
    herd,
    training,
  }: { readonly herd?: HerdSource | undefined; readonly training?: TrainingFormulas | undefined },
): TodayTable {
  return { ...table, ...(herd?.units === table.units && { herd }), ...(training && { training }) };
}

/** Addresses of a group's card: the cell of its name and the box. */
export interface CardCells {
  readonly name: string;
  readonly box: string;
}

/** Address of a group's working cell. */
export type WorkingAt = (heading: WorkingHeading) => string;

/** Addresses in the working row that will stand in sheet row `row`. */
export function workingAt(draft: Draft, row: number): WorkingAt {
  return (heading) => draft.fixed(row, WORKING_HEADINGS.indexOf(heading));
}

/** What stands in a column of the table at a place. */
export function lookedUp(table: BoundTable, column: BoundColumn, at: string): string {
  return `INDEX(${table.range(column)};${at})`;
}

export function addWorkingRow(draft: Draft, table: TodayTable, group: string, card: CardCells): void {
  const at = workingAt(draft, draft.next());
  const { range } = table;
  const key = at('Group key');
  const own = `${range('groupKey')};${key}`;
  const since = at('Since');
  const next = at('Next day');
  const place = (day: string): string =>
    `SUMPRODUCT(MAX((${range('groupKey')}=${key})*(${range('inDay')}=${day})*(ROW(${range('groupKey')})-ROW(${table.first('groupKey')})+1)))`;
  const upToToday = `${range('inDay')};"<="&TODAY()`;
  const cells: Record<WorkingHeading, BlockCell> = {
    Working: formula(`=${card.name}`),
    'Group key': formula(keyFormula(card.name)),
    [TICK.today]: formula('=TODAY()', DAY),
    Recorded: formula(`=MAXIFS(${range('inDay')};${own};${range('movedIn')};">0";${upToToday})`, DAY),
    Since: formula(
      `=IF(${at('Recorded')}>0;${at('Recorded')};MAXIFS(${range('inDay')};${own};${upToToday}))`,
      DAY,
    ),
    'Without a day': formula(
      `=IF(${at('Recorded')}>0;COUNTIFS(${own};${range('inDay')};">"&${at('Recorded')};${upToToday});0)`,
      WHOLE,
    ),
    At: formula(`=IF(${since}>0;${place(since)};0)`, WHOLE),
    'Next day': formula(`=MINIFS(${range('inDay')};${own};${range('inDay')};">"&${since})`, DAY),
    [TICK.next]: formula(`=IF(${next}>0;${place(next)};0)`, WHOLE),
    'Head now': formula(headNow(table, at), WHOLE),
    'Weight now': formula(weightNow(table, at), WHOLE),
    Trained: formula(`=${table.training?.ready(card.name) ?? '0'}`, DAY),
    [TICK.row]: formula(`=ROW(${card.box})`, WHOLE),
    [TICK.column]: formula(`=COLUMN(${card.box})`, WHOLE),
    [TICK.days]: formula(`=ROWS(${range('movedIn')})`, WHOLE),
    [TICK.refusal]: formula(refusal(table, at, own)),
  };
  draft.add(
    WORKING_HEADINGS.map((heading) => cells[heading]),
    'muted',
    `working ${group}`,
  );
}

export function addWorkingHeadings(draft: Draft): void {
  draft.add([BLANK]);
  draft.add([text(words.WORKED_OUT)], 'muted');
  draft.add(WORKING_HEADINGS.map(text), 'muted');
}

/** The head of the move, or what the herd log says by today. */
function headNow({ herd, ...table }: TodayTable, at: WorkingAt): string {
  const head = lookedUp(table, 'head', at('At'));
  const now = herd ? herdFormulas(herd, at('Group key'), 'TODAY()').head(head) : head;
  return `=IFERROR(IF(${at('At')}=0;"";${now});"")`;
}

/**
 * The weight between this move's and the next one's, straight; after the last move, and from a weighing since the group
 * came in, by the daily gain.
 */
function weightNow({ herd, ...table }: TodayTable, at: WorkingAt): string {
  const here = lookedUp(table, 'weightIn', at('At'));
  const there = lookedUp(table, 'weightIn', at(TICK.next));
  const gain = lookedUp(table, 'dailyGain', at('At'));
  const grown = (from: string, day: string): string =>
    `${from}+IF(ISNUMBER(${gain});${gain}*(TODAY()-${day});0)`;
  const onTheWay = `${here}+(${there}-${here})*(TODAY()-${at('Since')})/(${at('Next day')}-${at('Since')})`;
  const isOnTheWay = `IF(${at(TICK.next)}>0;ISNUMBER(${there});FALSE)`;
  const planned = `IF(ISNUMBER(${here});IF(${isOnTheWay};${onTheWay};${grown(here, at('Since'))});"")`;
  const log = herd && herdFormulas(herd, at('Group key'), 'TODAY()');
  const weighed = log?.weighedOn('0');
  const now = log
    ? `IF(${weighed}>${at('Since')};${grown(log.weight('0'), `${weighed}`)};${planned})`
    : planned;
  return `=IFERROR(IF(${at('At')}=0;"";${now});"")`;
}

/** Why a tick cannot be written down. */
function refusal(table: BoundTable, at: WorkingAt, own: string): string {
  const twice = `COUNTIFS(${own};${table.range('inDay')};${at('Next day')})>1`;
  const rules: readonly (readonly [when: string, says: string])[] = [
    [`${at(TICK.next)}=0`, '"no move of this group is planned"'],
    // It may have come here late, or gone on already: which move the tick means, nobody can say.
    [
      `AND(${at('Recorded')}=0;${at('At')}>0)`,
      `"no day is typed for this group yet. Type under Moved in of the rotation table when it came into "&${lookedUp(table, 'paddock', at('At'))}&"; from then on the box counts"`,
    ],
    [
      `${at('Without a day')}>1`,
      `${at('Without a day')}&" moves up to today have no day. Type them under Moved in of the rotation table"`,
    ],
    [twice, '"two moves of this group stand on one day. Type the day in the rotation table"'],
    [
      `${at('Since')}=TODAY()`,
      '"it came here today. If it has moved once more, type that in the rotation table"',
    ],
    [
      `${lookedUp(table, 'movedIn', at(TICK.next))}<>""`,
      '"the next move has a day already. Mend it in the rotation table"',
    ],
  ];
  const body = rules.reduceRight((otherwise, [when, says]) => `IF(${when};${says};${otherwise})`, '""');
  return `=IFERROR(${body};"the days of this group cannot be worked out. See the Check column of the rotation table")`;
}
