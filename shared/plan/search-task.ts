import { type GroupBound, groupBound, stridePoints } from './group-bound';
import { NEVER } from './never';
import { type PaddockPrices, priceOf } from './paddock-prices';
import type { PlanTables } from './plan-tables';
import { STRIDE_POINTS } from './points';
import { emptyState, type Move, type SearchState } from './search-state';
import { stayPoints } from './stay-points';
import type { Steps } from './steps';

/**
 * What one search is to decide: the stays of some groups between two days, everything else kept. The whole
 * season is the task that keeps nothing.
 */
export interface SearchTask {
  readonly start: SearchState;
  /** Every stay that begins before this day is decided or kept in the search. */
  readonly finish: number;
  /** Day from which each group follows its kept stays. */
  readonly goal: readonly number[];
  /** Kept stays by in day, for each group. */
  readonly kept: readonly ReadonlyMap<number, KeptStay>[];
  readonly bounds: readonly (GroupBound | undefined)[];
  /** First day on or after `day` on which a kept stay begins in a paddock. */
  readonly nextKept: (p: number, day: number) => number;
  /** First use of each paddock at or after the finish. */
  readonly nextUse: Int32Array;
  /** The bounds hold these, and what all days to come are worth is to be taken off; only where nothing is kept. */
  readonly prices?: PaddockPrices;
  /** Kind of paddock, as in the tables, but its own kind for one that a kept stay uses. */
  readonly kind: Int32Array;
}

export interface KeptStay {
  readonly move: Move;
  /** Points of this stay by itself. */
  readonly points: number;
  /** The same for this and all later kept stays before the finish, strides between them included. */
  readonly pointsOn: number;
}

/** Decide everything. */
export function wholeTask(tables: PlanTables, prices?: PaddockPrices): Steps<SearchTask> {
  return searchTask(
    tables,
    [],
    emptyState(tables),
    tables.days,
    tables.groups.map((group) => group.end),
    prices,
  );
}

/**
 * The task to decide, from `start` on, the stays of each group up to its goal; `kept` are the stays of the
 * plan that begin at or after the goal of their group.
 */
export function* searchTask(
  tables: PlanTables,
  kept: readonly Move[],
  start: SearchState,
  finish: number,
  goal: readonly number[],
  prices?: PaddockPrices,
): Steps<SearchTask> {
  const keptStays = byNumber(kept, tables.groupCount, (move) => move.g).map((own) =>
    keptChain(tables, own, finish),
  );
  const uses = byNumber(kept, tables.paddockCount, (move) => move.p).map((own) =>
    own.map((move) => move.inDay).sort((a, b) => a - b),
  );
  const nextKept = (p: number, day: number): number => firstFrom(uses[p]!, day) ?? NEVER;
  const bounds: (GroupBound | undefined)[] = [];
  for (const g of tables.groups.keys()) {
    bounds.push(boundOf(g));
    yield 0;
  }
  function boundOf(g: number): GroupBound | undefined {
    const from = Math.max(0, start.next[g]!);
    if (tables.groups[g]!.standing && start.at[g] === tables.paddockCount) return standingBound(g, goal[g]!);
    return from >= goal[g]! ? undefined : freeBound(g, from, goal[g]!);
  }
  function freeBound(g: number, from: number, until: number): GroupBound {
    const next = keptStays[g]!.get(until);
    const tail = { points: next ? next.pointsOn : 0, paddock: next ? next.move.p : -1 };
    return groupBound(tables, g, from, until, tail, nextKept, prices);
  }
  function standingBound(g: number, until: number): GroupBound | undefined {
    const outs = tables.groups[g]!.standing!.outs;
    const from = Math.max(0, Math.min(...outs));
    return outs.length === 0 || from > until ? undefined : freeBound(g, from, until);
  }
  const task = {
    ...(prices && { prices }),
    start,
    finish,
    goal,
    kept: keptStays,
    bounds,
    nextKept,
    nextUse: Int32Array.from(uses, (days) => firstFrom(days, finish) ?? NEVER),
    kind: Int32Array.from(tables.kind, (kind, p) => (uses[p]!.length > 0 ? tables.paddockCount + p : kind)),
  };
  const bound = tables.groups.reduce(
    (sum, _, g) => sum + leastToCome(tables, task, g, start.next[g]!, start.at[g]!),
    0,
  );
  return { ...task, start: { ...start, bound } };
}

/** Least points to come for a group that moves on `day` out of paddock `left`, rest left aside. */
export function leastToCome(
  tables: PlanTables,
  task: Omit<SearchTask, 'start'>,
  g: number,
  day: number,
  left: number,
): number {
  const { standing, end } = tables.groups[g]!;
  if (day >= end) return 0;
  if (standing && left === tables.paddockCount) {
    return standing.outs.reduce((least, out) => {
      const inDay = tables.groups[g]!.entry;
      const price = task.prices ? priceOf(tables, task.prices, standing.paddock, inDay, out) : 0;
      const points = price + stayPoints(tables, g, standing.paddock, inDay, out);
      return Math.min(least, points + leastToCome(tables, task, g, out, standing.paddock));
    }, Infinity);
  }
  if (day < task.goal[g]!) {
    const bound = task.bounds[g]!;
    return bound.left[(day - bound.from) * (tables.paddockCount + 1) + left]!;
  }
  const next = task.kept[g]!.get(day);
  if (!next || next.move.p === left) return Infinity;
  return next.pointsOn + stridePoints(tables, left, next.move.p);
}

function byNumber(moves: readonly Move[], count: number, numberOf: (move: Move) => number): Move[][] {
  const lists: Move[][] = Array.from({ length: count }, () => []);
  for (const move of moves) lists[numberOf(move)]!.push(move);
  return lists;
}

/** The first of some rising days that is not before `day`. */
function firstFrom(days: readonly number[], day: number): number | undefined {
  let low = 0;
  let high = days.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (days[middle]! < day) low = middle + 1;
    else high = middle;
  }
  return days[low];
}

function keptChain(tables: PlanTables, moves: readonly Move[], finish: number): Map<number, KeptStay> {
  const chain = new Map<number, KeptStay>();
  let later: KeptStay | undefined;
  for (const move of [...moves].sort((a, b) => b.inDay - a.inDay)) {
    const points = stayPoints(tables, move.g, move.p, move.inDay, move.out);
    const stride = later && tables.strides[move.p * tables.paddockCount + later.move.p] ? STRIDE_POINTS : 0;
    const pointsOn = move.inDay >= finish ? 0 : points + stride + (later?.pointsOn ?? 0);
    later = { move, points, pointsOn };
    chain.set(move.inDay, later);
  }
  return chain;
}
