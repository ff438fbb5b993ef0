import { stockingDensity } from '../../core/herd/stocking-density';
import { define } from '../define';
import { HEAD_PARAM } from '../params';

export const STOCKING_DENSITY = define({
  name: 'STOCKING_DENSITY',
  topic: 'pigs',
  summary: 'Pigs, or liveweight, on a unit of the ground they stand on now.',
  formula: 'head ÷ area; with weight head × weight ÷ area',
  params: [
    HEAD_PARAM,
    {
      kind: 'number',
      name: 'area',
      unit: 'any area',
      help: 'Area of the paddock in use now, in any unit of area.',
      above: 0,
    },
    {
      kind: 'number',
      name: 'weight',
      unit: 'any weight',
      help: 'Weight of one pig, in any unit of weight, for liveweight instead of head.',
      optional: true,
      above: 0,
    },
  ],
  result: { kind: 'value', label: 'density', unit: 'head, or weight, per unit of area' },
  sources: [
    { source: 'stockDensityTerm', certainty: 'published, second hand', covers: 'meaning of the term' },
  ],
  cautions: ['Density now is not stocking rate over the season: say which area you divided by.'],
  examples: [
    { args: [12, 0.25], gives: 48 },
    { args: [12, 0.25, 150], gives: 7200 },
  ],
  run: stockingDensity,
});
