/** Today's page: a card for each group, narrow enough for a phone, in plain formulas over the rotation table. */

import { BLANK, formula, text } from '../../block/cells';
import { composeBlock } from '../../block/compose-block';
import type { ComposedBlock } from '../../block/composed-block';
import { TITLES } from '../../block/own-words';
import type { BlockCell } from '../../contract';
import { DEFAULT_TEMPERATURE_C } from '../../table/model';
import { SETTING_LABELS } from '../../table/settings-rows';
import { REMINDERS } from '../../table/words';
import { ME_RISE_PER_KG } from '../../tables/nrc-intake';
import {
  COOL_LITERS_PER_KG,
  COOL_UP_TO_CELSIUS,
  HOT_FROM_CELSIUS,
  HOT_LITERS_PER_KG,
} from '../../tables/water-per-feed';
import { fromInside, symbolOf } from '../../units/units';
import { type Draft, draftBlock, type Origin } from '../draft-block';
import { hotDay } from '../hot-day';
import type { BoundTable } from './bound-table';
import { BOX_COLUMN, TICK } from './tick-words';
import * as words from './words';
import {
  addWorkingHeadings,
  addWorkingRow,
  lookedUp,
  type TodayTable,
  type WorkingAt,
  workingAt,
} from './working-rows';

const DAY = 'ddd d mmm';
const WHOLE = '#,##0';
/** A phone shows about 350 pixels beside the row numbers. Judgement. */
const WIDTHS = [116, 104, 140];
const COLOURS = { late: '#f4cccc', today: '#fff2cc' } as const;
const ROWS_A_CARD = 15;
const LATE = 'Late';

export function todayBlock(table: TodayTable, origin: Origin): ComposedBlock {
  const draft = draftBlock(origin);
  const workingTop = origin.row + 3 + ROWS_A_CARD * table.groups.length + REMINDERS.length + 3;
  draft.add([text(TITLES.today), formula('=TODAY()', DAY)], 'title');
  draft.add([text(words.TICK)], 'muted');
  const warning = draft.add([formula(outOfDate(table, draft, workingTop))], 'plain', 'out of date');
  colour(draft, warning, `${draft.fixed(warning, 0)}<>""`, COLOURS.late);
  const cards = table.groups.map((group, g) => ({
    group,
    ...addCard(draft, table, group, workingAt(draft, workingTop + g)),
  }));
  for (const line of REMINDERS) draft.add([text(line)], 'muted');
  addWorkingHeadings(draft);
  for (const { group, ...cells } of cards) addWorkingRow(draft, table, group, cells);
  const { cells, styles, ids } = composeBlock(draft.rows);
  return { cells, styles, ids, rules: draft.rules, widths: cells[0]?.map((_, c) => WIDTHS[c] ?? 0) ?? [] };
}

/** Says when the table reaches further than this page looks, or has a group that is not here. */
function outOfDate(table: BoundTable, draft: Draft, workingTop: number): string {
  const { range } = table;
  const keys = table.groups.map((_, g) => workingAt(draft, workingTop + g)('Group key'));
  const known = keys.map((key) => `COUNTIFS(${range('groupKey')};${key})`).join('-');
  const others = `COUNTIFS(${range('groupKey')};"k*")${known === '' ? '' : `-${known}`}`;
  return `=IF(${table.last('groupKey')}<>"";"The rotation table has grown: write this page anew.";IF(${others}>0;"The rotation table has another group: write this page anew.";""))`;
}

