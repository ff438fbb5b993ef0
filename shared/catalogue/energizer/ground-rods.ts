import { groundRods } from '../../core/energizer/ground-rods';
import { ENERGIZER_CAUTIONS } from '../cautions';
import { define } from '../define';
import { UNITS_PARAM } from '../params';
import { ENERGIZER_CAUTIONS_USE } from '../uses';

export const GROUND_RODS = define({
  name: 'GROUND_RODS',
  topic: 'energizer',
  summary: 'Ground rods for an energizer.',
  formula: 'rod in all ÷ rod_length, rounded up; 3 ft of rod per joule, never less than 3 m (10 ft) in all',
  params: [
    { kind: 'number', name: 'joules', unit: 'J', help: 'Output of the energizer in joules.', above: 0 },
    {
      kind: 'number',
      name: 'rod_length',
      quantity: 'length',
      help: 'Length of one rod; 6 ft or 1.8 m where left out.',
      optional: true,
      default: { US: 6, metric: 1.8 },
      above: 0,
    },
    UNITS_PARAM,
  ],
  result: { kind: 'value', label: 'ground rods', unit: 'rods' },
  sources: [
    {
      source: 'nrcsVirginia382',
      certainty: 'published',
      covers: 'at least 3 ft of rod per joule, 10 ft apart',
    },
    { source: 'gerrishFencing', certainty: 'published', covers: 'worked example: 6 J, three 6 ft rods' },
    { source: 'threeRods', certainty: 'published', covers: 'never less than three rods of 1 m' },
    { source: 'judgement', certainty: 'judgement', covers: 'rod length where none is given' },
    ENERGIZER_CAUTIONS_USE,
  ],
  cautions: [
    ...ENERGIZER_CAUTIONS,
    'Rods stand at least 10 ft (3 m) apart in moist ground; dry or stony ground takes more. Test the ground in the driest part of the year.',
  ],
  examples: [
    { args: [6, 6], gives: 3 },
    { args: [15, 8], gives: 6 },
    { args: [1, 1, 'metric'], gives: 3 },
  ],
  run: groundRods,
});
