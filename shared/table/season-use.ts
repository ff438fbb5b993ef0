import { nameKey } from '../lists/read-list-cell';
import type { Plan, PlanProblem } from '../plan/model';
import { type PaddockUse, paddockUse } from '../plan/stay-loads';
import type { PastRow } from './model';
import { pastLoad } from './past-load';

/**
 * How hard each paddock of the problem is used over the season: by the plan, and by what happened before it. A move
 * that happened without figures for its load counts with its days alone.
 */
export function seasonUse(problem: PlanProblem, plan: Plan, past: readonly PastRow[]): readonly PaddockUse[] {
  const markOf = (group: string, paddock: string, inDay: number): string =>
    JSON.stringify([nameKey(group), nameKey(paddock), inDay]);
  const planned = new Set(
    plan.stays.map(({ group, paddock, inDay }) =>
      markOf(problem.groups[group]!.name, problem.paddocks[paddock]!.name, inDay),
    ),
  );
  // Where a group stands now is in the plan too.
  const before = past.filter((row) => !planned.has(markOf(row.group, row.paddock, row.inDay)));
  return paddockUse(problem, plan.stays).map((use, p) =>
    before
      .filter(({ paddock }) => nameKey(paddock) === nameKey(problem.paddocks[p]!.name))
      .reduce(withPast, use),
  );
}

function withPast({ stays, days, load }: PaddockUse, row: PastRow): PaddockUse {
  return { stays: stays + 1, days: days + row.outDay - row.inDay, load: load + (pastLoad(row) ?? 0) };
}
