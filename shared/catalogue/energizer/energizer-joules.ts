import { energizerJoules } from '../../core/energizer/energizer-joules';
import { ENERGIZER_CAUTIONS } from '../cautions';
import { define } from '../define';
import { UNITS_PARAM } from '../params';
import { ENERGIZER_CAUTIONS_USE } from '../uses';

export const ENERGIZER_JOULES = define({
  name: 'ENERGIZER_JOULES',
  topic: 'energizer',
  summary: 'Output joules that a fence line asks of its energizer.',
  formula: '1 joule per mile of fence line (not per strand) × load_factor',
  params: [
    {
      kind: 'number',
      name: 'fence_length',
      quantity: 'length',
      help: 'Length of the fence line, counted once however many strands it has.',
      above: 0,
    },
    {
      kind: 'number',
      name: 'load_factor',
      help: 'Allowance for growth on the wire: 1 where left out, 2 to 3 for heavy growth.',
      optional: true,
      default: 1,
      above: 0,
    },
    UNITS_PARAM,
  ],
  result: { kind: 'value', label: 'output', unit: 'J' },
  sources: [
    { source: 'gerrishFencing', certainty: 'published', covers: '1 joule of output per mile of fence' },
    {
      source: 'practice',
      certainty: 'common practice, no source',
      covers: 'load factor 2 to 3 for heavy growth',
    },
    ENERGIZER_CAUTIONS_USE,
  ],
  cautions: [
    ...ENERGIZER_CAUTIONS,
    'Some advisers count every strand as fence, which asks for more. Compare output joules, not stored joules, and measure the far end.',
  ],
  examples: [{ args: [31680], gives: 6 }],
  run: energizerJoules,
});
