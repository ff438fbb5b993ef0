import { NEVER } from './never';
import type { PlanTables } from './plan-tables';

/** A stay in days after the season start. */
export interface Move {
  readonly g: number;
  readonly p: number;
  readonly inDay: number;
  readonly out: number;
}

/**
 * A plan up to some day: every group has been told where to stand until its own `next` day. Plain arrays, because
 * they are copied faster than typed ones.
 */
export interface SearchState {
  /** Points so far. */
  readonly cost: number;
  /** Least points still to come, rest left aside: the sum of the groups' bounds. */
  readonly bound: number;
  /** Day on which each group must move next, and the paddock it then leaves (paddockCount: it comes in). */
  readonly next: number[];
  readonly at: number[];
  /** For each paddock: the day it was or will be left last, and the first day with its rest. */
  readonly left: number[];
  readonly ready: number[];
  readonly parent: SearchState | undefined;
  readonly move: Move | undefined;
}

/** Before every day of the season, so that the groups that already stand somewhere are placed first. */
const STANDING = -1;

/** Nobody has been placed yet. */
export function emptyState(tables: PlanTables): SearchState {
  return {
    cost: 0,
    bound: 0,
    next: tables.groups.map((group) => (group.standing ? STANDING : group.entry)),
    at: tables.groups.map(() => tables.paddockCount),
    left: tables.problem.paddocks.map(() => -NEVER),
    ready: Array.from(tables.readyAtStart),
    parent: undefined,
    move: undefined,
  };
}

/** The state after one more stay: group `g` goes into paddock `p` until `out`. */
export function afterMove(
  tables: PlanTables,
  state: SearchState,
  g: number,
  p: number,
  out: number,
  cost: number,
  bound: number,
): SearchState {
  const next = state.next.slice();
  const at = state.at.slice();
  const left = state.left.slice();
  const ready = state.ready.slice();
  const inDay = next[g] === STANDING ? tables.groups[g]!.entry : next[g]!;
  next[g] = out;
  at[g] = p;
  left[p] = out;
  ready[p] = tables.ready[p * (tables.days + 1) + out]!;
  return { cost, bound, next, at, left, ready, parent: state, move: { g, p, inDay, out } };
}

/** The stays that led to a state, in the order they were decided. */
export function movesOf(state: SearchState): Move[] {
  const moves: Move[] = [];
  for (let s: SearchState | undefined = state; s?.move; s = s.parent) moves.push(s.move);
  return moves.reverse();
}
