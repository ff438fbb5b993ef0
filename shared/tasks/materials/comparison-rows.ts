/** Portable electric fence beside woven wire and rigid panels, from the grower's own prices and hours. */
import { BLANK, formula, number, text } from '../../block/cells';
import type { BlockCell, BlockStyle } from '../../contract';
import { fromInside, symbolOf, type UnitSystem } from '../../units/units';
import type { Draft } from '../draft-block';
import { roundUp } from '../formula-parts';
import { addSettings, type SettingSpec, type SettingValues } from '../settings';
import type { ItemRows } from './item-rows';

export type ComparisonKey = 'pay' | 'interest' | 'wovenPosts' | 'panelLength';

export const COMPARISON_SETTINGS: readonly SettingSpec<ComparisonKey>[] = [
  {
    key: 'pay',
    label: 'Pay for an hour of work',
    unit: 'an hour',
    start: 0,
    min: 0,
    note: 'Your own figure, also for your own hours.',
  },
  {
    key: 'interest',
    label: 'Interest a year, on half the first cost',
    unit: '%',
    start: 8,
    min: 0,
    max: 100,
    note: 'Worked back from Iowa State’s printed table.',
  },
  {
    key: 'wovenPosts',
    label: 'Gap between posts of woven wire',
    quantity: 'length',
    start: { US: 12, metric: 3.6 },
    above: 0,
    note: '12 ft (Iowa State, published).',
  },
  {
    key: 'panelLength',
    label: 'Length of a rigid panel',
    quantity: 'length',
    start: { US: 16, metric: 4.8 },
    above: 0,
    note: 'See the panel.',
  },
];

export const FIXED_HEADINGS = [
  'Fence',
  'Fixed fence item',
  'Quantity',
  'Quantity unit',
  'Price each',
  'Fixed cost',
] as const;
export const KINDS = ['Portable electric', 'Woven wire', 'Rigid panels'] as const;
export const COMPARISON_HEADINGS = ['Comparison', ...KINDS] as const;

/** Staples and hours of Iowa State's example for a quarter mile of woven wire (second hand). */
const EXAMPLE_METERS = 1320 * 0.3048;
const EXAMPLE_STAPLES_LB = 10;
const EXAMPLE_HOURS = 42;
/** Minutes a metre for panels: "less than 5" (Lavelle and others 2011, published). */
const PANEL_MINUTES_PER_METER = 5;

/** Typed cells of the comparison, found again by their labels. */
export interface TypedComparison {
  /** By kind and item: a quantity typed over the formula, and the price. */
  readonly fixed: ReadonlyMap<string, { readonly quantity?: BlockCell; readonly price: BlockCell }>;
  /** By label: the typed cells under the three kinds. */
  readonly yearly: ReadonlyMap<string, readonly BlockCell[]>;
}

interface ComparisonOn {
  readonly draft: Draft;
  readonly units: UnitSystem;
  readonly lengths: { readonly portable: string; readonly fixed: string; readonly corners: string };
  readonly items: ItemRows;
  readonly typed: TypedComparison;
}

export function addComparison(on: ComparisonOn, values: SettingValues<ComparisonKey>): void {
  const { draft, units } = on;
  draft.add([text('Compared with fixed fence')], 'heading');
  const set = addSettings(draft, COMPARISON_SETTINGS, values, units);
  draft.add(FIXED_HEADINGS.map(text), 'heading');
  const woven = addFixed('Woven wire', wovenItems(on, set), on, set.pay);
  const panels = addFixed('Rigid panels', panelItems(on, set), on, set.pay);
  addYearly(on, set, [woven, panels]);
}

interface FixedItem {
  readonly item: string;
  readonly quantity: string;
  readonly unit: string;
  readonly note: string;
}

