/** The stays' part of the budget block: one row a stay, fed by the rotation table or the grower's lists. */
import { quotedTab } from '../../block/a1';
import { BLANK, blank, date, formula, number, text } from '../../block/cells';
import type { BlockCell, BlockStyle } from '../../contract';
import type { GroupList, PaddockList } from '../../lists/model';
import { listLookup } from '../../table/list-lookup';
import type { ListSource } from '../../table/model';
import { fromInside, type Quantity, symbolOf, type UnitSystem } from '../../units/units';
import type { Draft } from '../draft-block';
import type { BudgetStay } from './budget-model';
import type { BudgetKey } from './budget-settings';

/** Where the stays come from: cells of the rotation table, or the grower's lists. */
export interface StaySource {
  /** Column letters of the rotation table by what they hold, and its tab. */
  readonly rotation?: {
    readonly tab: string;
    readonly columns: Readonly<Partial<Record<LinkedColumn, string>>>;
  };
  readonly paddocks?: ListSource<PaddockList>;
  readonly groups?: ListSource<GroupList>;
}
export type LinkedColumn =
  | 'group'
  | 'paddock'
  | 'inDay'
  | 'days'
  | 'head'
  | 'startWeight'
  | 'growthDays'
  | 'dailyGain'
  | 'area';

export const STAY_HEADINGS = [
  'Group',
  'Stay in',
  'In',
  'Days',
  'Out',
  'Head',
  'Weighed',
  'Since weighed',
  'Daily gain',
  'Area',
  'Weight in',
  'Weight out',
  'Mean weight',
  'Feed',
  'Water a day',
  'Hot day',
  'Shelter floor',
  'N',
  'P',
  'K',
] as const;
type StayHeading = (typeof STAY_HEADINGS)[number];
const AT = Object.fromEntries(STAY_HEADINGS.map((heading, at) => [heading, at])) as Record<
  StayHeading,
  number
>;

const UNITS: Partial<Record<StayHeading, Quantity>> = {
  Weighed: 'mass',
  'Daily gain': 'massPerDay',
  Area: 'area',
  'Weight in': 'mass',
  'Weight out': 'mass',
  'Mean weight': 'mass',
  Feed: 'mass',
  'Water a day': 'volumePerDay',
  'Hot day': 'volumePerDay',
  'Shelter floor': 'floorArea',
  N: 'massPerArea',
  P: 'massPerArea',
  K: 'massPerArea',
};

/** Ranges of the finished columns, for sums over them. */
export type StayColumns = Readonly<Record<StayHeading, string>>;

interface StaysOn {
  readonly draft: Draft;
  readonly units: UnitSystem;
  readonly source: StaySource;
  readonly set: Readonly<Record<BudgetKey, string>>;
}

/**
 * Cell functions stand once a column, in the blank row above the first stay, where their own answer is a blank, and
 * spill over the stays: sorting the stays does not tear them off.
 */
export function addStays(stays: readonly BudgetStay[], on: StaysOn): StayColumns {
  const { draft, units } = on;
  draft.add([text('Stay by stay')], 'heading');
  draft.add(
    STAY_HEADINGS.map((heading) => text(unitOf(heading, units))),
    'muted',
  );
  draft.add(STAY_HEADINGS.map(text), 'heading');
  const anchor = draft.next();
  const last = anchor + stays.length;
  const functions = functionBodies((heading) => draft.down(anchor, last, AT[heading]), on);
  draft.add(STAY_HEADINGS.map((heading) => functions[heading] ?? BLANK));
  for (const stay of stays) addStay(stay, on);
  return Object.fromEntries(
    STAY_HEADINGS.map((heading) => [heading, draft.down(anchor + 1, last, AT[heading])]),
  ) as Record<StayHeading, string>;
}

function unitOf(heading: StayHeading, units: UnitSystem): string {
  const quantity = UNITS[heading];
  return quantity ? symbolOf(quantity, units) : '';
}

function functionBodies(
  column: (heading: StayHeading) => string,
  { units, set }: StaysOn,
): Partial<Record<StayHeading, BlockCell>> {
  const system = `"${units}"`;
  const [head, gain, days] = [column('Head'), column('Daily gain'), column('Days')];
  const [first, out, mean] = [column('Weight in'), column('Weight out'), column('Mean weight')];
  const started = column('Weighed');
  const since = column('Since weighed');
  return {
    'Weight in': formula(`=PIG_WEIGHT(${started};${since};${gain};${system})`, FORMATS['Weight in']),
    'Weight out': formula(`=PIG_WEIGHT(${first};${days};${gain};${system})`, FORMATS['Weight out']),
    Feed: formula(`=FEED_NEEDED(${head};${first};${days};${gain};${set.outdoor};${system})`, FORMATS.Feed),
    'Water a day': formula(`=WATER_NEEDED(${head};${out};${set.mild};${system})`, FORMATS['Water a day']),
    'Hot day': formula(`=WATER_NEEDED(${head};${out};${set.hot};${system})`, FORMATS['Hot day']),
    'Shelter floor': formula(
      `=SHELTER_AREA(${head};${out};${set.shelter};${system})`,
      FORMATS['Shelter floor'],
    ),
    N: formula(`=NUTRIENT_LOAD(${head};${mean};${days};${column('Area')};${system})`, FORMATS.N),
  };
}

