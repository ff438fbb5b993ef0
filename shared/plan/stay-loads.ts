import { groupLoadOn } from './group-weights';
import type { PlanProblem, Stay } from './model';

/** Liveweight-days per area of one stay, kg·day/m²: head × weight at mid-day summed over its days ÷ area. */
export function stayLoad({ groups, paddocks }: PlanProblem, stay: Stay): number {
  let load = 0;
  for (let day = stay.inDay; day < stay.outDay; day++) load += groupLoadOn(groups[stay.group]!, day);
  return load / paddocks[stay.paddock]!.areaSquareMeters;
}

/** How hard the ground is used over all stays. */
export interface LoadSpread {
  /** kg·day/m² of the middle stay, and of the hardest. */
  readonly median: number;
  readonly worst: number;
  readonly worstStay: Stay;
}

/** Undefined where there is no stay. */
export function loadSpread(problem: PlanProblem, stays: readonly Stay[]): LoadSpread | undefined {
  const rows = stays.map((stay) => ({ stay, load: stayLoad(problem, stay) })).sort((a, b) => a.load - b.load);
  const last = rows[rows.length - 1];
  if (!last) return undefined;
  const half = (rows.length - 1) / 2;
  const median = (rows[Math.floor(half)]!.load + rows[Math.ceil(half)]!.load) / 2;
  return { median, worst: last.load, worstStay: last.stay };
}
