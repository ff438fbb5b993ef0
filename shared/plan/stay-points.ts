import type { PlanTables } from './plan-tables';
import { DAY_POINTS, MOVE_POINTS } from './points';

/**
 * Points of one lawful stay by itself: the move, days over the ground limit, days longer than the longest stay, and
 * uneven use and change. Rest and the way to the paddock are not in it.
 */
export function stayPoints(tables: PlanTables, g: number, p: number, inDay: number, out: number): number {
  const { loads, loadsFrom, entryPoints, entry, standing } = tables.groups[g]!;
  const load = loads[out - loadsFrom]! - loads[inDay - loadsFrom]!;
  const flawed = flawedDays(tables, g, p, inDay, out);
  const changed =
    entryPoints && !(standing && inDay === entry) ? entryPoints[p * (tables.days + 1) + inDay]! : 0;
  return MOVE_POINTS + DAY_POINTS * flawed + tables.unevenPoints[p]! * load * load + changed;
}

/** Days of a stay over the ground limit, and days ahead that it is longer than the longest. */
export function flawedDays(tables: PlanTables, g: number, p: number, inDay: number, out: number): number {
  const { entry, standing, withinLimit } = tables.groups[g]!;
  if (standing && inDay === entry) return standing.flawed[standing.outs.indexOf(out)]!;
  const over = Math.max(0, out - inDay - withinLimit[p * (tables.days + 1) + inDay]!);
  return over + Math.max(0, out - inDay - tables.problem.rules.longestStayDays);
}
