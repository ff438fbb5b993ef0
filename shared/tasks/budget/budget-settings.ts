import { OUTDOOR_FACTOR } from '../../tables/nrc-intake';
import type { SettingSpec, SettingValues } from '../settings';

export type BudgetKey = 'mild' | 'hot' | 'outdoor' | 'shelter' | 'limitN' | 'limitP' | 'limitK';

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
