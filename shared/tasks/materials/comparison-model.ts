/** Settings, headings and typed cells of the comparison with fixed fence. */
import type { BlockCell } from '../../contract';
import type { SettingSpec } from '../settings';
import * as words from './words';

export type ComparisonKey = 'pay' | 'interest' | 'wovenPosts' | 'panelLength';

export const COMPARISON_SETTINGS: readonly SettingSpec<ComparisonKey>[] = [
  {
    key: 'pay',
    label: 'Pay for an hour of work',
    unit: 'an hour',
    start: 0,
    min: 0,
    note: words.PAY_NOTE,
  },
  {
    key: 'interest',
    label: 'Interest a year, on half the first cost',
    unit: '%',
    start: 8,
    min: 0,
    max: 100,
    note: words.INTEREST_NOTE,
  },
  {
    key: 'wovenPosts',
    label: 'Gap between posts of woven wire',
    quantity: 'length',
    start: { US: 12, metric: 3.6 },
    above: 0,
    note: words.WOVEN_GAP_NOTE,
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

/** Typed cells of the comparison, found again by their labels. */
export interface TypedComparison {
  /** By kind and item: a quantity typed over the formula, and the price. */
  readonly fixed: ReadonlyMap<string, { readonly quantity?: BlockCell; readonly price: BlockCell }>;
  /** By label: the typed cells under the three kinds. */
  readonly yearly: ReadonlyMap<string, readonly BlockCell[]>;
}

/** Typed rows of the yearly table, with what they start from. */
export const YEARLY_INPUTS = {
  hours: {
    label: 'Hours to set it up the first time',
    start: [0, undefined, undefined],
    note: words.HOURS_NOTE,
  },
  life: {
    label: 'Life, years',
    start: [8, 20, 20],
    note: words.LIFE_NOTE,
  },
  upkeep: {
    label: 'Upkeep a year, % of first cost',
    start: [5, 8, 5],
    note: words.UPKEEP_NOTE,
  },
  work: { label: 'Hours a year to move, check and mend', start: [0, 0, 0], note: 'Your own figure.' },
} as const;
export const YEARLY_INPUT_LABELS: readonly string[] = Object.values(YEARLY_INPUTS).map(({ label }) => label);
