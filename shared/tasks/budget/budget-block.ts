/** The budget as a block of cells: season, months, paddocks, settings, and every stay they are added up from. */

import { BLANK, formula, text } from '../../block/cells';
import { composeBlock } from '../../block/compose-block';
import type { ComposedBlock } from '../../block/composed-block';
import { dateCall } from '../../block/date-call';
import { DAY_FORMAT } from '../../block/day-format';
import { TITLES } from '../../block/own-words';
import type { BlockCell } from '../../contract';
import { memoryRow } from '../../lists/list-memory';
import { type Quantity, symbolOf, type UnitSystem } from '../../units/units';
import { type Draft, draftBlock, type Origin } from '../draft-block';
import { addLookOut, lookOutRows } from '../look-out';
import { addSettings, addUnits } from '../settings';
import type { BudgetStay } from './budget-model';
import { BUDGET_SETTINGS, type BudgetKey, type BudgetSettings } from './budget-settings';
import { byPeriod } from './by-period';
import type { StayColumns, StaySource } from './stay-columns';
import { addStays } from './stay-rows';
import * as words from './words';

export const BUDGET_BLOCK = 'SOUNDER_BUDGET';

export interface BudgetPlan {
  readonly stays: readonly BudgetStay[];
  readonly units: UnitSystem;
  /** In cell units. */
  readonly settings: BudgetSettings;
  readonly source: StaySource;
  /** One sentence on where the stays come from. */
  readonly origin: string;
  /** Sentences on stays that could not be worked out and are not among `stays`. */
  readonly leftOut: readonly string[];
}

export const SEASON_TITLE = 'The season';
export const MONTHS_TITLE = 'Month by month';
export const MONTH_HEADINGS = ['From', 'To before', 'Feed in it', 'Water in it'] as const;
export const LOAD_HEADINGS = [
  'Paddock',
  'Area of it',
  'Stays',
  'Days in all',
  'N',
  'P',
  'K',
  'Says',
  'Typed note',
] as const;

/** Beside words that say the same. */
const LOOK_OUT_COLOUR = '#fde3c8';
const WIDTHS = [310, 110, 100, 100, 100, 100, 100, 130, 130];

/** Notes that the grower typed beside paddocks, by paddock. */
export type LoadNotes = ReadonlyMap<string, BlockCell>;

export function budgetBlock(plan: BudgetPlan, notes: LoadNotes, origin: Origin): ComposedBlock {
  const { units, stays } = plan;
  const months = byPeriod(stays, () => 0, 'month');
  const paddocks = [...new Map(stays.map((stay) => [stay.paddock, stay])).values()];
  const top = draftBlock(origin);
  top.add([text(TITLES.budget)], 'title');
  top.add([text(plan.origin)], 'muted');
  // The whole of it stands below too, in lines that a phone shows.
  top.add([text(plan.leftOut[0] ?? words.HEAD_CAUTION)], 'warning');
  const cautions = [...plan.leftOut, ...words.BUDGET_CAUTIONS];
  const heights = {
    season: 11 + lookOutRows(cautions),
    months: months.length + 4,
    paddocks: paddocks.length + 3,
  };
  const below = draftBlock({
    row: top.next() + heights.season + heights.months + heights.paddocks,
    column: origin.column,
  });
  below.add([text('Settings')], 'heading');
  addUnits(below, units);
  const set = addSettings(below, BUDGET_SETTINGS, plan.settings, units);
  for (const list of [plan.source.paddocks?.list, plan.source.groups?.list])
    if (list) below.add(memoryRow(list), ['plain', 'muted', 'muted']);
  below.add();
  const columns = addStays(stays, { draft: below, units, source: plan.source, set });
  addSeason(top, columns, units, set);
  addLookOut(top, cautions);
  addMonths(top, columns, months, units);
  addLoads(top, columns, { paddocks, notes, set, units });
  const { cells, styles, ids } = composeBlock([...top.rows, ...below.rows]);
  return { cells, styles, ids, rules: top.rules, widths: cells[0]?.map((_, c) => WIDTHS[c] ?? 100) ?? [] };
}

function addSeason(
  draft: Draft,
  columns: StayColumns,
  units: UnitSystem,
  set: Readonly<Record<BudgetKey, string>>,
): void {
  draft.add([text(SEASON_TITLE)], 'heading');
  const row = (label: string, body: string, quantity: Quantity, note: string, format = '#,##0'): number =>
    draft.add(
      [text(label), formula(`=${body}`, format), text(symbolOf(quantity, units)), text(note)],
      ['plain', 'plain', 'muted', 'muted'],
    );
  row('Feed together', `SUM(${columns.Feed})`, 'mass', words.WASTE_NOTE);
  row('Water, most a day, all groups', `MAX(${columns['Water of all']})`, 'volumePerDay', words.ORDINARY_DAY);
  row(
    'Hot-day water, most a day, all groups',
    `MAX(${columns['Hot day of all']})`,
    'volumePerDay',
    words.HOT_DAY,
  );
  row('Shelter, largest group floor', `MAX(${columns['Shelter floor']})`, 'floorArea', words.FLOOR_NOTE);
  addMoney(draft, columns, units, set);
  const failed = draft.add(
    [
      text('Stays that could not be worked out'),
      // By the groups, not by what stands in the columns: where a typed value stops a function, they are blank.
      formula(`=2*SUMPRODUCT((${columns.Group}<>"")*1)-COUNT(${columns.Feed})-COUNT(${columns.N})`, '0'),
      text('cells'),
      text(words.CELLS_SAY_WHY),
    ],
    ['plain', 'plain', 'muted', 'muted'],
  );
  draft.rules.push({
    row: failed - draft.origin.row,
    column: 0,
    rows: 1,
    columns: 2,
    formula: `=${draft.fixed(failed, 1)}>0`,
    background: LOOK_OUT_COLOUR,
  });
  draft.add();
}

