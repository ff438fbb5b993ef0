import { nameKey } from '../lists/read-list-cell';
import type { Plan, PlanProblem } from '../plan/model';
import { type PaddockUse, paddockUse } from '../plan/stay-loads';
import type { PastRow } from './model';
import { pastLoad } from './past-load';

/** `cover`: the share of the ground that was left covered after its last stay, where that was typed. */
export interface SeasonUse extends PaddockUse {
  readonly cover?: number;
}

/**
 * How hard each paddock of the problem is used over the season: by the plan, and by what happened before it. A move
 * that happened without figures for its load counts with its days alone.
 */
export function seasonUse(problem: PlanProblem, plan: Plan, past: readonly PastRow[]): readonly SeasonUse[] {
  const markOf = (group: string, paddock: string, inDay: number): string =>
    JSON.stringify([nameKey(group), nameKey(paddock), inDay]);
  const planned = new Set(
    plan.stays.map(({ group, paddock, inDay }) =>
      markOf(problem.groups[group]!.name, problem.paddocks[paddock]!.name, inDay),
    ),
  );
  // Where a group stands now is in the plan too.
  const before = past.filter((row) => !planned.has(markOf(row.group, row.paddock, row.inDay)));
  return paddockUse(problem, plan.stays).map((use, p) => {
    const isHere = ({ paddock }: PastRow): boolean => nameKey(paddock) === nameKey(problem.paddocks[p]!.name);
    const covered = past.filter((row) => isHere(row) && row.cover !== undefined);
    const last = [...covered].sort((a, b) => b.inDay - a.inDay)[0];
    const sum = before.filter(isHere).reduce(withPast, use);
    return last?.cover === undefined ? sum : { ...sum, cover: last.cover };
  });
}

function withPast({ stays, days, load }: PaddockUse, row: PastRow): PaddockUse {
  return { stays: stays + 1, days: days + row.outDay - row.inDay, load: load + (pastLoad(row) ?? 0) };
}
