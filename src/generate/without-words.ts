/**
 * Leaves out of the script what only the page, the stubs' help and the README say: words of the catalogue, reasons of
 * the assumptions; and out of the script and the page the shapes of what they send themselves. They are data in object
 * literals, so nothing that runs is touched.
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

const CONTRACT = /shared\/contract\.ts$/;
/** Making a schema does nothing else: one that nobody uses is left out. */
const MAKES_SCHEMA = /\bv\.\w+\(/g;

type Node = { type: string; start: number; end: number; key?: { name?: string } } & Record<string, unknown>;

export const withoutWords: Plugin = {
  name: 'without words',
  setup(build) {
    build.onLoad({ filter: FILES }, async ({ path }) => ({
      contents: await without(path, WORDS),
      loader: 'js',
    }));
  },
};

/** The script checks requests, the page replies. */
export const contractWithout = (shape: 'request' | 'reply'): Plugin => ({
  name: `contract without ${shape}`,
  setup(build) {
    build.onLoad({ filter: CONTRACT }, async ({ path }) => ({
      contents: (await without(path, new Set([shape]))).replace(MAKES_SCHEMA, '/* @__PURE__ */ $&'),
      loader: 'js',
    }));
  },
});

async function without(path: string, words: ReadonlySet<string>): Promise<string> {
  const { code } = await transform(readFileSync(path, 'utf8'), { loader: 'ts', target: 'esnext' });
  return cut(code, wordsIn(parseAst(code) as unknown as Node, words));
}

/** Properties of object literals with such a name, outermost first. */
function wordsIn(node: Node, words: ReadonlySet<string>): Node[] {
  if (node.type === 'Property' && words.has(node.key?.name ?? '')) return [node];
  return Object.values(node)
    .flat()
    .filter((child): child is Node => typeof (child as Node | null)?.type === 'string')
    .flatMap((child) => wordsIn(child, words));
}

function cut(code: string, words: readonly Node[]): string {
  return [...words]
    .sort((a, b) => b.start - a.start)
    .reduce((text, { start, end }) => text.slice(0, start) + text.slice(end).replace(/^\s*,/, ''), code);
}
