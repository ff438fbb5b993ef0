/** Size of the built script, and the time that a bare V8 context of a fresh process takes to load it. */
import { execFileSync } from 'node:child_process';
import { existsSync, statSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const BUILT = fileURLToPath(new URL('../../dist/Code.js', import.meta.url));
const PROCESSES = 20;

/** Google loads the script anew for every formula: nothing is warm. */
const LOAD_ONCE = `
  const code = require('node:fs').readFileSync(process.argv[1], 'utf8');
  const context = require('node:vm').createContext({});
  const start = performance.now();
  require('node:vm').runInContext(code, context);
  console.log(performance.now() - start);
`;

export function benchBuiltScript(): void {
  if (!existsSync(BUILT)) {
    console.log('\ndist/Code.js is not built: run npm run build to have its size and load time measured.');
    return;
  }
  const times = Array.from({ length: PROCESSES }, () =>
    Number(execFileSync(process.execPath, ['-e', LOAD_ONCE, BUILT], { encoding: 'utf8' })),
  ).sort((a, b) => a - b);
  const median = ((times[PROCESSES / 2 - 1] ?? 0) + (times[PROCESSES / 2] ?? 0)) / 2;
  const kilobytes = (statSync(BUILT).size / 1024).toFixed(0);
  console.log(
    `\ndist/Code.js: ${kilobytes} KB, loads in ${median.toFixed(2)} ms (median of ${PROCESSES} processes)`,
  );
}