function wovenItems(
  { lengths, units }: ComparisonOn,
  set: Readonly<Record<ComparisonKey, string>>,
): FixedItem[] {
  const posts = roundUp(`${lengths.fixed}/${set.wovenPosts}`);
  const example = Math.round(fromInside(EXAMPLE_METERS, 'length', units));
  const unit = symbolOf('length', units);
  const staples = units === 'US' ? `${EXAMPLE_STAPLES_LB}` : `${EXAMPLE_STAPLES_LB}*453592/10^6`;
  return [
    {
      item: 'Corner and brace posts',
      quantity: `3*${lengths.corners}`,
      unit: 'posts',
      note: 'A corner post and two braces each: judgement.',
    },
    { item: 'Line posts, wood', quantity: `ROUNDUP(${posts}/2;0)`, unit: 'posts', note: 'Every other post.' },
    {
      item: 'Line posts, steel',
      quantity: `ROUNDDOWN(${posts}/2;0)`,
      unit: 'posts',
      note: 'Every other post.',
    },
    {
      item: 'Staples and clips',
      quantity: `${lengths.fixed}*${staples}/${example}`,
      unit: symbolOf('mass', units),
      note: '10 lb for 1,320 ft (Iowa State, second hand).',
    },
    { item: 'Barbed wire, one strand', quantity: lengths.fixed, unit, note: 'Never under voltage.' },
    { item: 'Woven wire', quantity: lengths.fixed, unit, note: '' },
    {
      item: 'Hours to build',
      quantity: `${lengths.fixed}*${EXAMPLE_HOURS}/${example}`,
      unit: 'hours',
      note: '42 h for 1,320 ft (Iowa State, second hand).',
    },
  ];
}

function panelItems(
  { lengths, units }: ComparisonOn,
  set: Readonly<Record<ComparisonKey, string>>,
): FixedItem[] {
  const panels = roundUp(`${lengths.fixed}/${set.panelLength}`);
  const meters = units === 'US' ? `${lengths.fixed}*3048/10000` : lengths.fixed;
  return [
    { item: 'Panels', quantity: panels, unit: 'panels', note: '' },
    {
      item: 'Posts',
      quantity: `2*${panels}`,
      unit: 'posts',
      note: 'One at each joint and one between: judgement.',
    },
    {
      item: 'Clips',
      quantity: `6*${panels}`,
      unit: 'each',
      note: 'Three a post: common practice, no source.',
    },
    {
      item: 'Hours to build',
      quantity: `${meters}*${PANEL_MINUTES_PER_METER}/60`,
      unit: 'hours',
      note: 'Less than 5 minutes a metre (Lavelle and others 2011, published).',
    },
  ];
}

interface FixedSums {
  readonly materials: string;
  readonly labour: string;
  readonly unpriced: string;
}

const FIXED_STYLES: readonly BlockStyle[] = ['muted', 'plain', 'input', 'muted', 'input', 'plain', 'muted'];

function addFixed(kind: string, items: readonly FixedItem[], on: ComparisonOn, pay: string): FixedSums {
  const { draft } = on;
  const first = draft.next();
  for (const { item, quantity, unit, note } of items) {
    const row = draft.next();
    const typed = on.typed.fixed.get(`${kind}|${item}`);
    const price = item === 'Hours to build' ? formula(`=${pay}`, '0.00') : (typed?.price ?? BLANK);
    draft.add(
      [
        text(kind),
        text(item),
        typed?.quantity ?? formula(`=${quantity}`, COUNTED.includes(unit) ? '#,##0' : '#,##0.0'),
        text(unit),
        price,
        formula(`=IF(${draft.at(row, 4)}="";"";${draft.at(row, 2)}*${draft.at(row, 4)})`, '0.00'),
        text(note),
      ],
      FIXED_STYLES,
    );
  }
  const labourRow = draft.next() - 1;
  const down = (column: number): string => draft.down(first, labourRow - 1, column);
  return {
    materials: `SUM(${down(5)})`,
    labour: draft.fixed(labourRow, 5),
    unpriced: `SUMPRODUCT((${down(2)}>0)*(${down(4)}=""))`,
  };
}

/** Units of things that are counted whole. */
const COUNTED = ['posts', 'panels', 'each'];

