import type { Work } from './beam-search';
import { groupBound, stridePoints } from './group-bound';
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

/**
 * Rounds of raising and lowering prices, and what is left of the length of a step after that many that bring nothing.
 * Judgement: measured on one group, seven very uneven paddocks and 56 days, 60 rounds left plans up to 19 % above the
 * optimum, 1000 none.
 */
const ROUNDS = 1000;
const LAST_STEP = 0.005;
/** One look for prices may take up this share of the effort; judgement. */
const MOST_SHARE = 1 / 6;
/** So many stays are looked at in the time that a state takes for each group and paddock; measured. */
const STAYS_A_STATE = 10;

/** Prices of a stay and the rest after it. */
export function priceOf(
  tables: PlanTables,
  { sums }: PaddockPrices,
  p: number,
  inDay: number,
  out: number,
): number {
  const from = tables.kind[p]! * (tables.days + 1);
  return sums[from + readyDay(tables, p, out)]! - sums[from + Math.max(0, inDay)]!;
}

/** The day by which a paddock is rested that was left on day `out`, at most the last. */
function readyDay({ days, ready }: PlanTables, p: number, out: number): number {
  return Math.min(days, ready[p * (days + 1) + out]!);
}

/** Prices of the days of one paddock from `day` on. */
export function priceFrom(tables: PlanTables, { sums }: PaddockPrices, p: number, day: number): number {
  const from = tables.kind[p]! * (tables.days + 1);
  return sums[from + tables.days]! - sums[from + Math.max(0, Math.min(tables.days, day))]!;
}

/** Prices of all days on which a paddock could be in use: what the bound of the groups is to be lowered by. */
export function priceOfAll(tables: PlanTables, prices: PaddockPrices): number {
  let all = 0;
  for (let p = 0; p < tables.paddockCount; p++) all += priceFrom(tables, prices, p, tables.readyAtStart[p]!);
  return all;
}

/** Finds prices by the subgradient method; `worth` is what a plan at hand costs. What it takes is counted as work. */
export function* paddockPrices(tables: PlanTables, worth: number, work: Work): Steps<PaddockPrices> {
  const { days, paddockCount } = tables;
  const size = paddockCount * (days + 1);
  const prices = new Float64Array(size);
  const capacity = capacityOf(tables);
  let best: PaddockPrices = { sums: new Float64Array(size) };
  let highest = -Infinity;
  let step = 1;
  const states = stayCount(tables) / STAYS_A_STATE / (tables.groupCount + paddockCount);
  const rounds = Math.min(ROUNDS, Math.floor((MOST_SHARE * work.most) / Math.max(1, states)));
  const shorter = LAST_STEP ** (1 / rounds);
  for (let round = 0; round < rounds; round++) {
    work.states += states;
    const sums = sumsOf(tables, prices);
    const cover = new Float64Array(size);
    let value = -priceOfAll(tables, { sums });
    for (let g = 0; g < tables.groupCount; g++) {
      value += coverOf(tables, { sums }, g, cover);
      yield 0;
    }
    if (value > highest) {
      highest = value;
      best = { sums };
    } else step *= shorter;
    const slope = (i: number): number => {
      const over = cover[i]! - capacity[i]!;
      return (prices[i] === 0 && over < 0) || (prices[i] === DAY_POINTS && over > 0) ? 0 : over;
    };
    let norm = 0;
    for (let i = 0; i < size; i++) norm += slope(i) ** 2;
    if (norm === 0 || value >= worth) break;
    for (let i = 0; i < size; i++) {
      const price = prices[i]! + ((step * (worth - value)) / norm) * slope(i);
      prices[i] = Math.max(0, Math.min(DAY_POINTS, price));
    }
  }
  return best;
}

/** Lawful stays of all groups. */
function stayCount({ groups }: PlanTables): number {
  const count = (after: number, first: number): number => Math.max(0, after - first);
  return groups.reduce(
    (sum, { firstOut, afterOut }) =>
      afterOut.reduce((all, after, stay) => all + count(after, firstOut[stay]!), sum),
    0,
  );
}

/** The prices of the days before each day. */
function sumsOf({ days, paddockCount, kind }: PlanTables, prices: Float64Array): Float64Array {
  const sums = new Float64Array(paddockCount * (days + 1));
  for (const k of new Set(kind)) {
    for (let day = 0; day < days; day++) {
      const i = k * (days + 1) + day;
      sums[i + 1] = sums[i]! + prices[i]!;
    }
  }
  return sums;
}

/** Paddocks of a kind that are rested on a day, but for what the plan itself does. */
function capacityOf({ days, paddockCount, kind, readyAtStart }: PlanTables): Float64Array {
  const count = new Float64Array(paddockCount * (days + 1));
  for (let p = 0; p < paddockCount; p++) {
    for (let day = Math.max(0, readyAtStart[p]!); day < days; day++) {
      const i = kind[p]! * (days + 1) + day;
      count[i] = count[i]! + 1;
    }
  }
  return count;
}

/** The best row of stays of one group under the prices: adds its use and rest to `cover`, returns its points. */
function coverOf(tables: PlanTables, prices: PaddockPrices, g: number, cover: Float64Array): number {
  const { entry, end, outs, firstOut, afterOut, standing } = tables.groups[g]!;
  const { days, paddockCount, kind } = tables;
  if (entry >= end) return 0;
  const from = standing ? Math.max(0, Math.min(...standing.outs)) : entry;
  const { left } = groupBound(tables, g, from, end, { points: 0, paddock: -1 }, () => NEVER, prices);
  const onward = (p: number, out: number): number =>
    out >= end ? 0 : left[(out - from) * (paddockCount + 1) + p]!;
  const next = { p: -1, out: -1, points: Infinity };
  const consider = (
    p: number,
    inDay: number,
    stride: number,
    some: ArrayLike<number>,
    first: number,
    after: number,
  ): void => {
    for (let i = first; i < after; i++) {
      const out = some[i]!;
      const stay = stayPoints(tables, g, p, inDay, out) + priceOf(tables, prices, p, inDay, out);
      const points = stride + stay + onward(p, out);
      if (points >= next.points) continue;
      next.p = p;
      next.out = out;
      next.points = points;
    }
  };
  let at = paddockCount;
  let day = from;
  const take = (inDay: number): void => {
    const ready = readyDay(tables, next.p, next.out);
    for (let used = Math.max(0, inDay); used < ready; used++) {
      const i = kind[next.p]! * (days + 1) + used;
      cover[i] = cover[i]! + 1;
    }
    at = next.p;
    day = next.out;
  };
  if (standing) consider(standing.paddock, entry, 0, standing.outs, 0, standing.outs.length);
  const total = standing ? next.points : left[at]!;
  if (total === Infinity) return Infinity;
  if (standing) take(entry);
  while (day < end) {
    next.points = Infinity;
    for (let p = 0; p < paddockCount; p++) {
      if (p === at) continue;
      const stay = p * (days + 1) + day;
      consider(p, day, stridePoints(tables, at, p), outs, firstOut[stay]!, afterOut[stay]!);
    }
    if (next.points === Infinity) return Infinity;
    take(day);
  }
  return total;
}
