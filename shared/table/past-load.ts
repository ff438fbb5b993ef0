import { groupLoadOn } from '../plan/group-weights';
import type { PlanGroup } from '../plan/model';
import type { PastRow } from './model';

/**
 * Liveweight-days per area of a move that happened, kg·day/m², by the figures of its row: mean head × weight at mid-day,
 * summed over its days, ÷ area, as the planner counts it. Undefined where a figure is missing.
 */
export function pastLoad(row: PastRow): number | undefined {
  const { startWeightKg, growthDays, areaSquareMeters, dailyGainKg } = row;
  const head = row.meanHead ?? row.head;
  if (head === undefined || startWeightKg === undefined || growthDays === undefined || !areaSquareMeters)
    return undefined;
  const group: PlanGroup = {
    name: row.group,
    head,
    weightKg: startWeightKg,
    weighedOn: row.inDay - growthDays,
    from: row.inDay,
    ...(dailyGainKg !== undefined && { dailyGainKg }),
  };
  let load = 0;
  for (let day = row.inDay; day < row.outDay; day++) load += groupLoadOn(group, day);
  return load / areaSquareMeters;
}
