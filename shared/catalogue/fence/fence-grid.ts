import { fenceGrid } from '../../core/fence/fence-grid';
import { define } from '../define';

export const FENCE_GRID = define({
  name: 'FENCE_GRID',
  topic: 'fence',
  summary: 'Outer fence, dividing fence and both together for a grid of equal paddocks.',
  formula:
    'outer 2 × (rows × length + columns × width); dividing (rows − 1) × columns × width + (columns − 1) × rows × length; shared sides counted once',
  params: [
    {
      kind: 'number',
      name: 'rows',
      unit: 'paddocks',
      help: 'Paddocks from top to bottom.',
      min: 1,
      whole: true,
    },
    {
      kind: 'number',
      name: 'columns',
      unit: 'paddocks',
      help: 'Paddocks from side to side.',
      min: 1,
      whole: true,
    },
    {
      kind: 'number',
      name: 'width',
      help: 'Width of one paddock, in any unit of length.',
      unit: 'any length',
      above: 0,
    },
    {
      kind: 'number',
      name: 'length',
      help: 'Length of one paddock, in the same unit.',
      unit: 'any length',
      above: 0,
    },
  ],
  result: {
    kind: 'row',
    columns: [
      { label: 'outer fence', unit: 'unit of the sides' },
      { label: 'dividing fence', unit: 'unit of the sides' },
      { label: 'both', unit: 'unit of the sides' },
    ],
  },
  sources: [{ source: 'geometry', certainty: 'definition', covers: 'sides of a grid' }],
  examples: [{ args: [2, 4, 120, 180], gives: [[1680, 1560, 3240]] }],
  run: fenceGrid,
});
