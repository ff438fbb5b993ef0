import type { Plan, PlanProblem } from '../../../shared/plan/model';
import { planRotation } from '../../../shared/plan/plan-rotation';
import { checkPlan } from '../../plan/check-plan';
import { FARM_MAKERS, plantedFarm } from '../../plan/farm-makers';
import { planOptimum } from '../../plan/plan-optimum';
import { mean, percent, timed } from './print';

const EVENNESS = [0, 0.25];
/** What is asked of the planner: the mean and the worst share above the optimum (design of this tool). */
const MEAN_GAP = 0.01;
const WORST_GAP = 0.05;

interface Gap {
  readonly seed: number;
  readonly gap: number;
}

interface Tally {
  readonly gaps: Gap[];
  /** Where time ran out: how far above the optimum the plan may be at most. */
  readonly unproven: Gap[];
  readonly falseNoPlans: number[];
  readonly faults: string[];
  none: number;
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
  const plan = planned(problem, seed, tally);
  const optimum = await planOptimum(problem, seconds);
  if (optimum === 'infeasible') {
    if (plan) tally.faults.push(`${seed}: a plan where none exists`);
    tally.none += 1;
  } else if ('total' in optimum) {
    if (plan) note(tally.gaps, seed, plan.score.total / optimum.total - 1);
    else tally.falseNoPlans.push(seed);
  } else if (plan) {
    // A better one that HiGHS found before its time was over is a gap that is known.
    const isBeaten = optimum.found < plan.score.total - 1e-6;
    if (isBeaten) note(tally.gaps, seed, plan.score.total / optimum.found - 1);
    else note(tally.unproven, seed, plan.score.total / Math.max(1, optimum.atLeast) - 1);
  } else if (optimum.found < Number.POSITIVE_INFINITY) tally.falseNoPlans.push(seed);
  else note(tally.unproven, seed, Number.POSITIVE_INFINITY);
}

/** Farms with an optimum by construction, up to 8 × 60 × 365. */
export function againstPlanted(farms: number): void {
  for (const evenness of EVENNESS) {
    const tally = emptyTally();
    for (let seed = 1; seed <= farms; seed++) {
      const { problem, best } = plantedFarm(seed, evenness);
      const plan = planned(problem, seed, tally);
      if (plan) note(tally.gaps, seed, plan.score.total / best - 1);
      else tally.falseNoPlans.push(seed);
    }
    print(`planted, evenness ${evenness}`, tally);
  }
}

/** The plan, looked through by the independent checker. */
function planned(problem: PlanProblem, seed: number, tally: Tally): Plan | undefined {
  const { value: plan, ms } = timed(() => planRotation(problem));
  tally.ms += ms;
  if (!('stays' in plan)) return undefined;
  const { faults, score } = checkPlan(problem, plan.stays);
  tally.faults.push(...faults.map((fault) => `${seed}: ${fault}`));
  if (Math.abs(score.total - plan.score.total) > 1e-6) tally.faults.push(`${seed}: another score`);
  return plan;
}

/** Notes a gap, and says at once that there is one: the rest may take long. */
function note(gaps: Gap[], seed: number, gap: number): void {
  gaps.push({ seed, gap });
  if (gap > 1e-9) console.log(`  farm ${seed}: ${percent(gap)} above what is proven or found`);
}

function emptyTally(): Tally {
  return { gaps: [], unproven: [], falseNoPlans: [], faults: [], none: 0, ms: 0 };
}

function print(name: string, { gaps, unproven, falseNoPlans, faults, none, ms }: Tally): void {
  const farms = gaps.length + unproven.length + falseNoPlans.length + none;
  const above = mean(gaps.map(({ gap }) => gap));
  const optimal = gaps.filter(({ gap }) => gap < 1e-9).length;
  console.log(
    `${name}, ${farms} farms: ${gaps.length} with a known optimum or a better plan, ${optimal} at the optimum, mean ${percent(above)}, worst ${worstOf(gaps)}; not proven in time ${unproven.length}, there at most ${worstOf(unproven)}; no plan exists ${none}; false no plan ${falseNoPlans.length}; rules broken ${faults.length}; ${Math.round(ms / Math.max(1, farms))} ms each`,
  );
  if (falseNoPlans.length > 0) miss(`false no plan: ${falseNoPlans.join(' ')}`);
  if (faults.length > 0) miss(`rules broken: ${faults.join('; ')}`);
  if (above > MEAN_GAP) miss(`mean above ${percent(MEAN_GAP)}`);
  if (gaps.some(({ gap }) => gap > WORST_GAP)) miss(`worst above ${percent(WORST_GAP)}`);
}

function worstOf(gaps: readonly Gap[]): string {
  if (gaps.length === 0) return 'none';
  const { seed, gap } = gaps.reduce((worst, other) => (other.gap > worst.gap ? other : worst));
  return `${percent(gap)} (farm ${seed})`;
}

function miss(what: string): void {
  console.log(`  MISSED: ${what}`);
  process.exitCode = 1;
}
