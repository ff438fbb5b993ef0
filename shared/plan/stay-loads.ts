import { groupLoadOn } from './group-weights';
import type { PlanProblem, Stay } from './model';

/** Liveweight-days per area of one stay, kg·day/m²: head × weight at mid-day summed over its days ÷ area. */
export function stayLoad({ groups, paddocks }: PlanProblem, stay: Stay): number {
  let load = 0;
  for (let day = stay.inDay; day < stay.outDay; day++) load += groupLoadOn(groups[stay.group]!, day);
  return load / paddocks[stay.paddock]!.areaSquareMeters;
}

/** A stay with more than this many times the median load is hard use: the design of this tool (judgement). */
const HARD_USE = 2;

/** How hard the ground is used over all stays; loads in kg·day/m². */
export interface LoadSpread {
  readonly median: number;
  readonly worst: number;
  readonly worstStay: Stay;
  /** Stays with more than twice the median, the hardest first. */
  readonly hard: readonly { readonly stay: Stay; readonly load: number }[];
}

/** Undefined where there is no stay. */
export function loadSpread(problem: PlanProblem, stays: readonly Stay[]): LoadSpread | undefined {
  const rows = stays.map((stay) => ({ stay, load: stayLoad(problem, stay) })).sort((a, b) => b.load - a.load);
  const worst = rows[0];
  if (!worst) return undefined;
  const half = (rows.length - 1) / 2;
  const median = (rows[Math.floor(half)]!.load + rows[Math.ceil(half)]!.load) / 2;
  const hard = rows.filter(({ load }) => load > HARD_USE * median);
  return { median, worst: worst.load, worstStay: worst.stay, hard };
}

/** What one paddock bears over all stays. */
export interface PaddockUse {
  readonly stays: number;
  readonly days: number;
  /** Liveweight-days per area, kg·day/m². */
  readonly load: number;
}

/** For each paddock of the problem, those never used among them. */
export function paddockUse(problem: PlanProblem, stays: readonly Stay[]): PaddockUse[] {
  return problem.paddocks.map((_, p) => {
    const own = stays.filter(({ paddock }) => paddock === p);
    return {
      stays: own.length,
      days: own.reduce((sum, { inDay, outDay }) => sum + outDay - inDay, 0),
      load: own.reduce((sum, stay) => sum + stayLoad(problem, stay), 0),
    };
  });
}
