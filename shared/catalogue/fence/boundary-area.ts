import { boundaryArea } from '../../core/fence/boundary-area';
import { define } from '../define';
import { CORNERS_PARAM, UNITS_PARAM } from '../params';

export const BOUNDARY_AREA = define({
  name: 'BOUNDARY_AREA',
  topic: 'fence',
  summary: 'Area inside a boundary whose corners are given by latitude and longitude.',
  formula: 'area of the polygon of shortest lines on the WGS84 ellipsoid, either way round',
  params: [CORNERS_PARAM, UNITS_PARAM],
  result: { kind: 'value', label: 'area', quantity: 'area' },
  sources: [{ source: 'karney2013', certainty: 'published', covers: 'area on the ellipsoid' }],
  cautions: [
    'Corners from a phone can be several metres off, and a map line is no proof of a legal boundary.',
  ],
  // Planimeter0 of the GeographicLib test set, whose last digit is cut off, not rounded. 24619419146 m².
  examples: [
    {
      args: [
        [
          [0, -1],
          [-1, 0],
          [0, 1],
          [1, 0],
        ],
        'metric',
      ],
      gives: 2461941.9146,
      tolerance: 0.0001,
    },
  ],
  run: boundaryArea,
});
