import { groupSpan } from './group-span';
import { groupLoadOn } from './group-weights';
import type { PlanProblem } from './model';
import { restDue } from './rest-due';

/** Any paddock that follows the farm's rest rule. */
const PLAIN = { name: '', areaSquareMeters: 1 };

/**
 * What every paddock would bear in one stay if each round were shared out by area, in kg·day/m²:
 *
 *   mean liveweight on the farm × mean rest due × n / max(1, n − g) ÷ area of all paddocks
 *
 * with n paddocks and g groups on the mean, over the days of the season; a rest of less than a day counts as one.
 * A paddock is used again after n / (n − g) rests, and in that time the farm's liveweight goes once over its area.
 * Design of this tool (judgement): no published limit for one stay was found. 0 where nobody is in the rotation.
 */
export function evenShare({ paddocks, groups, rules }: PlanProblem): number {
  const days = rules.seasonEnd - rules.seasonStart;
  const area = paddocks.reduce((sum, paddock) => sum + paddock.areaSquareMeters, 0);
  if (days <= 0 || area <= 0) return 0;
  let weightDays = 0;
  let groupDays = 0;
  for (const group of groups) {
    const { entry, end } = groupSpan(group, rules);
    for (let day = Math.max(entry, rules.seasonStart); day < end; day++) {
      weightDays += groupLoadOn(group, day);
      groupDays += 1;
    }
  }
  let restDays = 0;
  const n = paddocks.length;
  const own = paddocks.filter(({ restDays: days }) => days !== undefined);
  // The farm's rule once a day: worked out from forage it takes long.
  for (let day = rules.seasonStart; day < rules.seasonEnd; day++) restDays += restDue(PLAIN, rules.rest, day);
  restDays *= n - own.length;
  for (const paddock of own) restDays += days * restDue(paddock, rules.rest, rules.seasonStart);
  const rest = Math.max(1, restDays / days / n);
  return ((weightDays / days) * rest * n) / Math.max(1, n - groupDays / days) / area;
}
