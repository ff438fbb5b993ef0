import { OUTDOOR_FACTOR } from '../../tables/nrc-intake';
import type { SettingSpec, SettingValues } from '../settings';

export type BudgetKey =
  | 'mild'
  | 'hot'
  | 'outdoor'
  | 'shelter'
  | 'feedPrice'
  | 'feedPriced'
  | 'fenceCost'
  | 'limitN'
  | 'limitP'
  | 'limitK';

const LIMIT_NOTE = 'Yours: local nutrient rules, soil test or advisor. Blank: not checked.';

export const BUDGET_SETTINGS: readonly SettingSpec<BudgetKey>[] = [
  {
    key: 'mild',
    label: 'Ordinary day',
    quantity: 'temperature',
    start: { US: 68, metric: 20 },
    min: -40,
    max: 50,
    note: 'Water to have there, a quarter for spill (judgement), by air temperature (Mount 1971, published).',
  },
  {
    key: 'hot',
    label: 'Hot day',
    quantity: 'temperature',
    start: { US: 90, metric: 32 },
    min: -40,
    max: 50,
    note: 'Finishers suffer from about 70 °F (21 °C) on (UF/IFAS, published).',
  },
  {
    key: 'outdoor',
    label: 'Outdoor factor',
    unit: 'times',
    start: OUTDOOR_FACTOR,
    above: 0,
    note: 'Outdoor pigs need about 15 % more energy in Northern Europe (Edwards 2003, published).',
  },
  {
    key: 'shelter',
    label: 'Floor for a pig to lie on',
    unit: 'm² per kg^0.67',
    start: 0.047,
    above: 0,
    note: 'Times weight in kg to the power 0.67. 0.047: every pig lies flat (Petherick and Baxter 1981, second hand).',
  },
  {
    key: 'feedPrice',
    label: 'Price of feed',
    unit: 'money',
    min: 0,
    optional: true,
    note: 'Yours, for the amount below: a bag, a ton, a pound. Blank: no cost.',
  },
  {
    key: 'feedPriced',
    label: 'That price is for',
    quantity: 'mass',
    start: { US: 2000, metric: 1000 },
    above: 0,
    note: 'A US ton is 2,000 lb; a bag says what it holds.',
  },
  {
    key: 'fenceCost',
    label: 'Fence, what it costs this season',
    unit: 'money',
    min: 0,
    optional: true,
    note: 'Yours; the list of fence materials ends with what to buy.',
  },
  {
    key: 'limitN',
    label: 'Most nitrogen (N) on a paddock in the season',
    quantity: 'massPerArea',
    above: 0,
    optional: true,
    note: LIMIT_NOTE,
  },
  {
    key: 'limitP',
    label: 'Most phosphorus (P) on a paddock in the season',
    quantity: 'massPerArea',
    above: 0,
    optional: true,
    note: `${LIMIT_NOTE} P2O5 = 2.29 × P.`,
  },
  {
    key: 'limitK',
    label: 'Most potassium (K) on a paddock in the season',
    quantity: 'massPerArea',
    above: 0,
    optional: true,
    note: `${LIMIT_NOTE} K2O = 1.205 × K.`,
  },
];

export type BudgetSettings = SettingValues<BudgetKey>;
