/**
 * Leaves out of the script what only the page, the stubs' help and the README say: words of the catalogue, reasons of
 * the assumptions, titles of the sample farms; and out of the script and the page the shapes of what they send themselves. They are data in object
 * literals, so nothing that runs is touched.
 */
import { readFileSync } from 'node:fs';
import { type Plugin, transform } from 'esbuild';
import { parseAst } from 'rolldown/parseAst';
import { cut, type Node, nodesIn } from './syntax';

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
  'topic',
  'label',
  'asks',
  'title',
  'weighings',
]);
const FILES = /shared\/(catalogue|samples)\/.*\.ts$|src\/script\/assumptions\.ts$/;

const CONTRACT = /shared\/contract\.ts$/;
/** Making a schema does nothing else: one that nobody uses is left out. */
const MAKES_SCHEMA = /\b(v\.\w+|oneOf|matching)\(/g;

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
  const named =
    (names: ReadonlySet<string>) =>
    ({ type, key }: Node): boolean =>
      type === 'Property' && names.has(key?.name ?? '');
  const tree = parseAst(code) as unknown as Node;
  // An answer in any unit is a number: what it counts is a word.
  const units = nodesIn(tree, named(new Set(['result']))).flatMap((result) =>
    nodesIn(result, named(new Set(['unit']))),
  );
  return cut(code, [...nodesIn(tree, named(words)), ...units]);
}
