import { fenceLength } from '../../core/fence/fence-length';
import { define } from '../define';
import { LENGTH_PARAM, WIDTH_PARAM } from '../params';

export const FENCE_LENGTH = define({
  name: 'FENCE_LENGTH',
  topic: 'fence',
  summary: 'Fence needed round a rectangle.',
  formula: '2 × (width + length) × strands',
  params: [
    WIDTH_PARAM,
    LENGTH_PARAM,
    {
      kind: 'number',
      name: 'strands',
      unit: 'wires',
      help: 'How many wires; 1 where left out.',
      optional: true,
      default: 1,
      min: 1,
      whole: true,
    },
  ],
  result: { kind: 'value', label: 'fence', unit: 'unit of the sides' },
  sources: [{ source: 'geometry', certainty: 'definition', covers: 'perimeter of a rectangle' }],
  examples: [{ args: [200, 300, 2], gives: 2000 }],
  run: fenceLength,
});
