/**
 * npm run bench: how long things take, as ratios. Times are the shortest of many runs; run it on a quiet machine.
 *
 * Other measurements of this room that print when they are loaded, such as the planner's, run after it.
 */
import { existsSync } from 'node:fs';
import { benchBuiltScript } from './built-script';
import { benchEngineFormulas } from './engine-formulas';
import { benchFunctions } from './functions';

const OTHERS = ['./plan-time.ts'];

benchFunctions();
benchBuiltScript();
await benchEngineFormulas();
for (const other of OTHERS) {
  if (!existsSync(new URL(other, import.meta.url))) continue;
  console.log(`\n${other}`);
  await import(other);
}
