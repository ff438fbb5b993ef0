import type { PlanProblem } from '../../../shared/plan/model';
import { planRotation } from '../../../shared/plan/plan-rotation';
import { checkPlan } from '../../plan/check-plan';
import { keptShare, laterOn, ordinaryFarm, planned } from '../../plan/plan-again';
import { planOptimum } from '../../plan/plan-optimum';
import { percent } from './print';

/** Moves of a plan that are in the next one. */
class Kept {
  farms = 0;
  #kept = 0;
  #of = 0;
  add({ kept, of }: ReturnType<typeof keptShare>): void {
    this.farms += 1;
    this.#kept += kept;
    this.#of += of;
  }
  toString(): string {
    return percent(this.#kept / Math.max(1, this.#of));
  }
}

/**
 * How many moves stay when a plan is made again: nothing changed, two months later, one paddock shut. Of the last, where
 * the farm is small enough for HiGHS, how many stay in the plan of fewest points, changed moves counted.
 */
export async function plannedAgain(farms: number, seconds: number): Promise<void> {
  for (const spare of [2, 1.2]) {
    const [later, shut, shutHere, least] = [new Kept(), new Kept(), new Kept(), new Kept()];
    let same = 0;
    let faults = 0;
    for (let seed = 1; seed <= farms; seed++) {
      const farm = ordinaryFarm(seed, seed % 2 === 0 ? 0 : 0.25, spare);
      const plan = planned(farm);
      const again = planRotation({ ...farm, before: plan.stays });
      if ('stays' in again && JSON.stringify(again.stays) === JSON.stringify(plan.stays)) same += 1;
      const today = farm.rules.seasonStart + 60;
      const rest = laterOn(farm, plan, today);
      const share = (problem: PlanProblem, besides?: number) => {
        const now = planned(problem);
        faults += checkPlan(problem, now.stays).faults.length;
        return keptShare(plan, now, today, besides);
      };
      later.add(share(rest));
      const closed = plan.stays.find(({ inDay }) => inDay >= today + 10)!.paddock;
      const paddocks = rest.paddocks.map((paddock, p) =>
        p === closed ? { ...paddock, openUntil: today + 5 } : paddock,
      );
      const kept = share({ ...rest, paddocks }, closed);
      shut.add(kept);
      if (farm.groups.length > 2) continue;
      const optimum = await planOptimum({ ...rest, paddocks }, seconds);
      if (typeof optimum === 'string' || !('total' in optimum)) continue;
      shutHere.add(kept);
      least.add(keptShare(plan, optimum, today, closed));
    }
    console.log(
      `planned again, ${spare} times the paddocks that the rest needs, ${farms} farms: nothing changed, the same plan on ${same}; two months later ${later} of the moves stay; one paddock shut for the rest of the season ${shut} of the others; on ${least.farms} farms that are solved exactly ${shutHere}, in the plan of fewest points ${least}; rules broken ${faults}`,
    );
  }
}
