/** Size of the built script, and the time that a bare V8 context takes to load it. */
import { existsSync, readFileSync } from 'node:fs';
import vm from 'node:vm';
import { shortestMilliseconds } from './measure';

const BUILT = new URL('../../dist/Code.js', import.meta.url);

export function benchBuiltScript(): void {
  if (!existsSync(BUILT)) {
    console.log('\ndist/Code.js is not built: run npm run build to have its size and load time measured.');
    return;
  }
  const code = readFileSync(BUILT, 'utf8');
  const runs = 30;
  const contexts = Array.from({ length: 2 * runs }, () => vm.createContext({}));
  let run = 0;
  // A new text each time, so that no compiled code is kept from the run before; the context is made beforehand.
  const load = (): unknown => vm.runInContext(`${code}\n// ${run}`, contexts[run++]!);
  const milliseconds = shortestMilliseconds(load, runs);
  console.log(
    `\ndist/Code.js: ${(Buffer.byteLength(code) / 1024).toFixed(0)} KB, loads in ${milliseconds.toFixed(2)} ms`,
  );
}
