/** An invented farm: three paddocks in a row near 44° N, a fourth apart, a creek, a well and a pond in one. */
export const SAMPLE_MAP = {
  type: 'FeatureCollection',
  features: [
    area('North', [
      [-92.0, 44.0],
      [-91.999, 44.0],
      [-91.999, 44.0009],
      [-92.0, 44.0009],
    ]),
    area('Middle', [
      [-91.999, 44.0],
      [-91.9978, 44.0],
      [-91.9978, 44.0009],
      [-91.999, 44.0009],
    ]),
    // Walked by hand: its west side lies about 1.6 m off Middle's east side.
    area('Pond field', [
      [-91.99778, 44.0],
      [-91.9966, 44.0001],
      [-91.9967, 44.0011],
      [-91.99778, 44.0009],
    ]),
    {
      type: 'Feature',
      properties: { name: 'Far' },
      geometry: {
        type: 'Polygon',
        coordinates: [
          ring([
            [-91.995, 44.0],
            [-91.993, 44.0],
            [-91.993, 44.002],
            [-91.995, 44.002],
          ]),
          ring([
            [-91.9944, 44.0008],
            [-91.9944, 44.0012],
            [-91.9938, 44.0012],
            [-91.9938, 44.0008],
          ]),
        ],
      },
    },
    {
      type: 'Feature',
      properties: { name: 'Marrow creek' },
      geometry: {
        type: 'LineString',
        coordinates: [
          [-92.0005, 43.9995],
          [-91.992, 43.9995],
        ],
      },
    },
    {
      type: 'Feature',
      properties: { name: 'House well' },
      geometry: { type: 'Point', coordinates: [-92.001, 44.0004] },
    },
  ],
};

function ring(corners: readonly (readonly [number, number])[]) {
  return [...corners, corners[0]!];
}

function area(name: string, corners: readonly (readonly [number, number])[]) {
  return {
    type: 'Feature',
    properties: { name },
    geometry: { type: 'Polygon', coordinates: [ring(corners)] },
  };
}
