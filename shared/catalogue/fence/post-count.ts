import { postCount } from '../../core/fence/post-count';
import { define } from '../define';
import { LENGTH_PARAM, SPACING_PARAM, WIDTH_PARAM } from '../params';

export const POST_COUNT = define({
  name: 'POST_COUNT',
  topic: 'fence',
  summary: 'Posts round a rectangle, with a post at every corner.',
  formula: '2 × (width ÷ spacing, rounded up) + 2 × (length ÷ spacing, rounded up)',
  params: [WIDTH_PARAM, LENGTH_PARAM, SPACING_PARAM],
  result: { kind: 'value', label: 'posts', unit: 'posts' },
  sources: [{ source: 'geometry', certainty: 'definition', covers: 'posts along a closed line' }],
  examples: [
    { args: [1320, 1320, 40], gives: 132 },
    { args: [48, 32, 16 / 3], gives: 30 },
  ],
  run: postCount,
});
