import { planRotation } from '../../../shared/plan/plan-rotation';
import { checkPlan } from '../../plan/check-plan';
import { keptShare, laterOn, ordinaryFarm, planned } from '../../plan/plan-again';
import { percent } from './print';

/** How many moves stay when a plan is made again: nothing changed, two months later, one paddock shut. */
export function plannedAgain(farms: number): void {
  for (const spare of [2, 1.2]) {
    const later = { kept: 0, of: 0 };
    const shut = { kept: 0, of: 0 };
    let same = 0;
    let faults = 0;
    for (let seed = 1; seed <= farms; seed++) {
      const farm = ordinaryFarm(seed, seed % 2 === 0 ? 0 : 0.25, spare);
      const plan = planned(farm);
      const again = planRotation({ ...farm, before: plan.stays });
      if ('stays' in again && JSON.stringify(again.stays) === JSON.stringify(plan.stays)) same += 1;
      const today = farm.rules.seasonStart + 60;
      const rest = laterOn(farm, plan, today);
      const add = (problem: typeof rest, sum: typeof later, besides?: number): void => {
        const now = planned(problem);
        const { kept, of } = keptShare(plan, now, today, besides);
        sum.kept += kept;
        sum.of += of;
        faults += checkPlan(problem, now.stays).faults.length;
      };
      add(rest, later);
      const closed = plan.stays.find(({ inDay }) => inDay >= today + 10)!.paddock;
      const paddocks = rest.paddocks.map((paddock, p) =>
        p === closed ? { ...paddock, openUntil: today + 5 } : paddock,
      );
      add({ ...rest, paddocks }, shut, closed);
    }
    console.log(
      `planned again, ${spare} times the paddocks that the rest needs, ${farms} farms: nothing changed, the same plan on ${same}; two months later ${percent(later.kept / later.of)} of the moves stay; one paddock shut for the rest of the season ${percent(shut.kept / shut.of)} of the others; rules broken ${faults}`,
    );
  }
}
