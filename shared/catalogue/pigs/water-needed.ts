import { waterNeeded } from '../../core/herd/water-needed';
import { GROWING_PIGS_CAUTION, HEAT_CAUTION } from '../cautions';
import { define } from '../define';
import { HEAD_PARAM, UNITS_PARAM, WEIGHT_PARAM } from '../params';

export const WATER_NEEDED = define({
  name: 'WATER_NEEDED',
  topic: 'pigs',
  summary: 'Drinking water a day for growing pigs.',
  formula:
    'head × daily feed × litres per kg of feed: 2.7 up to 22 °C (72 °F), rising to 5.0 at 33 °C (91 °F) and above',
  params: [
    HEAD_PARAM,
    WEIGHT_PARAM,
    {
      kind: 'number',
      name: 'temperature',
      quantity: 'temperature',
      help: 'Air temperature; 68 °F or 20 °C where left out.',
      optional: true,
      default: { US: 68, metric: 20 },
      // No farm is colder or hotter; catches Fahrenheit typed as Celsius. Judgement.
      min: -50,
      max: 60,
    },
    UNITS_PARAM,
  ],
  result: { kind: 'value', label: 'water', quantity: 'volumePerDay' },
  sources: [
    { source: 'mount1971', certainty: 'published', covers: 'water per feed at 7 to 22 and 30 to 33 °C' },
    {
      source: 'judgement',
      certainty: 'judgement',
      covers: 'upper end of both ranges; straight line between',
    },
    { source: 'nrc2012', certainty: 'from memory', covers: 'daily feed by weight' },
    { source: 'muHeat', certainty: 'published', covers: 'caution on heat' },
  ],
  cautions: [
    HEAT_CAUTION,
    'What pigs drink, not what they spill or wallow in. Never ration water to this number.',
    GROWING_PIGS_CAUTION,
  ],
  examples: [
    { args: [12, 150], gives: 19.12, tolerance: 0.005 },
    { args: [12, 150, 90], gives: 34.26, tolerance: 0.005 },
  ],
  run: waterNeeded,
});
