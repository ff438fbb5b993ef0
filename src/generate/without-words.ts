/**
 * Leaves out of the script what only the page, the stubs' help and the README say: words of the catalogue and reasons
 * of the assumptions. They are data in object literals, so nothing that runs is touched.
 */
import { readFileSync } from 'node:fs';
import { type Plugin, transform } from 'esbuild';
import { parseAst } from 'rolldown/parseAst';

const WORDS = new Set([
  'summary',
  'formula',
  'cautions',
  'sources',
  'examples',
  'help',
  'matters',
  'sure',
  'source',
]);
const FILES = /shared\/catalogue\/.*\.ts$|src\/script\/assumptions\.ts$/;

type Node = { type: string; start: number; end: number; key?: { name?: string } } & Record<string, unknown>;

export const withoutWords: Plugin = {
  name: 'without words',
  setup(build) {
    build.onLoad({ filter: FILES }, async ({ path }) => {
      const { code } = await transform(readFileSync(path, 'utf8'), { loader: 'ts', target: 'esnext' });
      return { contents: cut(code, wordsIn(parseAst(code) as unknown as Node)), loader: 'js' };
    });
  },
};

/** Properties of object literals with such a name, outermost first. */
function wordsIn(node: Node): Node[] {
  if (node.type === 'Property' && WORDS.has(node.key?.name ?? '')) return [node];
  return Object.values(node)
    .flat()
    .filter((child): child is Node => typeof (child as Node | null)?.type === 'string')
    .flatMap(wordsIn);
}

function cut(code: string, words: readonly Node[]): string {
  return [...words]
    .sort((a, b) => b.start - a.start)
    .reduce((text, { start, end }) => text.slice(0, start) + text.slice(end).replace(/^\s*,/, ''), code);
}
