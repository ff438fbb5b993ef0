import { sidePosts } from '../../core/fence/side-posts';
import { define } from '../define';
import { CLOSED_PARAM, SPACING_PARAM } from '../params';

export const SIDE_POSTS = define({
  name: 'SIDE_POSTS',
  topic: 'fence',
  summary: 'Posts along any number of sides, with a post at every corner.',
  formula: 'sum of side ÷ spacing, each rounded up; one more for an open run',
  params: [
    {
      kind: 'list',
      name: 'sides',
      help: 'Lengths of the sides, in any unit of length.',
      unit: 'any length',
      above: 0,
      blanks: 'skip',
      atLeast: 1,
    },
    SPACING_PARAM,
    CLOSED_PARAM,
  ],
  result: { kind: 'value', label: 'posts', unit: 'posts' },
  sources: [{ source: 'geometry', certainty: 'definition', covers: 'posts along a line' }],
  examples: [
    { args: [[[210], [135], [180]], 25], gives: 23 },
    { args: [1320, 12, false], gives: 111 },
  ],
  run: sidePosts,
});
