import { feedNeeded } from '../../core/herd/feed-needed';
import { OUTDOOR_FACTOR } from '../../tables/nrc-intake';
import { GROWING_PIGS_CAUTION } from '../cautions';
import { define } from '../define';
import { DAILY_GAIN_PARAM, DAYS_PARAM, HEAD_PARAM, START_WEIGHT_PARAM, UNITS_PARAM } from '../params';
import { GROWING_LIMITS_USE, GROWTH_USES } from '../uses';

export const FEED_NEEDED = define({
  name: 'FEED_NEEDED',
  topic: 'pigs',
  summary: 'Feed for a stay of growing pigs on full feed, 5 % waste included.',
  formula:
    'head × outdoor_factor × energy intake added up over the days as the pigs grow ÷ 3300 kcal/kg ÷ 0.95; intake 10563 × (1 − e^(−0.0176 × kg)) kcal a day',
  params: [
    HEAD_PARAM,
    START_WEIGHT_PARAM,
    DAYS_PARAM,
    DAILY_GAIN_PARAM,
    {
      kind: 'number',
      name: 'outdoor_factor',
      help: 'Allowance for living outdoors; 1.15 where left out, 1 for none.',
      optional: true,
      default: OUTDOOR_FACTOR,
      above: 0,
    },
    UNITS_PARAM,
  ],
  result: { kind: 'value', label: 'feed', quantity: 'mass' },
  sources: [
    {
      source: 'nrc2012',
      certainty: 'from memory',
      covers: 'energy intake, 5 % waste',
    },
    ...GROWTH_USES,
    { source: 'merckPigs', certainty: 'published', covers: '3300 kcal/kg of feed' },
    {
      source: 'edwards2003',
      certainty: 'published',
      covers: 'about 15 % more energy outdoors; less than 5 % of needs from grazing',
    },
    GROWING_LIMITS_USE,
  ],
  cautions: [
    GROWING_PIGS_CAUTION,
    'Take no feed off for pasture: grazing gives growing pigs less than 5 % of what they need.',
  ],
  examples: [{ args: [12, 60, 30, 1.5, 1], gives: 1282.5, tolerance: 0.05 }],
  run: feedNeeded,
});
