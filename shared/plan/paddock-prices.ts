import { groupBound } from './group-bound';
import { NEVER } from './never';
import type { PlanTables } from './plan-tables';
import { DAY_POINTS } from './points';
import { stayPoints } from './stay-points';
import type { Steps } from './steps';

/**
 * What a day of a paddock is worth while it is in use or resting, from 0 to the points of a day short of rest. With
 * such prices each group planned by itself leaves the contested paddocks to whom they help most, and what all groups
 * cost so, less the prices of all days, is never more than the best plan costs (Lagrangian relaxation: two uses that
 * overlap by a day, rest included, cost a day's points, which is no less than its price).
 *
 * sums[kind · (days + 1) + day]: prices of the days before `day`; paddocks of one kind have one price.
 */
export interface PaddockPrices {
  readonly sums: Float64Array;
}

/** Rounds of raising and lowering prices; judgement: measured, more changes little. */
const ROUNDS = 60;
/** Choices of (group, paddock, day, length) that one look for prices may go through; judgement. */
const MOST_CHOICES = 20_000_000;

/** Prices of a stay and the rest after it. */
export function priceOf(
  tables: PlanTables,
  { sums }: PaddockPrices,
  p: number,
  inDay: number,
  out: number,
): number {
  const from = tables.kind[p]! * (tables.days + 1);
  const ready = Math.min(tables.days, tables.ready[p * (tables.days + 1) + out]!);
  return sums[from + ready]! - sums[from + Math.max(0, inDay)]!;
}

/** Prices of the days of one paddock from `day` on. */
export function priceFrom(tables: PlanTables, { sums }: PaddockPrices, p: number, day: number): number {
  const from = tables.kind[p]! * (tables.days + 1);
  return sums[from + tables.days]! - sums[from + Math.max(0, Math.min(tables.days, day))]!;
}

/** Finds prices by the subgradient method; `worth` is what a plan at hand costs. */
export function* paddockPrices(tables: PlanTables, worth: number): Steps<PaddockPrices> {
  const { days, paddockCount, kind } = tables;
  const size = paddockCount * (days + 1);
  const prices = new Float64Array(size);
  const capacity = capacityOf(tables);
  let best: PaddockPrices = { sums: new Float64Array(size) };
  let highest = -Infinity;
  let step = 1;
  const longest = tables.problem.rules.longestStayDays;
  const choices = tables.groupCount * paddockCount * days * longest;
  const rounds = Math.min(ROUNDS, Math.floor(MOST_CHOICES / Math.max(1, choices)));
  for (let round = 0; round < rounds; round++) {
    const sums = sumsOf(tables, prices);
    const cover = new Float64Array(size);
    let value = 0;
    for (let p = 0; p < paddockCount; p++) value -= priceFrom(tables, { sums }, p, tables.readyAtStart[p]!);
    for (let g = 0; g < tables.groupCount; g++) {
      value += coverOf(tables, { sums }, g, cover);
      yield 0;
    }
    if (value > highest) {
      highest = value;
      best = { sums };
    } else step *= 0.9;
    let norm = 0;
    for (let i = 0; i < size; i++) norm += slope(i) ** 2;
    if (norm === 0 || value >= worth) break;
    for (let i = 0; i < size; i++) {
      const price = prices[i]! + ((step * (worth - value)) / norm) * slope(i);
      prices[i] = Math.max(0, Math.min(DAY_POINTS, price));
    }
    function slope(i: number): number {
      const over = cover[i]! - capacity[i]!;
      return (prices[i] === 0 && over < 0) || (prices[i] === DAY_POINTS && over > 0) ? 0 : over;
    }
  }
  return best;

  function sumsOf({ kind: kinds }: PlanTables, of: Float64Array): Float64Array {
    const sums = new Float64Array(size);
    for (const k of new Set(kinds)) {
      for (let day = 0; day < days; day++) {
        const i = k * (days + 1) + day;
        sums[i + 1] = sums[i]! + of[i]!;
      }
    }
    return sums;
  }

  /** Paddocks of a kind that are rested on a day, but for what the plan itself does. */
  function capacityOf({ readyAtStart }: PlanTables): Float64Array {
    const count = new Float64Array(size);
    for (let p = 0; p < paddockCount; p++) {
      for (let day = Math.max(0, readyAtStart[p]!); day < days; day++) {
        const i = kind[p]! * (days + 1) + day;
        count[i] = count[i]! + 1;
      }
    }
    return count;
  }
}

/** The best row of stays of one group under the prices: adds its use and rest to `cover`, returns its points. */
function coverOf(tables: PlanTables, prices: PaddockPrices, g: number, cover: Float64Array): number {
  const { entry, end, outs, firstOut, afterOut, standing } = tables.groups[g]!;
  const { days, paddockCount, kind } = tables;
  if (entry >= end) return 0;
  const points = (p: number, inDay: number, out: number): number =>
    stayPoints(tables, g, p, inDay, out) + priceOf(tables, prices, p, inDay, out);
  const from = standing ? Math.max(0, Math.min(...standing.outs)) : entry;
  const width = paddockCount + 1;
  const { left } = groupBound(tables, g, from, end, { points: 0, paddock: -1 }, () => NEVER, prices);
  const after = (p: number, out: number): number => (out >= end ? 0 : left[(out - from) * width + p]!);
  const take = (p: number, inDay: number, out: number): void => {
    const ready = Math.min(days, tables.ready[p * (days + 1) + out]!);
    for (let day = Math.max(0, inDay); day < ready; day++) {
      const i = kind[p]! * (days + 1) + day;
      cover[i] = cover[i]! + 1;
    }
  };
  let total = 0;
  let at = paddockCount;
  let day = from;
  if (standing) {
    const p = standing.paddock;
    let bestOut = -1;
    total = Infinity;
    for (const out of standing.outs) {
      const value = points(p, entry, out) + after(p, out);
      if (value < total) {
        total = value;
        bestOut = out;
      }
    }
    if (bestOut < 0) return Infinity;
    take(p, entry, bestOut);
    at = p;
    day = bestOut;
  } else total = left[at]!;
  while (day < end && total < Infinity) {
    let least = Infinity;
    let nextP = -1;
    let nextOut = -1;
    for (let p = 0; p < paddockCount; p++) {
      if (p === at) continue;
      const stay = p * (days + 1) + day;
      const stride = at < paddockCount && tables.strides[at * paddockCount + p] ? 0.5 : 0;
      for (let i = firstOut[stay]!; i < afterOut[stay]!; i++) {
        const value = stride + points(p, day, outs[i]!) + after(p, outs[i]!);
        if (value >= least) continue;
        least = value;
        nextP = p;
        nextOut = outs[i]!;
      }
    }
    if (nextP < 0) return Infinity;
    take(nextP, day, nextOut);
    at = nextP;
    day = nextOut;
  }
  return total;
}
