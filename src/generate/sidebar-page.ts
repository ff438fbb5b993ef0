/** How the sidebar becomes one file, for the build and for tests that build it themselves. */
import { readFileSync } from 'node:fs';
import { deflateSync } from 'node:zlib';
import { type BuildOptions, build, transform } from 'esbuild';
import { geodesicParts } from './geodesic-parts';
import { contractWithout } from './without-words';

/** A code editor in a browser bears lines better than one of half a megabyte. Some come out longer. */
const LONGEST_LINE = 200;
/** Letters of the packed script in a line: under the thousand that an editor bears. */
const PACKED_LINE = 960;
/** Browsers since 2020. */
const PAGE_TARGET = 'es2020';
/** What a browser's tools call the script, once it is unpacked. */
const NAME = '\n//# sourceURL=sidebar.js\n';

const SCRIPT = {
  entryPoints: ['src/sidebar/main.tsx'],
  bundle: true,
  write: false,
  format: 'iife',
  target: PAGE_TARGET,
  charset: 'utf8',
  legalComments: 'none',
  plugins: [contractWithout('request'), geodesicParts],
  jsx: 'automatic',
  jsxImportSource: 'preact',
} as const satisfies BuildOptions;

const START = {
  entryPoints: ['src/sidebar/unpack.ts'],
  bundle: true,
  write: false,
  format: 'iife',
  target: PAGE_TARGET,
  charset: 'utf8',
} as const satisfies BuildOptions;

export async function sidebarPage({ minify }: { minify: boolean }): Promise<string> {
  const script = await build({ ...SCRIPT, minify });
  const start = await build(START);
  const style = await transform(readFileSync('src/sidebar/style.css', 'utf8'), {
    loader: 'css',
    target: 'chrome80',
    minify,
    lineLimit: LONGEST_LINE,
  });
  const packed = inLines((script.outputFiles[0]?.text ?? '') + NAME);
  return readFileSync('src/sidebar/index.html', 'utf8')
    .replace('<!-- style -->', () => `<style>\n${style.code}</style>`)
    .replace(
      '<!-- script -->',
      () => `<script>\nconst PACKED = [\n${packed}\n];\n${start.outputFiles[0]?.text ?? ''}</script>`,
    );
}

function inLines(script: string): string {
  const letters = deflateSync(script, { level: 9 }).toString('base64url');
  const lines = letters.match(new RegExp(`.{1,${PACKED_LINE}}`, 'g')) ?? [];
  return lines.map((line) => `'${line}'`).join(',\n');
}
