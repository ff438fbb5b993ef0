import { boundaryLength } from '../../core/fence/boundary-length';
import { define } from '../define';
import { CORNERS_PARAM, UNITS_PARAM } from '../params';

export const BOUNDARY_LENGTH = define({
  name: 'BOUNDARY_LENGTH',
  topic: 'fence',
  summary: 'Length of a boundary whose corners are given by latitude and longitude.',
  formula: 'sum of the shortest lines from corner to corner and back to the first, on the WGS84 ellipsoid',
  params: [CORNERS_PARAM, UNITS_PARAM],
  result: { kind: 'value', label: 'boundary', quantity: 'length' },
  sources: [{ source: 'karney2013', certainty: 'published', covers: 'length on the ellipsoid' }],
  cautions: [
    'Measured on the map: slopes and bends between corners take more fence.',
    'Corners from a phone can be several metres off, and a map line is no proof of a legal boundary.',
  ],
  // Planimeter0 of the GeographicLib test set, whose last digit is cut off, not rounded.
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
      gives: 627598.2731,
      tolerance: 0.0001,
    },
  ],
  run: boundaryLength,
});
