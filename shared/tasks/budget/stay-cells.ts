/** The cells of one stay: linked to the rotation table, looked up in the grower's lists, or plain values. */

import { quotedTab } from '../../block/a1';
import { answer, BLANK, date, formula, number, text } from '../../block/cells';
import { DAY_FORMAT } from '../../block/day-format';
import type { BlockCell, BlockStyle } from '../../contract';
import { ifFilled, listLookup } from '../../table/list-lookup';
import { fromInside, type Quantity } from '../../units/units';
import type { BudgetStay } from './budget-model';
import {
  AT,
  COUNTED_AT,
  COUNTED_HEADINGS,
  FORMATS,
  type LinkedColumn,
  SPILLED,
  STAY_HEADINGS,
  type StayHeading,
  type StaysOn,
} from './stay-columns';

const MUTED: readonly string[] = [
  'Mean head',
  'Weighed',
  'Since weighed',
  'Daily gain',
  'Mean weight',
  ...COUNTED_HEADINGS,
];
const STYLES: readonly BlockStyle[] = [...STAY_HEADINGS, ...COUNTED_HEADINGS].map((heading) =>
  MUTED.includes(heading) ? 'muted' : 'plain',
);

export function addStay(stay: BudgetStay, on: StaysOn, down: (column: number) => string): void {
  const { draft } = on;
  const row = draft.next();
  const at = (heading: StayHeading): string => draft.at(row, AT[heading]);
  draft.add(
    [
      ...namesAndDates(stay, on),
      formula(
        `=IF(AND(ISNUMBER(${at('In')});ISNUMBER(${at('Days')}));${at('In')}+${at('Days')};"")`,
        DAY_FORMAT,
      ),
      ...amounts(stay, on, row),
      answer(FORMATS['Weight in']),
      answer(FORMATS['Weight out']),
      formula(
        `=IF(AND(ISNUMBER(${at('Weight in')});ISNUMBER(${at('Weight out')}));(${at('Weight in')}+${at('Weight out')})/2;"")`,
        '0',
      ),
      ...SPILLED.map((heading) => answer(FORMATS[heading])),
      ...counted(at),
      pigsCounted(at('Group'), down),
      ...ofAll(draft.at(row, COUNTED_AT['Counted in']), down),
    ],
    STYLES,
    JSON.stringify([stay.group, stay.paddock, stay.inDay]),
  );
}

/** See COUNTED_HEADINGS; the feed as an amount a day. */
function counted(at: (heading: StayHeading) => string): BlockCell[] {
  const number = (cell: string, body = cell): string => `IF(ISNUMBER(${cell});${body};0)`;
  const fed = `IF(AND(ISNUMBER(${at('Days')});ISNUMBER(${at('Feed')}));IF(${at('Days')}>0;${at('Feed')}/${at('Days')};0);0)`;
  const numbers = (...headings: StayHeading[]): string =>
    headings.map((one) => `ISNUMBER(${at(one)})`).join(';');
  // By the most head; over the whole stay it is what the mean head drinks.
  const share = `IF(AND(${numbers('Head', 'Mean head')});IF(${at('Head')}>0;${at('Mean head')}/${at('Head')};1);1)`;
  const drunk = number(at('Water a day'), `${at('Water a day')}*${share}`);
  const gain = `IF(AND(${numbers('Mean head', 'Weight in', 'Weight out')});${at('Mean head')}*(${at('Weight out')}-${at('Weight in')});0)`;
  return [
    formula(`=${number(at('Out'), number(at('In')))}`, DAY_FORMAT),
    formula(`=${number(at('In'), number(at('Out')))}`, DAY_FORMAT),
    formula(`=${fed}`, '0.0'),
    formula(`=${drunk}`, '#,##0'),
    formula(`=${number(at('Area'))}`, '0.00'),
    formula(`=${number(at('Head'))}`, '0'),
    formula(`=${gain}`, '#,##0'),
  ];
}