/** Blank until a price is typed. A pig: the whole cost ÷ the pigs of all groups, each with its most head. */
function addMoney(
  draft: Draft,
  columns: StayColumns,
  units: UnitSystem,
  set: Readonly<Record<BudgetKey, string>>,
): void {
  const row = (label: string, price: string, body: string, note: BlockCell): void => {
    draft.add(
      [text(label), formula(`=IF(${price}="";"";IFERROR(${body};""))`, '#,##0.00'), text('money'), note],
      ['plain', 'plain', 'muted', 'muted'],
    );
  };
  const feed = `SUM(${columns.Feed})*${set.feedPrice}/${set.feedPriced}`;
  const pigs = `SUM(${columns['Pigs counted']})`;
  const ofPigs = formula(`="a pig, of "&ROUND(${pigs};0)`);
  row('Feed, cost of the season', set.feedPrice, feed, text(words.PRICE_NOTE));
  row('Feed, cost a pig', set.feedPrice, `${feed}/${pigs}`, ofPigs);
  const unit = symbolOf('mass', units);
  row(
    `Feed, cost for each ${unit} gained`,
    set.feedPrice,
    `${feed}/SUM(${columns['Gain counted']})`,
    text('Feed only.'),
  );
  row('Fence, cost a pig', set.fenceCost, `${set.fenceCost}/${pigs}`, ofPigs);
}

type Month = { readonly start: number };

/**
 * An amount in a month: spread evenly over the days of its stay, times the days that fall into the month. Days that
 * [in, out) and [start, end) have in common: (|in − end| + |out − start| − |in − start| − |out − end|) ÷ 2.
 */
function inMonth(perDay: string, columns: StayColumns, start: string, end: string): string {
  const { 'Counted in': from, 'Counted out': to } = columns;
  const days = `(ABS(${from}-${end})+ABS(${to}-${start})-ABS(${from}-${start})-ABS(${to}-${end}))`;
  return `=SUMPRODUCT(${perDay}*${days})/2`;
}

function addMonths(draft: Draft, columns: StayColumns, months: readonly Month[], units: UnitSystem): void {
  draft.add([text(MONTHS_TITLE)], 'heading');
  draft.add(
    [BLANK, BLANK, text(symbolOf('mass', units)), text(symbolOf('volumePerDay', units).split('/')[0] ?? '')],
    'muted',
  );
  draft.add(MONTH_HEADINGS.map(text), 'heading');
  months.forEach((month, at) => {
    const row = draft.next();
    const [start, end] = [draft.fixed(row, 0), draft.fixed(row, 1)];
    draft.add([
      formula(at === 0 ? `=${dateCall(month.start)}` : `=${draft.at(row - 1, 1)}`, DAY_FORMAT),
      formula(`=EDATE(${start};1)`, DAY_FORMAT),
      formula(inMonth(columns['Feed a day'], columns, start, end), '#,##0'),
      formula(inMonth(columns['Water counted'], columns, start, end), '#,##0'),
    ]);
  });
  draft.add();
}

interface Loads {
  readonly paddocks: readonly BudgetStay[];
  readonly notes: LoadNotes;
  readonly set: Readonly<Record<BudgetKey, string>>;
  readonly units: UnitSystem;
}

function addLoads(draft: Draft, columns: StayColumns, { paddocks, notes, set, units }: Loads): void {
  const unit = text(symbolOf('massPerArea', units));
  draft.add(
    [text('On the ground'), text(symbolOf('area', units)), BLANK, BLANK, unit, unit, unit],
    'heading',
  );
  draft.add(LOAD_HEADINGS.map(text), 'heading');
  const first = draft.next();
  for (const stay of paddocks) {
    const row = draft.next();
    const name = draft.at(row, 0);
    // As an array of its own, what is no number in a column counts as 0.
    const sum = (column: string): string => `=SUMPRODUCT((${columns['Stay in']}=${name})*1;${column})`;
    draft.add(
      [
        text(stay.paddock),
        formula(`=SUMPRODUCT(MAX((${columns['Stay in']}=${name})*${columns['Area counted']}))`, '0.00'),
        formula(`=SUMPRODUCT((${columns['Stay in']}=${name})*1)`, '0'),
        formula(sum(columns.Days), '0'),
        formula(sum(columns.N), '0.0'),
        formula(sum(columns.P), '0.0'),
        formula(sum(columns.K), '0.0'),
        formula(loadSays(draft, row, set)),
        notes.get(stay.paddock) ?? BLANK,
      ],
      ['plain', 'plain', 'plain', 'plain', 'plain', 'plain', 'plain', 'plain', 'input'],
    );
  }
  const says = draft.at(first, 7);
  if (paddocks.length > 0) {
    draft.rules.push({
      row: first - draft.origin.row,
      column: 7,
      rows: paddocks.length,
      columns: 1,
      formula: `=LEFT(${says};4)="over"`,
      background: LOOK_OUT_COLOUR,
    });
  }
  draft.add();
}

function loadSays(draft: Draft, row: number, set: Readonly<Record<BudgetKey, string>>): string {
  const over = (column: number, limit: string, letter: string): string =>
    `IF(${limit}="";"";IF(${draft.at(row, column)}>${limit};" ${letter}";""))`;
  const letters = [over(4, set.limitN, 'N'), over(5, set.limitP, 'P'), over(6, set.limitK, 'K')].join('&');
  const none = [set.limitN, set.limitP, set.limitK].map((limit) => `${limit}=""`).join(';');
  return `=IF(AND(${none});"no limit typed";IF(${letters}="";"within";"over:"&${letters}))`;
}
