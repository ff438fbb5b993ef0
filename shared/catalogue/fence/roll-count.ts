import { rollCount } from '../../core/fence/roll-count';
import { define } from '../define';

export const ROLL_COUNT = define({
  name: 'ROLL_COUNT',
  topic: 'fence',
  summary: 'Whole rolls of wire or netting still to buy.',
  formula: 'length ÷ roll_length − on_hand, rounded up, never below 0',
  params: [
    { kind: 'number', name: 'length', unit: 'any length', help: 'Length needed in all.', min: 0 },
    {
      kind: 'number',
      name: 'roll_length',
      unit: 'any length',
      help: 'Length on one roll, in the same unit.',
      above: 0,
    },
    {
      kind: 'number',
      name: 'on_hand',
      unit: 'rolls',
      help: 'Rolls on hand, a part roll as a fraction; 0 where left out.',
      optional: true,
      default: 0,
      min: 0,
    },
  ],
  result: { kind: 'value', label: 'rolls to buy', unit: 'rolls' },
  sources: [{ source: 'geometry', certainty: 'definition', covers: 'counting' }],
  examples: [{ args: [2900, 1320, 1], gives: 2 }],
  run: rollCount,
});
