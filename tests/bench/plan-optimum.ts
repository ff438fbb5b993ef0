/*
 * How far plans are from the exact optimum, over seeded random small farms: npx tsx tests/bench/plan-optimum.ts [farms]
 * The optimum is HiGHS's on the independently written program in tests/plan/plan-optimum.ts. Takes some minutes.
 */
import { planRotation } from '../../shared/plan/plan-rotation';
import { checkPlan } from '../plan/check-plan';
import { planOptimum } from '../plan/plan-optimum';
import { randomFarm } from '../plan/random-farm';

async function main(): Promise<void> {
  const farms = Number(process.argv[2] ?? 240);
  const gaps: { seed: number; gap: number }[] = [];
  let infeasible = 0;
  let unproven = 0;
  let faults = 0;
  for (let seed = 1; seed <= farms; seed++) {
    const problem = randomFarm(seed);
    const plan = planRotation(problem);
    const optimum = await planOptimum(problem, 120);
    if (optimum === 'time') {
      unproven += 1;
      continue;
    }
    if (optimum === 'infeasible' || !('stays' in plan)) {
      if (optimum === 'infeasible' && !('stays' in plan)) infeasible += 1;
      else
        console.log(
          `farm ${seed}: ${optimum === 'infeasible' ? 'a plan where none exists' : 'no plan found'}`,
        );
      if (optimum !== 'infeasible') gaps.push({ seed, gap: Infinity });
      continue;
    }
    const verdict = checkPlan(problem, plan.stays);
    faults += verdict.faults.length;
    gaps.push({ seed, gap: verdict.score.total / optimum.total - 1 });
  }
  const percent = (value: number): string => `${(100 * value).toFixed(2)} %`;
  const sum = gaps.reduce((total, { gap }) => total + gap, 0);
  const worst = [...gaps].sort((a, b) => b.gap - a.gap).slice(0, 5);
  console.log(`farms with a proven optimum: ${gaps.length}`);
  console.log(`farms proven to have no plan, and none found: ${infeasible}`);
  console.log(`farms HiGHS did not finish in time, left out: ${unproven}`);
  console.log(`rules broken: ${faults}`);
  console.log(`plans at the optimum: ${gaps.filter(({ gap }) => gap < 1e-9).length}`);
  console.log(`mean above the optimum: ${percent(sum / gaps.length)}`);
  console.log(`worst: ${worst.map(({ seed, gap }) => `farm ${seed} ${percent(gap)}`).join(', ')}`);
}

void main();
