import { stridePoints } from './group-bound';
import { NEVER, type PlanTables } from './plan-tables';
import { restAhead } from './rest-ahead';
import { afterMove, type Move, type SearchState } from './search-state';
import { leastToCome, type SearchTask } from './search-task';
import { DAY_POINTS, MOVE_POINTS, stayChoices } from './stay-choices';

/** Candidates looked at closely for each one kept. */
const CLOSE_LOOKS = 3;

interface Candidate {
  readonly parent: SearchState;
  readonly move: Move;
  readonly cost: number;
  readonly bound: number;
  /** cost + bound: never above what the best plan from here will cost. */
  readonly least: number;
}

interface Bucket {
  candidates: Candidate[];
  /** Candidates at or above this are no longer taken. */
  ceiling: number;
}

/** The best end found, with what the rest of the plan after the finish then costs in rest. */
export interface Found {
  readonly state: SearchState;
  readonly total: number;
}

/**
 * Beam search forward over time. `width` states are kept for each (day, group to move); only ends below `limit`
 * are found. `restWeight` is how much the estimate of rest still to be missed counts in the choice.
 */
export function beamSearch(
  tables: PlanTables,
  task: SearchTask,
  width: number,
  limit: number,
  restWeight: number,
): Found | undefined {
  const groupCount = tables.groupCount;
  const { finish } = task;
  const buckets = new Map<number, Bucket>();
  const firstKey = Math.min(...task.start.next) * groupCount;
  let best: Found | undefined;
  let ceiling = limit;

  const offer = (parent: SearchState, move: Move, cost: number, bound: number, otherKey: number): void => {
    const least = cost + bound;
    if (!(least < ceiling - 1e-9)) return;
    const key = keyOf(move.g, move.out, otherKey);
    if (key === NEVER * groupCount) {
      end(afterMove(tables, parent, move, cost, bound));
      return;
    }
    let bucket = buckets.get(key);
    if (!bucket) {
      bucket = { candidates: [], ceiling: Infinity };
      buckets.set(key, bucket);
    }
    if (least >= bucket.ceiling) return;
    bucket.candidates.push({ parent, move, cost, bound, least });
    if (bucket.candidates.length >= 4 * CLOSE_LOOKS * width) trim(bucket, 2 * CLOSE_LOOKS * width);
  };
  const keyOf = (g: number, day: number, otherKey: number): number =>
    day < finish && day < tables.groups[g]!.end ? Math.min(otherKey, day * groupCount + g) : otherKey;
  const otherKeyOf = (state: SearchState, g: number): number => {
    let key = NEVER * groupCount;
    for (let h = 0; h < groupCount; h++) if (h !== g) key = keyOf(h, state.next[h]!, key);
    return key;
  };
  const end = (state: SearchState): void => {
    let total = state.cost + state.bound;
    for (let p = 0; p < tables.paddockCount; p++) {
      total += DAY_POINTS * Math.max(0, state.ready[p]! - task.nextUse[p]!);
    }
    if (total < ceiling - 1e-9) {
      best = { state, total };
      ceiling = total;
    }
  };
  const expand = (state: SearchState, g: number): void =>
    expandState(tables, task, state, g, otherKeyOf(state, g), offer);

  const startKey = keyOf(0, task.start.next[0] ?? NEVER, otherKeyOf(task.start, 0));
  if (startKey === NEVER * groupCount) {
    end(task.start);
    return best;
  }
  expand(task.start, mod(startKey, groupCount));
  for (let key = firstKey; key < finish * groupCount; key++) {
    const bucket = buckets.get(key);
    if (!bucket) continue;
    buckets.delete(key);
    trim(bucket, CLOSE_LOOKS * width);
    const day = Math.floor(key / groupCount);
    for (const state of pick(tables, task, bucket.candidates, day, width, ceiling, restWeight)) {
      expand(state, mod(key, groupCount));
    }
  }
  return best;
}

function mod(a: number, n: number): number {
  return ((a % n) + n) % n;
}

function trim(bucket: Bucket, most: number): void {
  if (bucket.candidates.length <= most) return;
  bucket.candidates.sort((a, b) => a.least - b.least);
  bucket.candidates.length = most;
  bucket.ceiling = bucket.candidates[most - 1]!.least;
}

