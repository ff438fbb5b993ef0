/** The cells of one stay: linked to the rotation table, looked up in the grower's lists, or plain values. */
import { quotedTab } from '../../block/a1';
import { answer, BLANK, date, formula, number, text } from '../../block/cells';
import type { BlockCell, BlockStyle } from '../../contract';
import { listLookup } from '../../table/list-lookup';
import { fromInside, type Quantity } from '../../units/units';
import type { BudgetStay } from './budget-model';
import {
  AT,
  FORMATS,
  type LinkedColumn,
  SPILLED,
  STAY_HEADINGS,
  type StayHeading,
  type StaysOn,
} from './stay-columns';

const STYLES: readonly BlockStyle[] = STAY_HEADINGS.map((heading) =>
  ['Weighed', 'Since weighed', 'Daily gain', 'Mean weight'].includes(heading) ? 'muted' : 'plain',
);

export function addStay(stay: BudgetStay, on: StaysOn): void {
  const { draft } = on;
  const row = draft.next();
  const at = (heading: StayHeading): string => draft.at(row, AT[heading]);
  draft.add(
    [
      ...namesAndDates(stay, on),
      formula(`=${at('In')}+${at('Days')}`, 'yyyy-mm-dd'),
      ...amounts(stay, on, row),
      answer(FORMATS['Weight in']),
      answer(FORMATS['Weight out']),
      formula(`=IF(${at('Weight out')}="";"";(${at('Weight in')}+${at('Weight out')})/2)`, '0'),
      ...SPILLED.map((heading) => answer(FORMATS[heading])),
    ],
    STYLES,
    JSON.stringify([stay.group, stay.paddock, stay.inDay]),
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
