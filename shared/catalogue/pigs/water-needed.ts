import { waterNeeded } from '../../core/herd/water-needed';
import { GROWING_PIGS_CAUTION, HEAT_CAUTION, WATER_CAUTION } from '../cautions';
import { define } from '../define';
import { HEAD_PARAM, UNITS_PARAM, WEIGHT_PARAM } from '../params';
import { GROWING_LIMITS_USE, HEAT_USE } from '../uses';

export const WATER_NEEDED = define({
  name: 'WATER_NEEDED',
  topic: 'pigs',
  summary: 'Water a day to have there for growing pigs, drinking and spilling.',
  formula:
    'head × 1.15 (outdoors) × 1.25 (spill) × daily feed × litres per kg of feed: 2.7 up to 22 °C (72 °F), rising straight to 5.0 at 33 °C (91 °F) and above',
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
    {
      source: 'mount1971',
      certainty: 'published',
      covers: 'water per feed at 7 to 22 and 30 to 33 °C, pigs of 21 to 73 kg',
    },
    {
      source: 'judgement',
      certainty: 'judgement',
      covers: 'upper end of both ranges; straight line between; a quarter more for spill',
    },
    GROWING_LIMITS_USE,
    { source: 'nrc2012', certainty: 'from memory', covers: 'daily feed by weight' },
    { source: 'little2023', certainty: 'published', covers: 'metered use that the spill rests on' },
    { source: 'edwards2003', certainty: 'published', covers: 'about 15 % more energy outdoors' },
    { source: 'saltPoisoning', certainty: 'published', covers: 'caution on pigs without water' },
    HEAT_USE,
  ],
  cautions: [HEAT_CAUTION, WATER_CAUTION, GROWING_PIGS_CAUTION],
  examples: [
    { args: [12, 150], gives: 27.49, tolerance: 0.005 },
    { args: [12, 150, 90], gives: 49.25, tolerance: 0.005 },
  ],
  run: waterNeeded,
});