/** The best different states among the candidates. */
function pick(
  tables: PlanTables,
  task: SearchTask,
  candidates: readonly Candidate[],
  day: number,
  width: number,
  ceiling: number,
  restWeight: number,
): SearchState[] {
  const seen = new Map<number, { state: SearchState; rank: number }>();
  for (const { parent, move, cost, bound, least } of candidates) {
    if (!(least < ceiling - 1e-9)) continue;
    const state = afterMove(tables, parent, move, cost, bound);
    const mark = fingerprint(tables, task, state, day);
    const known = seen.get(mark);
    if (known && known.state.cost <= cost) continue;
    const rank = known
      ? known.rank - known.state.cost + cost
      : least + restWeight * restAhead(tables, task, state);
    seen.set(mark, { state, rank });
  }
  const list = [...seen.values()].sort((a, b) => a.rank - b.rank);
  return list.slice(0, width).map((entry) => entry.state);
}

/** All stays that the group may begin now. */
function expandState(
  tables: PlanTables,
  task: SearchTask,
  state: SearchState,
  g: number,
  otherKey: number,
  offer: (parent: SearchState, move: Move, cost: number, bound: number, otherKey: number) => void,
): void {
  const day = state.next[g]!;
  const from = state.at[g]!;
  const otherBound = state.bound - leastToCome(tables, task, g, day, from);
  const { standing } = tables.groups[g]!;
  const add = (p: number, out: number, points: number): void => {
    const isStanding = from === tables.paddockCount && standing !== undefined;
    const short = isStanding ? 0 : Math.max(0, state.ready[p]! - day);
    const cost = state.cost + points + DAY_POINTS * short + stridePoints(tables, from, p);
    const bound = otherBound + leastToCome(tables, task, g, out, p);
    const inDay = isStanding ? tables.groups[g]!.entry : day;
    offer(state, { g, p, inDay, out }, cost, bound, otherKey);
  };
  if (standing && from === tables.paddockCount) {
    standing.outs.forEach((out, i) => {
      add(standing.paddock, out, MOVE_POINTS + DAY_POINTS * standing.over[i]!);
    });
    return;
  }
  if (day >= task.goal[g]!) {
    const kept = task.kept[g]!.get(day)!;
    if (state.left[kept.move.p]! <= day && kept.move.p !== from) add(kept.move.p, kept.move.out, kept.points);
    return;
  }
  for (const p of distinctPaddocks(tables, task, state, day, from)) {
    const goal = Math.min(task.goal[g]!, task.nextKept(p, day));
    if (goal > day) stayChoices(tables, g, p, day, goal, (out, points) => add(p, out, MOVE_POINTS + points));
  }
}

/** One free paddock of each sort that makes a difference now, the longest rested one. */
function distinctPaddocks(
  tables: PlanTables,
  task: SearchTask,
  state: SearchState,
  day: number,
  from: number,
): Iterable<number> {
  const sorts = new Map<number, number>();
  for (let p = 0; p < tables.paddockCount; p++) {
    if (p === from || state.left[p]! > day) continue;
    const sort = task.kind[p]! * NEVER + Math.max(0, state.ready[p]! - day);
    const other = sorts.get(sort);
    if (other === undefined || state.left[p]! < state.left[other]!) sorts.set(sort, p);
  }
  return sorts.values();
}

/** Equal for states from which the same futures cost the same. */
function fingerprint(tables: PlanTables, task: SearchTask, state: SearchState, day: number): number {
  let a = 0;
  let b = 0;
  const mix = (x: number, y: number, z: number): void => {
    const h = scramble(scramble(scramble(x) ^ y) ^ z);
    a = (a + h) | 0;
    b = (b + scramble(h ^ 0x5bd1e995)) | 0;
  };
  for (let p = 0; p < tables.paddockCount; p++) {
    mix(task.kind[p]!, Math.max(state.ready[p]!, day), Math.max(state.left[p]!, day));
  }
  for (let g = 0; g < tables.groupCount; g++) {
    const at = state.at[g]!;
    mix(-1 - g, state.next[g]!, at === tables.paddockCount ? -1 : task.kind[at]!);
  }
  return (a >>> 0) * 0x200000 + (b & 0x1fffff);
}

function scramble(value: number): number {
  let h = Math.imul(value ^ (value >>> 16), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return h ^ (h >>> 16);
}
