import { daysToWeight } from '../../core/herd/days-to-weight';
import { define } from '../define';
import { DAILY_GAIN_PARAM, START_WEIGHT_PARAM, UNITS_PARAM } from '../params';
import { GROWTH_USES } from '../uses';

export const DAYS_TO_WEIGHT = define({
  name: 'DAYS_TO_WEIGHT',
  topic: 'pigs',
  summary: 'Days until a growing pig reaches a weight.',
  formula:
    '(target_weight − start_weight) ÷ daily_gain; without daily_gain the mean gain of each weight band, walked band by band',
  params: [
    START_WEIGHT_PARAM,
    {
      kind: 'number',
      name: 'target_weight',
      quantity: 'mass',
      help: 'Weight to reach, at or above start_weight.',
      above: 0,
    },
    // Above 0, because a pig that gains nothing never gets there.
    {
      kind: 'number',
      name: 'daily_gain',
      quantity: 'massPerDay',
      help: DAILY_GAIN_PARAM.help,
      optional: true,
      above: 0,
      max: DAILY_GAIN_PARAM.max,
    },
    UNITS_PARAM,
  ],
  result: { kind: 'value', label: 'days', unit: 'days' },
  sources: GROWTH_USES,
  cautions: ['Weigh some pigs now and then: real growth depends on feed, breed, weather and health.'],
  examples: [{ args: [25, 135, undefined, 'metric'], gives: 128.39, tolerance: 0.005 }],
  run: daysToWeight,
});
