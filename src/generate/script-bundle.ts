/** How the script becomes one file, for the build and for tests that bundle it themselves. */
import { readFileSync } from 'node:fs';
import type { BuildOptions } from 'esbuild';
import { CATALOGUE } from '../../shared/catalogue/index';
import { geodesicParts } from './geodesic-parts';
import { printStubs } from './stubs';
import { contractWithout, withoutWords } from './without-words';

/** What Apps Script parses: no private or static class fields. Public scripts for it do use ?. and ??. */
const TARGET = 'es2020';

const { version } = JSON.parse(readFileSync('package.json', 'utf8')) as { version: string };

export const SCRIPT_BUNDLE = {
  entryPoints: ['src/script/main.ts'],
  bundle: true,
  write: false,
  format: 'iife',
  globalName: 'Lib_',
  define: { VERSION: JSON.stringify(version) },
  plugins: [withoutWords, contractWithout('reply'), geodesicParts],
  target: TARGET,
  // No helper for fields of classes.
  tsconfigRaw: { compilerOptions: { useDefineForClassFields: false } },
  charset: 'utf8',
  // esbuild drops JSDoc and hides functions in the bundle: Google Sheets needs plain top-level ones.
  footer: { js: printStubs(CATALOGUE) },
} as const satisfies BuildOptions;
