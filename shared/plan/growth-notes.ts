import { dayWords } from '../core/calendar/day-words';
import { NRC_HEAVIEST_KG } from '../tables/nrc-growth';
import { groupWeightOn } from './group-weights';
import type { Plan, PlanGroup, PlanProblem, Stay } from './model';

/**
 * A sentence for each group without a daily gain that outgrows the growth table before its last move: the plan
 * goes on with the last band's gain, but the table's weight and feed cells refuse from there.
 */
export function growthNotes(problem: PlanProblem, plan: Plan): string[] {
  return problem.groups.flatMap((group, g) => {
    const stays = plan.stays.filter((stay) => stay.group === g);
    const first = group.dailyGainKg === undefined ? stays.find((stay) => outgrown(group, stay)) : undefined;
    return first ? [sentence(group, first)] : [];
  });
}

function outgrown(group: PlanGroup, stay: Stay): boolean {
  return groupWeightOn(group, stay.outDay) > NRC_HEAVIEST_KG;
}

function sentence(group: PlanGroup, stay: Stay): string {
  return `“${group.name}” outgrows the growth table (135 kg, 298 lb) in the stay from ${dayWords(stay.inDay)}. Type its daily gain into the group list, or an earlier day to leave: weight and feed cannot be worked out from there.`;
}