/** Formats of the columns that cell functions spill over. */
const FORMATS = {
  'Weight in': '0',
  'Weight out': '0',
  Feed: '#,##0',
  'Water a day': '#,##0',
  'Hot day': '#,##0',
  'Shelter floor': '#,##0.0',
  N: '0.0',
  P: '0.0',
  K: '0.0',
} as const;
const SPILLED = ['Feed', 'Water a day', 'Hot day', 'Shelter floor', 'N', 'P', 'K'] as const;

const STYLES: readonly BlockStyle[] = STAY_HEADINGS.map((heading) =>
  ['Weighed', 'Since weighed', 'Daily gain', 'Mean weight'].includes(heading) ? 'muted' : 'plain',
);

function addStay(stay: BudgetStay, on: StaysOn): void {
  const { draft } = on;
  const row = draft.next();
  const at = (heading: StayHeading): string => draft.at(row, AT[heading]);
  draft.add(
    [
      ...namesAndDates(stay, on),
      formula(`=${at('In')}+${at('Days')}`, 'yyyy-mm-dd'),
      ...amounts(stay, on, row),
      blank(FORMATS['Weight in']),
      blank(FORMATS['Weight out']),
      formula(`=IF(${at('Weight out')}="";"";(${at('Weight in')}+${at('Weight out')})/2)`, '0'),
      ...SPILLED.map((heading) => blank(FORMATS[heading])),
    ],
    STYLES,
  );
}

function link(stay: BudgetStay, { source }: StaysOn, column: LinkedColumn): string | undefined {
  const letters = source.rotation?.columns[column];
  if (!source.rotation || letters === undefined || stay.rotationRow === undefined) return undefined;
  return `${quotedTab(source.rotation.tab)}!${letters}${stay.rotationRow}`;
}

function namesAndDates(stay: BudgetStay, on: StaysOn): BlockCell[] {
  const linked = (column: LinkedColumn, plain: BlockCell, format?: string): BlockCell => {
    const reference = link(stay, on, column);
    return reference === undefined ? plain : formula(`=${reference}`, format);
  };
  return [
    linked('group', text(stay.group)),
    linked('paddock', text(stay.paddock)),
    linked('inDay', date(stay.inDay), 'yyyy-mm-dd'),
    linked('days', number(stay.days), '0'),
  ];
}

function amounts(stay: BudgetStay, on: StaysOn, row: number): BlockCell[] {
  const { draft, units, source } = on;
  const group = draft.at(row, AT.Group);
  const cell = (
    column: LinkedColumn,
    lookup: string | undefined,
    plain: BlockCell,
    format: string,
  ): BlockCell => {
    const body = link(stay, on, column) ?? lookup;
    return body === undefined ? plain : formula(`=${body}`, format);
  };
  const amount = (value: number | undefined, quantity: Quantity, format: string): BlockCell =>
    value === undefined ? BLANK : number(fromInside(value, quantity, units), format);
  const ofGroup = (field: 'head' | 'weight'): string | undefined =>
    listLookup(source.groups, field, stay.group, group, units, false);
  const weighedOn = listLookup(source.groups, 'weighedOn', stay.group, group, units, false);
  const since = weighedOn === undefined ? undefined : `${draft.at(row, AT.In)}-${weighedOn}`;
  const area = listLookup(source.paddocks, 'area', stay.paddock, draft.at(row, AT['Stay in']), units, false);
  return [
    cell('head', ofGroup('head'), number(stay.head, '0'), '0'),
    cell('startWeight', ofGroup('weight'), amount(stay.startWeightKg, 'mass', '0'), '0'),
    cell('growthDays', since, number(stay.growthDays, '0'), '0'),
    gainCell(stay, on, row),
    cell('area', area, amount(stay.areaSquareMeters, 'area', '0.00'), '0.00'),
  ];
}

/** A blank gain must stay blank: a plain link to an empty cell would show 0, which means "does not grow". */
function gainCell(stay: BudgetStay, on: StaysOn, row: number): BlockCell {
  const group = on.draft.at(row, AT.Group);
  const body =
    link(stay, on, 'dailyGain') ??
    listLookup(on.source.groups, 'dailyGain', stay.group, group, on.units, true);
  if (body !== undefined) return formula(`=IF(${body}="";"";${body})`, '0.00');
  const { dailyGainKg } = stay;
  return dailyGainKg === undefined ? BLANK : number(fromInside(dailyGainKg, 'massPerDay', on.units), '0.00');
}
