import { weightAfterDays } from '../../core/herd/weight-after-days';
import { define } from '../define';
import { DAILY_GAIN_PARAM, START_WEIGHT_PARAM, UNITS_PARAM } from '../params';
import { GROWTH_USES } from '../uses';

export const PIG_WEIGHT = define({
  name: 'PIG_WEIGHT',
  topic: 'pigs',
  summary: 'Weight of a growing pig after some days.',
  formula:
    'start_weight + daily_gain × days; without daily_gain the mean gain of each weight band, walked band by band',
  params: [
    START_WEIGHT_PARAM,
    { kind: 'number', name: 'days', unit: 'days', help: 'Days of growth.', min: 0 },
    DAILY_GAIN_PARAM,
    UNITS_PARAM,
  ],
  result: { kind: 'value', label: 'weight', quantity: 'mass' },
  sources: GROWTH_USES,
  cautions: [
    'Weigh some pigs now and then: real growth depends on feed, breed, weather and health.',
    'With daily_gain given it goes on without end: no pig does. The published figures for growing pigs that this tool has end at 160 kg (353 lb).',
  ],
  examples: [
    { args: [25, 60, undefined, 'metric'], gives: 74.32, tolerance: 0.005 },
    { args: [60, 45, 1.4], gives: 123 },
  ],
  run: weightAfterDays,
});
