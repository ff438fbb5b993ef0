/*
 * How planning time grows with days, groups and paddocks: npx tsx tests/bench/plan-time.ts
 * One thing is doubled at a time; a ratio of 2 is growth in proportion. Processor time of this process, the least of
 * three runs, so that other programs disturb little.
 */
import { planRotation } from '../../shared/plan/plan-rotation';
import { largeFarm } from '../plan/large-farm';

function milliseconds(groups: number, paddocks: number, days: number): number {
  const problem = largeFarm(groups, paddocks, days);
  let least = Infinity;
  for (let i = 0; i < 3; i++) {
    const before = process.cpuUsage();
    planRotation(problem);
    least = Math.min(least, process.cpuUsage(before).user / 1000);
  }
  return least;
}

milliseconds(4, 30, 180); // warm up
const full = milliseconds(8, 60, 365);
console.log(`8 groups × 60 paddocks × 365 days: ${full.toFixed(0)} ms`);
for (const [what, half] of [
  ['days', milliseconds(8, 60, 182)],
  ['groups', milliseconds(4, 60, 365)],
  ['paddocks', milliseconds(8, 30, 365)],
] as const) {
  console.log(`twice the ${what}: ${half.toFixed(0)} → ${full.toFixed(0)} ms, × ${(full / half).toFixed(2)}`);
}
