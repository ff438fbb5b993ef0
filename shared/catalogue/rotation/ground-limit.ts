import { groundLimit } from '../../core/rotation/ground-limit';
import { define } from '../define';

export const GROUND_LIMIT = define({
  name: 'GROUND_LIMIT',
  topic: 'rotation',
  summary: 'Liveweight-days that your ground bears, from your own records of cover left.',
  formula: 'fit cover = e^(−k × liveweight_days) by least squares through the origin; −ln(target_cover) ÷ k',
  params: [
    {
      kind: 'list',
      name: 'liveweight_days',
      unit: 'weight × days per unit of area',
      help: 'One record a row: liveweight × days ÷ area of a past stay.',
      min: 0,
      blanks: 'pair',
      atLeast: 3,
    },
    {
      kind: 'list',
      name: 'cover_left',
      unit: 'part of the ground',
      help: 'Ground cover left after that stay, as a part of 1 (75 % is 0.75).',
      above: 0,
      max: 1,
      blanks: 'pair',
      atLeast: 3,
    },
    {
      kind: 'number',
      name: 'target_cover',
      unit: 'part of the ground',
      help: 'Cover to keep; 0.75 where left out.',
      optional: true,
      default: 0.75,
      above: 0,
      below: 1,
    },
  ],
  result: { kind: 'value', label: 'ground limit', unit: 'weight × days per unit of area' },
  sources: [
    { source: 'groundCover2020', certainty: 'published', covers: 'at least 75 % cover as the aim' },
    { source: 'judgement', certainty: 'judgement', covers: 'shape of the curve' },
  ],
  cautions: [
    'It knows only the soil, season and weather of your records. In one published trial even the lowest stocking left less than 75 % cover.',
  ],
  examples: [
    {
      args: [
        [[10000], [20000], [40000]],
        [[0.9], [0.8], [0.7]],
      ],
      gives: 30537,
      tolerance: 0.5,
    },
  ],
  run: groundLimit,
});