function addCard(draft: Draft, table: TodayTable, group: string, at: WorkingAt) {
  const { units } = table;
  const top = draft.next();
  const add = (label: string, cells: readonly BlockCell[], style: 'plain' | 'input' = 'plain'): number =>
    draft.add([text(label), ...cells], ['plain', style, 'note'], `${group}: ${label}`);
  const shown = (body: string, format?: string): BlockCell => formula(`=IFERROR(${body};"?")`, format);
  const here = (column: Parameters<typeof lookedUp>[1]): string => lookedUp(table, column, at('At'));
  const there = (column: Parameters<typeof lookedUp>[1]): string => lookedUp(table, column, at(TICK.next));
  const [isIn, hasNext] = [`${at('At')}>0`, `${at(TICK.next)}>0`];
  const ends = `IF(${isIn};${here('out')};"")`;
  const hasLeft = `IF(${hasNext};FALSE;IF(${isIn};${here('out')}<=TODAY();FALSE))`;
  const ifHere = (body: string): string => `IF(${hasLeft};"";IF(${isIn};${body};""))`;
  const ifNumber = (cell: string, body = cell): string => `IF(ISNUMBER(${cell});${body};"no figure")`;
  const unit = (quantity: Parameters<typeof symbolOf>[0]): BlockCell => text(symbolOf(quantity, units));

  const { training } = table;
  const log = training ? [formula(`=IFERROR(${training.says(at('Trained'))};"")`)] : [];
  draft.add([text(group), ...log], 'heading', `${group}: card`);
  const untrained = training ? `${draft.fixed(top, 1)}<>""` : 'FALSE';
  if (training) colour(draft, top, untrained, COLOURS.late);
  add('Stands in', [shown(`IF(${hasLeft};"left the pasture";IF(${isIn};${here('paddock')};"not in yet"))`)]);
  add('Since', [
    shown(`IF(${hasLeft};${here('out')};IF(${isIn};${at('Since')};""))`, DAY),
    shown(asPlanned(at)),
  ]);
  add('Goes to', [
    shown(
      `IF(${hasNext};${there('paddock')};IF(${hasLeft};"";IF(${isIn};"off the pasture";"no move planned")))`,
    ),
  ]);
  add('On', [shown(`IF(${hasNext};${at('Next day')};IF(${hasLeft};"";${ends}))`, DAY)]);
  add('Days left', [
    shown(
      `IF(${hasNext};MAX(0;${at('Next day')}-TODAY());IF(${isIn};MAX(0;${here('out')}-TODAY());""))`,
      '0',
    ),
  ]);
  const boxRow = draft.next() + 1;
  const box = draft.fixed(boxRow, BOX_COLUMN - 1);
  const toDo = draft.add([formula(toDoFormula(at, box, hasLeft, untrained))], 'plain', `${group}: to do`);
  add('Moved', [{ k: 'b', v: false, box: true }, BLANK], 'input');
  add('Pigs', [shown(ifHere(at('Head now')), '0'), shown(ifHere(atEntry(table, at)))]);
  add('Weight each', [
    shown(ifHere(`IF(${at('Weight now')}="";"no figure";${at('Weight now')})`), '0'),
    unit('mass'),
  ]);
  const water = waterNow(table, at);
  add('Water today', [shown(ifHere(ifNumber(here('water'), water)), WHOLE), unit('volumePerDay')]);
  add('On a hot day', [
    shown(ifHere(ifNumber(here('water'), `${water}*${hotShare(table)}`)), WHOLE),
    text(`${symbolOf('volumePerDay', units)} at ${hotDay(units)} ${symbolOf('temperature', units)}`),
  ]);
  add('Feed a day', [
    shown(ifHere(ifNumber(here('feed'), feedNow(table, at))), WHOLE),
    text(`${symbolOf('mass', units)}, at this weight`),
  ]);
  add('Feed to carry', [
    shown(`IF(${hasNext};${ifNumber(there('feed'))};"")`, WHOLE),
    text(`${symbolOf('mass', units)}, next stay`),
  ]);
  add('Carry', [shown(`IF(${hasNext};"fence, shelter, trough, drinker";"")`)]);
  const says = draft.fixed(toDo, 0);
  colour(draft, toDo, `LEFT(${says};${LATE.length})="${LATE}"`, COLOURS.late);
  colour(draft, toDo, `AND(${at('Next day')}=TODAY();${says}<>"")`, COLOURS.today);
  return { name: draft.fixed(top, 0), box };
}

function asPlanned(at: WorkingAt): string {
  return `IF(AND(${at('At')}>0;${at('Recorded')}=0);"planned, not typed";"")`;
}

/** The row of the table keeps the head that came in: where some have gone or joined since, both are told. */
function atEntry(table: BoundTable, at: WorkingAt): string {
  const head = lookedUp(table, 'head', at('At'));
  return `IF(ISNUMBER(${head});IF(${head}=${at('Head now')};"";${head}&" when they came in");"")`;
}

