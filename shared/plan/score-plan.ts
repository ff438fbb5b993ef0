import type { Day } from '../core/calendar/day';
import { changePoints } from './change-points';
import { evenShare } from './even-share';
import { groupLoadOn } from './group-weights';
import { isStride } from './is-stride';
import type { PlanProblem, PlanScore, Stay } from './model';
import { DAY_POINTS, MOVE_POINTS, STRIDE_POINTS } from './points';
import { restDue } from './rest-due';
import { stayLoad } from './stay-loads';

const ROUNDING = 1e-9;

/** What one stay adds to the score. */
export interface StayScore {
  /** Rest the paddock had before, in days; undefined where it was never used before, or already stood in. */
  readonly restDays: number | undefined;
  readonly restDueDays: number;
  readonly restShortDays: number;
  readonly overLimitDays: number;
  readonly stride: boolean;
}

/**
 * Score of a plan, lower is better; the model is written down at planRotation. Stays in any order.
 *
 * The rest before a stay in which a group already stands when the plan begins is not counted: it is past.
 */
export function scorePlan(problem: PlanProblem, stays: readonly Stay[]): PlanScore {
  const rows = scoreStays(problem, stays);
  const restShortDays = sum(rows.map((row) => row.restShortDays));
  const overLimitDays = sum(rows.map((row) => row.overLimitDays));
  const strides = rows.filter((row) => row.stride).length;
  const tooLongDays = sum(stays.map((stay) => daysTooLong(problem, stay)));
  const unevenPoints = unevenPointsOf(problem, stays);
  const changed = sum(stays.map(changePoints(problem)));
  const total =
    DAY_POINTS * restShortDays +
    DAY_POINTS * (overLimitDays + tooLongDays) +
    MOVE_POINTS * rows.length +
    STRIDE_POINTS * strides +
    unevenPoints +
    changed;
  return {
    total,
    restShortDays,
    overLimitDays,
    moves: rows.length,
    strides,
    ...(tooLongDays > 0 && { tooLongDays }),
    ...(unevenPoints > 0 && { unevenPoints }),
    ...(changed > 0 && { changePoints: changed }),
  };
}

/** The score of each stay, in the order the stays are given. */
export function scoreStays(problem: PlanProblem, stays: readonly Stay[]): StayScore[] {
  const lastOf = new Map<number, Stay>();
  const leftOf = new Map<number, Day>();
  const scores = new Map<Stay, StayScore>();
  for (const stay of [...stays].sort((a, b) => a.inDay - b.inDay)) {
    const before = lastOf.get(stay.group);
    scores.set(stay, {
      ...restBefore(problem, stay, leftOf.get(stay.paddock)),
      overLimitDays: overLimitDays(problem, stay),
      stride: before !== undefined && isStride(problem.paddocks, before.paddock, stay.paddock),
    });
    lastOf.set(stay.group, stay);
    leftOf.set(stay.paddock, stay.outDay);
  }
  return stays.map((stay) => scores.get(stay)!);
}

function restBefore(problem: PlanProblem, stay: Stay, left: Day | undefined) {
  const paddock = problem.paddocks[stay.paddock]!;
  const standing = problem.groups[stay.group]!.standing;
  const last = left ?? paddock.lastUsed;
  const alreadyThere = standing?.paddock === stay.paddock && standing.since === stay.inDay;
  if (last === undefined || alreadyThere) return { restDays: undefined, restDueDays: 0, restShortDays: 0 };
  const restDueDays = restDue(paddock, problem.rules.rest, last);
  const restDays = stay.inDay - last;
  return { restDays, restDueDays, restShortDays: Math.max(0, restDueDays - restDays) };
}

/** Days of a stay at whose end the liveweight-days since the entry are above the ground limit. */
function overLimitDays(problem: PlanProblem, stay: Stay): number {
  const limit = problem.rules.groundLimit;
  if (limit === undefined) return 0;
  const borne = limit * problem.paddocks[stay.paddock]!.areaSquareMeters;
  let load = 0;
  let over = 0;
  for (let day = stay.inDay; day < stay.outDay; day++) {
    load += groupLoadOn(problem.groups[stay.group]!, day);
    if (load > borne * (1 + ROUNDING)) over += 1;
  }
  return over;
}

/** Days beyond the longest stay, those before the plan begins left out: they are past. */
export function daysTooLong({ rules }: PlanProblem, { inDay, outDay }: Stay): number {
  return Math.max(0, outDay - Math.max(inDay + rules.longestStayDays, rules.seasonStart));
}

function unevenPointsOf(problem: PlanProblem, stays: readonly Stay[]): number {
  const weight = problem.rules.evenness ?? 0;
  const share = weight > 0 ? (problem.evenShare ?? evenShare(problem)) : 0;
  if (share <= 0) return 0;
  return sum(stays.map((stay) => weight * (stayLoad(problem, stay) / share) ** 2));
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
