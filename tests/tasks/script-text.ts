/** The script as it would be built, from the sources of this moment: for tests that write through it. */
import { build } from 'esbuild';
import { CATALOGUE } from '../../shared/catalogue/index';
import { printStubs } from '../../src/generate/stubs';

let made: Promise<string> | undefined;

export function scriptText(): Promise<string> {
  made ??= build({
    entryPoints: ['src/script/main.ts'],
    bundle: true,
    write: false,
    format: 'iife',
    globalName: 'Lib_',
    target: 'es2019',
    charset: 'utf8',
    footer: { js: printStubs(CATALOGUE) },
  }).then((result) => result.outputFiles[0]?.text ?? '');
  return made;
}
