import { stridePoints } from './group-bound';
import { isDominated } from './is-dominated';
import { NEVER } from './never';
import { priceFrom } from './paddock-prices';
import type { PlanTables } from './plan-tables';
import { DAY_POINTS } from './points';
import { restAhead } from './rest-ahead';
import { afterMove, type SearchState } from './search-state';
import { type KeptStay, leastToCome, type SearchTask } from './search-task';
import { stateMark } from './state-mark';
import { stayPoints } from './stay-points';
import type { Steps } from './steps';

/** Points closer together than this are the same. */
const SAME = 1e-9;

/** How wide to search, and how much the guess of rest still to be missed counts in the ranking. */
export interface SearchEffort {
  readonly width: number;
  /** Candidates whose rest ahead is guessed, for each state kept. */
  readonly looks: number;
  readonly restWeight: number;
  /** Whether the guess supposes stays past the ground limit. */
  readonly longStays?: boolean;
  /** Of the paddocks that a group may enter, only so many of those that are ready first; with one, all go in turn. */
  readonly turns?: number;
  /** No entry short of rest, and the first end will do. */
  readonly flawless?: boolean;
}

/** States made, to share out effort the same on every machine. */
export interface Work {
  states: number;
  /** The most that are to be made, as far as can be foreseen. */
  readonly most: number;
}

/** An end of the search: the state, and its points with the rest of the kept stays after the finish. */
export interface Found {
  readonly state: SearchState;
  readonly total: number;
}

interface Candidate {
  readonly parent: SearchState;
  readonly p: number;
  readonly out: number;
  readonly cost: number;
  readonly bound: number;
  /** cost + bound, less what the days to come are worth: never above what the best plan from here will cost. */
  readonly least: number;
}

/** The states in which a certain group moves next on a certain day. */
interface Bucket {
  readonly candidates: Candidate[];
  /** Candidates that are no better than this are not taken. */
  ceiling: number;
}

/**
 * Beam search forward over time: the group that moves next is told where to go and for how long, and for each
 * (day, group) the `width` most promising states are kept. Only ends below `limit` points are found.
 */
