import { type PaddockPrices, priceOf } from './paddock-prices';
import type { PlanTables } from './plan-tables';
import { STRIDE_POINTS } from './points';
import { stayPoints } from './stay-points';

/** For one group: the least points still to come, others and rest left aside. */
export interface GroupBound {
  /** [(day − from) · (paddockCount + 1) + paddock left]; the last column is for a group that comes in. */
  readonly left: Float64Array;
  readonly from: number;
}

/** How a group goes on after its free days: the points that then follow, and the paddock entered first. */
export interface Tail {
  readonly points: number;
  /** −1 where the group's time is over. */
  readonly paddock: number;
}

/**
 * Least points from each day on for a group that leaves each paddock that day, by dynamic programming backwards
 * over the days from `goal` to `from`. Rest and the other groups are left aside, so it is never too high; it is
 * Infinity where the group cannot go on at all.
 *
 * With `prices` each stay costs those of its days, rest included, besides.
 *
 * `free(paddock, day)` is the day by which a group that enters then must be out again.
 */
export function groupBound(
  tables: PlanTables,
  g: number,
  from: number,
  goal: number,
  tail: Tail,
  free: (paddock: number, day: number) => number,
  prices?: PaddockPrices,
): GroupBound {
  const width = tables.paddockCount + 1;
  const left = new Float64Array((goal - from + 1) * width).fill(Infinity);
  const entering = new Float64Array(tables.paddockCount);
  for (let p = 0; p < width; p++) {
    if (p !== tail.paddock)
      left[(goal - from) * width + p] = tail.points + stridePoints(tables, p, tail.paddock);
  }
  for (let day = goal - 1; day >= from; day--) {
    for (let p = 0; p < tables.paddockCount; p++) {
      entering[p] = leastFromStay(tables, g, p, day, Math.min(goal, free(p, day)), left, from, prices);
    }
    leastFromEach(tables, entering, left.subarray((day - from) * width, (day - from + 1) * width));
  }
  return { left, from };
}

/** The least of one stay and what follows it. */
function leastFromStay(
  tables: PlanTables,
  g: number,
  p: number,
  day: number,
  until: number,
  left: Float64Array,
  from: number,
  prices: PaddockPrices | undefined,
): number {
  const { outs, firstOut, afterOut } = tables.groups[g]!;
  const stay = p * (tables.days + 1) + day;
  const width = tables.paddockCount + 1;
  let least = Infinity;
  for (let i = firstOut[stay]!; i < afterOut[stay]!; i++) {
    const out = outs[i]!;
    if (out > until) break;
    const after = left[(out - from) * width + p]!;
    if (after >= least) continue;
    const price = prices ? priceOf(tables, prices, p, day, out) : 0;
    least = Math.min(least, stayPoints(tables, g, p, day, out) + price + after);
  }
  return least;
}

export function stridePoints(tables: PlanTables, left: number, entered: number): number {
  if (left === tables.paddockCount || entered < 0) return 0;
  return tables.strides[left * tables.paddockCount + entered] ? STRIDE_POINTS : 0;
}

/** For each paddock left: the least of entering any other one. */
function leastFromEach(tables: PlanTables, entering: Float64Array, into: Float64Array): void {
  let best = -1;
  let second = Infinity;
  for (let p = 0; p < entering.length; p++) {
    if (best < 0 || entering[p]! < entering[best]!) {
      if (best >= 0) second = entering[best]!;
      best = p;
    } else if (entering[p]! < second) second = entering[p]!;
  }
  const least = best < 0 ? Infinity : entering[best]!;
  for (let p = 0; p <= entering.length; p++) {
    const bound = p === best ? second : least;
    into[p] =
      !tables.anyStride || p === entering.length ? bound : leastWithStrides(tables, entering, p, bound);
  }
}

function leastWithStrides(tables: PlanTables, entering: Float64Array, left: number, bound: number): number {
  let least = bound + STRIDE_POINTS;
  for (const p of tables.noStride[left]!) least = Math.min(least, entering[p]!);
  return least;
}
