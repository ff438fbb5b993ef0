import { OUTDOOR_FACTOR } from '../../tables/nrc-intake';
import { hotDay } from '../hot-day';
import type { SettingSpec, SettingValues } from '../settings';
import * as words from './words';

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

export const BUDGET_SETTINGS: readonly SettingSpec<BudgetKey>[] = [
  {
    key: 'mild',
    label: 'Ordinary day',
    quantity: 'temperature',
    start: { US: 68, metric: 20 },
    min: -40,
    max: 50,
    note: words.WARM_NOTE,
  },
  {
    key: 'hot',
    label: 'Hot day',
    quantity: 'temperature',
    start: { US: hotDay('US'), metric: hotDay('metric') },
    min: -40,
    max: 50,
    note: words.HOT_NOTE,
  },
  {
    key: 'outdoor',
    label: 'Outdoor factor',
    unit: 'times',
    start: OUTDOOR_FACTOR,
    above: 0,
    note: words.OUTDOORS_NOTE,
  },
  {
    key: 'shelter',
    label: 'Floor for a pig to lie on',
    unit: 'm² per kg^0.67',
    start: 0.047,
    above: 0,
    note: words.LYING_NOTE,
  },
  {
    key: 'feedPrice',
    label: 'Price of feed',
    unit: 'money',
    min: 0,
    optional: true,
    note: words.FEED_PRICE_NOTE,
  },
  {
    key: 'feedPriced',
    label: 'That price is for',
    quantity: 'mass',
    start: { US: 2000, metric: 1000 },
    above: 0,
    note: words.PRICE_FOR_NOTE,
  },
  {
    key: 'fenceCost',
    label: 'Fence, what it costs this season',
    unit: 'money',
    min: 0,
    optional: true,
    note: words.FENCE_COST_NOTE,
  },
  {
    key: 'limitN',
    label: 'Most nitrogen (N) on a paddock in the season',
    quantity: 'massPerArea',
    above: 0,
    optional: true,
    note: words.LIMIT_NOTE,
  },
  {
    key: 'limitP',
    label: 'Most phosphorus (P) on a paddock in the season',
    quantity: 'massPerArea',
    above: 0,
    optional: true,
    note: `${words.LIMIT_NOTE} P2O5 = 2.29 × P.`,
  },
  {
    key: 'limitK',
    label: 'Most potassium (K) on a paddock in the season',
    quantity: 'massPerArea',
    above: 0,
    optional: true,
    note: `${words.LIMIT_NOTE} K2O = 1.205 × K.`,
  },
];

export type BudgetSettings = SettingValues<BudgetKey>;
