import { boundaryPosts } from '../../core/fence/boundary-posts';
import { define } from '../define';
import { CORNERS_PARAM, UNITS_PARAM } from '../params';

export const BOUNDARY_POSTS = define({
  name: 'BOUNDARY_POSTS',
  topic: 'fence',
  summary: 'Posts round a boundary whose corners are given by latitude and longitude.',
  formula: 'sum of side ÷ spacing, each rounded up; a post at every corner, sides divided evenly',
  params: [
    CORNERS_PARAM,
    {
      kind: 'number',
      name: 'spacing',
      quantity: 'length',
      help: 'Widest gap between posts.',
      above: 0,
    },
    UNITS_PARAM,
  ],
  result: { kind: 'value', label: 'posts', unit: 'posts' },
  sources: [
    { source: 'karney2013', certainty: 'published', covers: 'length of the sides' },
    { source: 'geometry', certainty: 'definition', covers: 'posts along a line' },
  ],
  cautions: ['Measured on the map: slopes and dips need more posts.'],
  // Planimeter0 of the GeographicLib test set, whose last digit is cut off, not rounded. four sides of 627598.2731 ÷ 4 m, which take 157 gaps of 1 km each.
  examples: [
    {
      args: [
        [
          [0, -1],
          [-1, 0],
          [0, 1],
          [1, 0],
        ],
        1000,
        'metric',
      ],
      gives: 628,
    },
  ],
  run: boundaryPosts,
});