/** By whole columns, so that stays can be sorted; names are compared as they are, where COUNTIF would read “>5”. */
function pigsCounted(group: string, down: (column: number) => string): BlockCell {
  const isOfGroup = `(${down(AT.Group)}=${group})`;
  const most = `SUMPRODUCT(MAX(${isOfGroup}*${down(COUNTED_AT['Head counted'])}))`;
  return formula(`=${most}/SUMPRODUCT(${isOfGroup}*1)`, '0.0');
}

/** On its first day, with the stays of the other groups that cover it. SUMIFS passes over what is no number. */
function ofAll(day: string, down: (column: number) => string): BlockCell[] {
  const [from, to] = [down(COUNTED_AT['Counted in']), down(COUNTED_AT['Counted out'])];
  return ([AT['Water a day'], AT['Hot day']] as const).map((column) =>
    formula(`=SUMIFS(${down(column)};${from};"<="&${day};${to};">"&${day})`, '#,##0'),
  );
}

function link(stay: BudgetStay, { source }: StaysOn, column: LinkedColumn): string | undefined {
  const letters = source.rotation?.columns[column];
  if (!source.rotation || letters === undefined || stay.rotationRow === undefined) return undefined;
  return `${quotedTab(source.rotation.tab)}!${letters}${stay.rotationRow}`;
}

/** Blank where the move was deleted from the table, or skipped: one lost row must not make every sum an error. */
function linkedCell(
  stay: BudgetStay,
  on: StaysOn,
  column: LinkedColumn,
  format?: string,
): BlockCell | undefined {
  const [reference, inDay] = [link(stay, on, column), link(stay, on, 'inDay')];
  if (reference === undefined) return undefined;
  return formula(`=IFERROR(IF(ISNUMBER(${inDay});${ifFilled(reference).slice(1)};"");"")`, format);
}

function namesAndDates(stay: BudgetStay, on: StaysOn): BlockCell[] {
  const linked = (column: LinkedColumn, plain: BlockCell, format?: string): BlockCell =>
    linkedCell(stay, on, column, format) ?? plain;
  return [
    linked('group', text(stay.group)),
    linked('paddock', text(stay.paddock)),
    linked('inDay', date(stay.inDay), DAY_FORMAT),
    linked('stayDays', number(stay.days), '0'),
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
    body?: string,
  ): BlockCell => {
    const linked = linkedCell(stay, on, column, format);
    if (linked) return linked;
    return lookup === undefined ? plain : formula(ifFilled(lookup, body), format);
  };
  const amount = (value: number | undefined, quantity: Quantity, format: string): BlockCell =>
    value === undefined ? BLANK : number(fromInside(value, quantity, units), format);
  const ofGroup = (field: 'head' | 'weight'): string | undefined =>
    listLookup(source.groups, field, stay.group, group, units, false);
  const weighedOn = listLookup(source.groups, 'weighedOn', stay.group, group, units, false);
  const since = `${draft.at(row, AT.In)}-${weighedOn}`;
  const area = listLookup(source.paddocks, 'area', stay.paddock, draft.at(row, AT['Stay in']), units, false);
  return [
    cell('mostHead', ofGroup('head'), number(stay.head, '0'), '0'),
    cell('meanHead', ofGroup('head'), number(stay.meanHead, '0.0'), '0.0'),
    cell('startWeight', ofGroup('weight'), amount(stay.startWeightKg, 'mass', '0'), '0'),
    cell('growthDays', weighedOn, number(stay.growthDays, '0'), '0', since),
    gainCell(stay, on, row),
    cell('area', area, amount(stay.areaSquareMeters, 'area', '0.00'), '0.00'),
  ];
}

function gainCell(stay: BudgetStay, on: StaysOn, row: number): BlockCell {
  const group = on.draft.at(row, AT.Group);
  const linked = linkedCell(stay, on, 'dailyGain', '0.00');
  if (linked) return linked;
  const lookup = listLookup(on.source.groups, 'dailyGain', stay.group, group, on.units, true);
  if (lookup !== undefined) return formula(ifFilled(lookup), '0.00');
  const { dailyGainKg } = stay;
  return dailyGainKg === undefined ? BLANK : number(fromInside(dailyGainKg, 'massPerDay', on.units), '0.00');
}
