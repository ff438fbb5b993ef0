/*
 * How planning time grows with days, groups and paddocks: npx tsx tests/bench/plan-time.ts
 * The last number is 1 for growth in proportion, more than 1 on a larger farm for growth faster than that. Processor time of this process, the least of
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
const SIZES = [
  [8, 60, 91],
  [8, 60, 182],
  [8, 60, 365],
  [8, 60, 730],
  [4, 60, 365],
  [2, 60, 365],
  [8, 30, 365],
  [8, 120, 365],
] as const;
const full = 8 * 60 * 365;
const times = SIZES.map(([groups, paddocks, days]) => milliseconds(groups, paddocks, days));
const whole = times[SIZES.findIndex(([groups, paddocks, days]) => groups * paddocks * days === full)]!;
console.log(
  'groups × paddocks × days: milliseconds, time relative to the 8 × 60 × 365 farm ÷ size relative to it',
);
SIZES.forEach(([groups, paddocks, days], i) => {
  const relative = times[i]! / whole / ((groups * paddocks * days) / full);
  console.log(`${groups} × ${paddocks} × ${days}: ${times[i]!.toFixed(0)} ms, ${relative.toFixed(2)}`);
});
