/**
 * Takes of the geodesic library what we call, distances and polygons, and leaves out its file of lines and every
 * function that is then called by none: two fifths of it. What stays are its own sources in their order, with short names
 * for what nobody else reads.
 */
import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { type Plugin, transformSync } from 'esbuild';
import { parseAst } from 'rolldown/parseAst';
import { cut, type Node, nodesIn } from './syntax';

const PARTS = ['Math', 'Geodesic', 'PolygonArea'];
/** What shared/core/fence/wgs84.ts calls. */
const CALLED = ['Polygon', 'AddPoint', 'Compute', 'Inverse'];
/** What it reads, and the language's own: every other property gets a short name. */
const KEPT = [
  ...['Geodesic', 'WGS84', 'DISTANCE', 's12', 'perimeter', 'area'],
  ...[Math, Number, Array.prototype, Function.prototype].flatMap(Object.getOwnPropertyNames),
];

export const geodesicParts: Plugin = {
  name: 'geodesic parts',
  setup(build) {
    build.onLoad({ filter: /geographiclib-geodesic\.min\.js$/ }, ({ path }) => {
      const read = (part: string): string => readFileSync(join(dirname(path), 'src', `${part}.js`), 'utf8');
      const { code } = transformSync(PARTS.map(read).join('\n'));
      const short = transformSync(withoutUncalled(code), {
        mangleProps: /./,
        reserveProps: new RegExp(`^(${[...CALLED, ...KEPT].join('|')})$`),
      });
      return { contents: `${short.code}\nexport default geodesic;`, loader: 'js' };
    });
  },
};

/** Without functions that are properties and whose name is read nowhere but in them; again until there are none. */
function withoutUncalled(code: string): string {
  const isUncalled = ({ type, start, end, expression }: Node): boolean => {
    const { left, right } = (type === 'ExpressionStatement' ? expression : {}) as {
      left?: Node;
      right?: Node;
    };
    const { name } = (left?.property ?? {}) as { name?: string };
    const others = code.slice(0, start) + code.slice(end);
    return (
      name !== undefined &&
      right?.type === 'FunctionExpression' &&
      !CALLED.includes(name) &&
      !new RegExp(`\\.${name}\\b`).test(others)
    );
  };
  const uncalled = nodesIn(parseAst(code) as unknown as Node, isUncalled);
  return uncalled.length === 0 ? code : withoutUncalled(cut(code, uncalled));
}
