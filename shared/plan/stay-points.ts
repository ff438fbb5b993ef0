import type { PlanTables } from './plan-tables';
import { DAY_POINTS, MOVE_POINTS } from './points';

/**
 * Points of one lawful stay by itself: the move, days over the ground limit, days longer than the longest stay, and
 * uneven use. Rest and the way to the paddock are not in it.
 */
export function stayPoints(tables: PlanTables, g: number, p: number, inDay: number, out: number): number {
  const { entry, standing, withinLimit, loads, loadsFrom } = tables.groups[g]!;
  if (standing && inDay === entry) return standing.points[standing.outs.indexOf(out)]!;
  const over = Math.max(0, out - inDay - withinLimit[p * (tables.days + 1) + inDay]!);
  const load = loads[out - loadsFrom]! - loads[inDay - loadsFrom]!;
  return MOVE_POINTS + DAY_POINTS * over + tables.unevenPoints[p]! * load * load;
}