/** What is due or overdue; the first of these that is true. */
function toDoFormula(at: WorkingAt, box: string, hasLeft: string, untrained: string): string {
  const late = `(TODAY()-${at('Next day')})`;
  const rules: readonly (readonly [when: string, says: string])[] = [
    [`${box}=TRUE`, `"${words.TICK_STAYS}"`],
    [hasLeft, `"${words.MOVES_OVER}"`],
    [`${at(TICK.next)}+${at('At')}=0`, `"${words.NO_MOVE}"`],
    // A group that is out by its typed days is told so beside its name; one that is not must not be sent.
    [`AND(${untrained};${at('Recorded')}=0)`, `"${words.KEEP_IN}"`],
    [`${at('Without a day')}>1`, `"${LATE}: "&${at('Without a day')}&" moves up to today have no day."`],
    [`${at(TICK.next)}=0`, `"${words.LAST_STAY}"`],
    [`${late}>1`, `"${LATE} by "&${late}&" days: move, or type the day."`],
    [`${late}=1`, `"${LATE} by a day: move, or type the day."`],
    [`${late}=0`, '"Move today."'],
    [`${late}=-1`, '"Move tomorrow."'],
  ];
  const body = rules.reduceRight((otherwise, [when, says]) => `IF(${when};${says};${otherwise})`, '""');
  return `=IFERROR(${body};"${LATE}? The days of this group cannot be worked out: see Check in the table.")`;
}

/** Colours a line beside words that say the same. */
function colour(draft: Draft, row: number, when: string, background: string): void {
  const place = { row: row - draft.origin.row, column: 0, rows: 1, columns: WIDTHS.length };
  draft.rules.push({ ...place, formula: `=${when}`, background });
}

/** Water of the table's move, for the weight that the pigs have grown to, or were weighed at, since. */
function waterNow(table: BoundTable, at: WorkingAt): string {
  const weight = lookedUp(table, 'weightIn', at('At'));
  const now = at('Weight now');
  const grown = `IF(ISNUMBER(${now});${appetite(table, now)}/${appetite(table, weight)};1)`;
  return `${lookedUp(table, 'water', at('At'))}*${grown}*${headShare(table, at)}`;
}

/**
 * Feed of today: a day of the table's stay, for the weight of today's end. Never less than FEED_NEEDED: of a curve that
 * bends down, the mean over a stay is more than the mean of its ends.
 */
function feedNow(table: BoundTable, at: WorkingAt): string {
  const here = (column: Parameters<typeof lookedUp>[1]): string => lookedUp(table, column, at('At'));
  const [from, to, days] = [here('weightIn'), here('weightOut'), here('stayDays')];
  const tonight = `${at('Weight now')}+(${to}-${from})/${days}`;
  const ends = `(${appetite(table, from)}+${appetite(table, to)})/2`;
  const grown = `IF(AND(ISNUMBER(${at('Weight now')});ISNUMBER(${to}));${appetite(table, `(${tonight})`)}/(${ends});1)`;
  return `${here('feed')}/${days}*${grown}*${headShare(table, at, 'meanHead')}`;
}

/** What a pig of that weight eats and drinks as a part of what a full-grown one does: the curve of energyIntake. */
function appetite({ units }: BoundTable, weight: string): string {
  const rise = ME_RISE_PER_KG / fromInside(1, 'mass', units);
  return `(1-EXP(-${Math.round(rise * 10 ** 12)}/10^12*${weight}))`;
}

/** Pigs of today for each that the move was counted with: the water by those that came in, the feed by the mean of the stay. */
function headShare(table: BoundTable, at: WorkingAt, counted: 'head' | 'meanHead' = 'head'): string {
  const head = lookedUp(table, counted, at('At'));
  return `IF(ISNUMBER(${head});IF(${head}>0;${at('Head now')}/${head};1);1)`;
}

/** How many times the water of the table's own warm day a hot day takes: the ratios of WATER_NEEDED. */
function hotShare({ units, labels, values }: BoundTable): string {
  const label = `${SETTING_LABELS.temperature} (${symbolOf('temperature', units)})`;
  const start = Math.round(fromInside(DEFAULT_TEMPERATURE_C, 'temperature', units));
  const typed = `IFERROR(INDEX(${values};MATCH("${label}";${labels};0));${start})`;
  const celsius = units === 'US' ? `(${typed}-32)*5/9` : typed;
  const span = HOT_FROM_CELSIUS - COOL_UP_TO_CELSIUS;
  const warmth = `MIN(1;MAX(0;(${celsius}-${COOL_UP_TO_CELSIUS})/${span}))`;
  const tenths = (liters: number): number => Math.round(liters * 10);
  const more = tenths(HOT_LITERS_PER_KG) - tenths(COOL_LITERS_PER_KG);
  return `${tenths(HOT_LITERS_PER_KG)}/(${tenths(COOL_LITERS_PER_KG)}+${more}*${warmth})`;
}