export function* beamSearch(
  tables: PlanTables,
  task: SearchTask,
  effort: SearchEffort,
  limit: number,
  work: Work,
): Steps<Found | undefined> {
  const { groupCount, paddockCount, groups, days } = tables;
  const closeLooks = effort.looks * effort.width;
  const guess = restAhead(tables, task.goal, effort.longStays === true);
  const sorts = new Map<number, number>();
  let best: Found | undefined;
  let ceiling = limit;
  const worths = new Map<number, number>();
  let worthOf: SearchState | undefined;

  /** Which group moves next and when, as day · groupCount + group; NEVER at the end. `besides` is left out. */
  function nextKey(state: SearchState, besides: number): number {
    let key = NEVER;
    for (let g = 0; g < groupCount; g++) if (g !== besides) key = sooner(key, g, state.next[g]!);
    return key;
  }

  function sooner(key: number, g: number, day: number): number {
    return day >= task.finish || day >= groups[g]!.end ? key : Math.min(key, day * groupCount + g);
  }

  const firstKey = nextKey(task.start, -1);
  const buckets: (Bucket | undefined)[] = [];

  function expand(state: SearchState, g: number, day: number): void {
    const at = state.at[g]!;
    const others = nextKey(state, g);
    const othersBound = state.bound - leastToCome(tables, task, g, day, at);
    const { standing } = groups[g]!;
    if (standing && at === paddockCount) {
      if (state.left[standing.paddock]! > groups[g]!.entry) return;
      for (const [i, out] of standing.outs.entries()) {
        if (effort.flawless && standing.flawed[i]! > 0) continue;
        const cost = state.cost + stayPoints(tables, g, standing.paddock, groups[g]!.entry, out);
        const bound = othersBound + leastToCome(tables, task, g, out, standing.paddock);
        offer(state, g, standing.paddock, out, cost, bound, others);
      }
    } else if (day >= task.goal[g]!) follow(state, g, day, task.kept[g]!.get(day)!, othersBound, others);
    else spread(state, g, day, othersBound, others);
  }

  /** The one kept stay. */
  function follow(
    state: SearchState,
    g: number,
    day: number,
    kept: KeptStay,
    othersBound: number,
    others: number,
  ): void {
    const { p, out } = kept.move;
    if (state.left[p]! > day || p === state.at[g]) return;
    const bound = othersBound + leastToCome(tables, task, g, out, p);
    offer(state, g, p, out, entryCost(state, g, p, day) + kept.points, bound, others);
  }

  /** All stays that the group may begin now. */
  function spread(state: SearchState, g: number, day: number, othersBound: number, others: number): void {
    const { outs, firstOut, afterOut } = groups[g]!;
    const { left, from } = task.bounds[g]!;
    const some = distinctPaddocks(state, state.at[g]!, day);
    for (const p of effort.turns === undefined ? some : firstReady(state, some, g, day, effort.turns)) {
      const until = Math.min(task.goal[g]!, task.nextKept(p, day));
      const entry = entryCost(state, g, p, day);
      const stay = p * (days + 1) + day;
      for (let i = firstOut[stay]!; i < afterOut[stay]!; i++) {
        const out = outs[i]!;
        if (out > until) break;
        const cost = entry + stayPoints(tables, g, p, day, out);
        offer(state, g, p, out, cost, othersBound + left[(out - from) * (paddockCount + 1) + p]!, others);
      }
    }
  }

  function entryCost(state: SearchState, g: number, p: number, day: number): number {
    const short = Math.max(0, state.ready[p]! - day);
    return state.cost + DAY_POINTS * short + stridePoints(tables, state.at[g]!, p);
  }

  /** One free paddock of each sort that makes a difference now, the longest rested one. */
  function distinctPaddocks(state: SearchState, at: number, day: number): Iterable<number> {
    sorts.clear();
    for (let p = 0; p < paddockCount; p++) {
      if (p === at || state.left[p]! > day) continue;
      if (effort.flawless && state.ready[p]! > day) continue;
      const sort = task.kind[p]! * NEVER + Math.max(0, state.ready[p]! - day);
      const other = sorts.get(sort);
      if (other === undefined || state.left[p]! < state.left[other]!) sorts.set(sort, p);
    }
    return sorts.values();
  }

  /** Of some paddocks the first that are ready, of those that the group may enter now. */
  function firstReady(
    state: SearchState,
    some: Iterable<number>,
    g: number,
    day: number,
    most: number,
  ): readonly number[] {
    const { firstOut, afterOut } = groups[g]!;
    const lawful = [...some].filter((p) => {
      const stay = p * (days + 1) + day;
      return firstOut[stay]! < afterOut[stay]!;
    });
    return lawful.sort((a, b) => state.ready[a]! - state.ready[b]!).slice(0, most);
  }

  function offer(
    parent: SearchState,
    g: number,
    p: number,
    out: number,
    cost: number,
    bound: number,
    others: number,
  ): void {
    const key = sooner(others, g, out);
    const least = cost + bound - (key === NEVER ? 0 : worth(parent, p, out, Math.floor(key / groupCount)));
    if (!(least < ceiling - SAME)) return;
    if (key === NEVER) {
      end(afterMove(tables, parent, g, p, out, cost, bound));
      return;
    }
    let bucket = buckets[key - firstKey];
    if (!bucket) {
      bucket = { candidates: [], ceiling: Infinity };
      buckets[key - firstKey] = bucket;
    }
    if (least >= bucket.ceiling) return;
    bucket.candidates.push({ parent, p, out, cost, bound, least });
    if (bucket.candidates.length >= 2 * closeLooks) trim(bucket);
  }

  /** What the days from `day` on are worth that no stay before covers, the offered one into `p` among them. */
  function worth(parent: SearchState, p: number, out: number, day: number): number {
    const { prices } = task;
    if (!prices) return 0;
    if (worthOf !== parent) {
      worthOf = parent;
      worths.clear();
    }
    let all = worths.get(day);
    if (all === undefined) {
      all = 0;
      for (let q = 0; q < paddockCount; q++)
        all += priceFrom(tables, prices, q, Math.max(parent.ready[q]!, day));
      worths.set(day, all);
    }
    const ready = tables.ready[p * (days + 1) + out]!;
    const before = priceFrom(tables, prices, p, Math.max(parent.ready[p]!, day));
    return all - before + priceFrom(tables, prices, p, Math.max(ready, day));
  }

  function trim(bucket: Bucket): void {
    bucket.candidates.sort((a, b) => a.least - b.least);
    if (bucket.candidates.length < closeLooks) return;
    bucket.candidates.length = closeLooks;
    bucket.ceiling = bucket.candidates[closeLooks - 1]!.least;
  }

  function end(state: SearchState): void {
    const total = endPoints(tables, task, state);
    if (total >= ceiling - SAME) return;
    best = { state, total };
    ceiling = total;
  }

  /** The most promising different states among the candidates. */
  function pick(bucket: Bucket, day: number): SearchState[] {
    const seen = new Map<number, { state: SearchState; rank: number }>();
    for (const { parent, p, out, cost, bound, least } of bucket.candidates) {
      if (least >= ceiling - SAME) break;
      const state = afterMove(tables, parent, mover(parent), p, out, cost, bound);
      const mark = stateMark(tables, task.kind, state, day);
      if (seen.has(mark)) continue;
      work.states += 1;
      seen.set(mark, { state, rank: least + effort.restWeight * guess(state) });
    }
    const ranked = [...seen.values()].sort((a, b) => a.rank - b.rank);
    const picked: SearchState[] = [];
    for (const { state } of ranked) {
      if (picked.length >= effort.width) break;
      if (!picked.some((other) => isDominated(state, other, day))) picked.push(state);
    }
    return picked;
  }

  function mover(state: SearchState): number {
    const key = nextKey(state, -1);
    return key - Math.floor(key / groupCount) * groupCount;
  }

  if (firstKey === NEVER) end(task.start);
  else {
    const day = Math.floor(firstKey / groupCount);
    expand(task.start, firstKey - day * groupCount, day);
  }
  for (let i = 0; i < buckets.length; i++) {
    const bucket = buckets[i];
    if (!bucket) continue;
    buckets[i] = undefined;
    yield work.states / work.most;
    trim(bucket);
    const day = Math.floor((firstKey + i) / groupCount);
    if (best && effort.flawless) break;
    for (const state of pick(bucket, day)) expand(state, firstKey + i - day * groupCount, day);
  }
  return best;
}

/** Points of a state at the finish, with those that the kept stays after it lose through it. */
export function endPoints(tables: PlanTables, task: SearchTask, state: SearchState): number {
  let points = state.cost;
  for (let g = 0; g < tables.groupCount; g++) {
    points += leastToCome(tables, task, g, state.next[g]!, state.at[g]!);
  }
  for (let p = 0; p < tables.paddockCount; p++) {
    points += DAY_POINTS * Math.max(0, state.ready[p]! - task.nextUse[p]!);
  }
  return points;
}
