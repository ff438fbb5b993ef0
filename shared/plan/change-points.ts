import type { PlanProblem, Stay } from './model';
import { LATE_CHANGE_POINTS, SOON_CHANGE_POINTS, SOON_DAYS } from './points';

/**
 * Makes a function that gives the points of a stay for not being one of the plan before: another group, paddock or day
 * of the move. The stay in which a group already stands is none; without a plan before nothing changes.
 */
export function changePoints({
  before,
  groups,
  rules,
}: PlanProblem): (stay: Pick<Stay, 'group' | 'paddock' | 'inDay'>) => number {
  if (!before) return () => 0;
  const key = ({ group, paddock, inDay }: Pick<Stay, 'group' | 'paddock' | 'inDay'>): string =>
    `${group}/${paddock}/${inDay}`;
  const known = new Set(before.map(key));
  return (stay) => {
    if (groups[stay.group]!.standing?.since === stay.inDay || known.has(key(stay))) return 0;
    return stay.inDay < rules.seasonStart + SOON_DAYS ? SOON_CHANGE_POINTS : LATE_CHANGE_POINTS;
  };
}
