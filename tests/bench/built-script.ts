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
  // A new text each time, so that no compiled code is kept from the run before.
  let run = 0;
  const load = (): unknown => vm.runInContext(`${code}\n// ${run++}`, vm.createContext({}));
  console.log(
    `\ndist/Code.js: ${(Buffer.byteLength(code) / 1024).toFixed(0)} KB, loads in ${shortestMilliseconds(load, 15).toFixed(2)} ms`,
  );
}
