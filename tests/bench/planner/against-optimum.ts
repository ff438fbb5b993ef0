import type { PlanProblem } from '../../../shared/plan/model';
import { planRotation } from '../../../shared/plan/plan-rotation';
import { checkPlan } from '../../plan/check-plan';
import { FARM_MAKERS, plantedFarm } from '../../plan/farm-makers';
import { planOptimum } from '../../plan/plan-optimum';
import { mean, percent, timed } from './print';

const EVENNESS = [0, 0.25];

interface Gap {
  readonly seed: number;
  readonly gap: number;
}

interface Tally {
  readonly gaps: Gap[];
  readonly falseNoPlans: number[];
  readonly plansWhereNone: number[];
  readonly faults: string[];
  none: number;
  unproven: number;
  ms: number;
}

/** Farms of each kind against HiGHS's optimum of the independent program. */
export async function againstOptimum(farms: number, seconds: number, only: string): Promise<void> {
  for (const [name, make] of Object.entries(FARM_MAKERS)) {
    if (!name.includes(only)) continue;
    for (const evenness of EVENNESS) {
      const tally = emptyTally();
      for (let seed = 1; seed <= farms; seed++) {
        const plain = make(seed);
        await against({ ...plain, rules: { ...plain.rules, evenness } }, seed, seconds, tally);
      }
      print(`${name}, evenness ${evenness}`, tally);
    }
  }
}

async function against(problem: PlanProblem, seed: number, seconds: number, tally: Tally): Promise<void> {
  const { value: plan, ms } = timed(() => planRotation(problem));
  tally.ms += ms;
  const optimum = await planOptimum(problem, seconds);
  if ('stays' in plan) {
    const verdict = checkPlan(problem, plan.stays);
    tally.faults.push(...verdict.faults.map((fault) => `${seed}: ${fault}`));
    if (Math.abs(verdict.score.total - plan.score.total) > 1e-6) tally.faults.push(`${seed}: another score`);
  }
  if (optimum === 'time') tally.unproven += 1;
  else if (optimum === 'infeasible') {
    if ('stays' in plan) tally.plansWhereNone.push(seed);
    else tally.none += 1;
  } else if ('stays' in plan) tally.gaps.push({ seed, gap: plan.score.total / optimum.total - 1 });
  else tally.falseNoPlans.push(seed);
}

/** Farms with an optimum by construction, up to 8 × 60 × 365. */
export function againstPlanted(farms: number): void {
  for (const evenness of EVENNESS) {
    const tally = emptyTally();
    for (let seed = 1; seed <= farms; seed++) {
      const { problem, best } = plantedFarm(seed, evenness);
      const { value: plan, ms } = timed(() => planRotation(problem));
      tally.ms += ms;
      if (!('stays' in plan)) {
        tally.falseNoPlans.push(seed);
        continue;
      }
      const verdict = checkPlan(problem, plan.stays);
      tally.faults.push(...verdict.faults.map((fault) => `${seed}: ${fault}`));
      tally.gaps.push({ seed, gap: verdict.score.total / best - 1 });
    }
    print(`planted, evenness ${evenness}`, tally);
  }
}

function emptyTally(): Tally {
  return { gaps: [], falseNoPlans: [], plansWhereNone: [], faults: [], none: 0, unproven: 0, ms: 0 };
}

function print(name: string, tally: Tally): void {
  const { gaps, falseNoPlans, plansWhereNone, faults, none, unproven, ms } = tally;
  const worst = [...gaps].sort((a, b) => b.gap - a.gap).slice(0, 4);
  const optimal = gaps.filter(({ gap }) => gap < 1e-9).length;
  console.log(
    `${name}: ${gaps.length} with an optimum, ${optimal} at it, mean ${percent(mean(gaps.map(({ gap }) => gap)))}, worst ${worst.map(({ seed, gap }) => `${percent(gap)} (${seed})`).join(' ')}; no plan exists ${none}, not proven in time ${unproven}; ${Math.round(ms / Math.max(1, gaps.length + none + unproven))} ms each`,
  );
  if (falseNoPlans.length > 0) console.log(`  FALSE NO PLAN: ${falseNoPlans.join(' ')}`);
  if (plansWhereNone.length > 0) console.log(`  A PLAN WHERE NONE EXISTS: ${plansWhereNone.join(' ')}`);
  if (faults.length > 0) console.log(`  RULES BROKEN: ${faults.slice(0, 8).join('; ')}`);
}