/** Typed rows of the yearly table, with what they start from. */
const YEARLY_INPUTS = {
  hours: {
    label: 'Hours to set it up the first time',
    start: [0, undefined, undefined],
    note: 'Fixed fence: from the table above. Type 0 as the price of what costs you nothing.',
  },
  life: {
    label: 'Life, years',
    start: [8, 20, 20],
    note: 'Woven wire 20 (Iowa State, published); the others are judgement.',
  },
  upkeep: {
    label: 'Upkeep a year, % of first cost',
    start: [5, 8, 5],
    note: 'Woven wire 8, high-tensile electric 5 (Iowa State, published); panels are judgement.',
  },
  work: { label: 'Hours a year to move, check and mend', start: [0, 0, 0], note: 'Your own figure.' },
} as const;
export const YEARLY_INPUT_LABELS: readonly string[] = Object.values(YEARLY_INPUTS).map(({ label }) => label);

function addYearly(
  on: ComparisonOn,
  set: Readonly<Record<ComparisonKey, string>>,
  fixed: readonly FixedSums[],
): void {
  const { draft, units, lengths, items } = on;
  draft.add(COMPARISON_HEADINGS.map(text), 'heading');
  /** One row; `body` gives the formula body under each kind. */
  const row = (
    label: string,
    body: (at: number) => string,
    format = '0.00',
    style: BlockStyle = 'plain',
  ): number => {
    const cells = KINDS.map((_, at) => formula(`=${body(at)}`, format));
    return draft.add([text(label), ...cells], style);
  };
  const typed = (input: (typeof YEARLY_INPUTS)[keyof typeof YEARLY_INPUTS]): number => {
    const kept = on.typed.yearly.get(input.label);
    const cells = input.start.map((start, at) => kept?.[at] ?? (start === undefined ? BLANK : number(start)));
    const styles = input.start.map((start): BlockStyle => (start === undefined ? 'plain' : 'input'));
    return draft.add([text(input.label), ...cells, text(input.note)], ['plain', ...styles, 'muted']);
  };
  const cell = (at: number, line: number): string => draft.at(line, at + 1);
  const length = row('Length of fence', (at) => (at === 0 ? lengths.portable : lengths.fixed), '0');
  const unpriced = (at: number): string => (at === 0 ? items.unpriced : (fixed[at - 1]?.unpriced ?? '0'));
  const missing = row('Items without a price', unpriced, '0', 'muted');
  const materials = row('Materials', (at) => (at === 0 ? items.newCost : (fixed[at - 1]?.materials ?? '0')));
  const hours = typed(YEARLY_INPUTS.hours);
  const labour = row('Work to set it up', (at) =>
    at === 0 ? `${cell(0, hours)}*${set.pay}` : (fixed[at - 1]?.labour ?? '0'),
  );
  const first = row(
    'First cost',
    (at) => `IF(${cell(at, missing)}>0;"prices missing";${cell(at, materials)}+${cell(at, labour)})`,
  );
  /** A figure that hangs on the first cost stays blank until that is known. */
  const known = (at: number, body: string): string => `IF(ISNUMBER(${cell(at, first)});${body};"")`;
  const unit = symbolOf('length', units);
  const perLength = (line: number) => (at: number) =>
    known(at, `IF(${cell(at, length)}>0;${cell(at, line)}/${cell(at, length)};0)`);
  row(`First cost for each ${unit}`, perLength(first));
  const life = typed(YEARLY_INPUTS.life);
  const share = typed(YEARLY_INPUTS.upkeep);
  const work = typed(YEARLY_INPUTS.work);
  const loss = row('Loss of value a year', (at) => known(at, `${cell(at, first)}/${cell(at, life)}`));
  const interest = row('Interest a year', (at) => known(at, `${cell(at, first)}/2*${set.interest}/100`));
  const upkeep = row('Upkeep a year', (at) => known(at, `${cell(at, first)}*${cell(at, share)}/100`));
  const workCost = row('Work a year', (at) => `${cell(at, work)}*${set.pay}`);
  const year = row(
    'A year, together',
    (at) => known(at, plusCells(at, [loss, interest, upkeep, workCost], cell)),
    '0.00',
    'heading',
  );
  row(`A year, for each ${unit}`, perLength(year));
}

function plusCells(at: number, lines: readonly number[], cell: (at: number, line: number) => string): string {
  return lines.map((line) => cell(at, line)).join('+');
}
