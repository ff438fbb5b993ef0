/**
 * Takes of the geodesic library what we call, distances and polygons, and leaves out its file of lines, which goes by
 * azimuth and distance: a fifth of it. Its own sources, unchanged, in their order.
 */
import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { Plugin } from 'esbuild';

const PARTS = ['Math', 'Geodesic', 'PolygonArea'];

export const geodesicParts: Plugin = {
  name: 'geodesic parts',
  setup(build) {
    build.onLoad({ filter: /geographiclib-geodesic\.min\.js$/ }, ({ path }) => {
      const read = (part: string): string => readFileSync(join(dirname(path), 'src', `${part}.js`), 'utf8');
      return { contents: `${PARTS.map(read).join('\n')}\nexport default geodesic;`, loader: 'js' };
    });
  },
};
