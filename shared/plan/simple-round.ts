import { stridePoints } from './group-bound';
import type { GroupTable } from './group-table';
import type { PlanTables } from './plan-tables';
import type { Move } from './search-state';
import { stayPoints } from './stay-points';
import type { Steps } from './steps';

/** A row of moves so far, the last one first. */
interface Chain {
  readonly points: number;
  readonly day: number;
  readonly moves: readonly Move[];
  readonly before: Chain | undefined;
}

/**
 * The simplest plan there is: all groups move on the same days, each on to the next paddock of one round, evenly
 * spaced in it. Groups that follow each other in time share a place in the round. The days are chosen by dynamic
 * programming over (day, turn of the round), for the least points of the stays; rest is left aside. The one plan that
 * a search group by group may miss where there is no paddock to spare. Undefined where the round does not fit.
 */
export function* simpleRound(tables: PlanTables): Steps<readonly Move[] | undefined> {
  const { groups, paddockCount } = tables;
  const places = placesOf(tables);
  const ring = places && ringOf(tables, places);
  if (!ring) return undefined;
  const active = groups.flatMap(({ entry, end }, g) => (entry < end ? [g] : []));
  const finish = Math.max(0, ...active.map((g) => groups[g]!.end));
  const days = [...new Set(active.flatMap((g) => [...groups[g]!.outs]))].filter((day) => day > 0);
  days.sort((a, b) => a - b);
  const furthest = Math.max(1, ...active.map((g) => longestStayOf(groups[g]!, tables.days)));
  const first: Chain = { points: 0, day: 0, moves: [], before: undefined };
  const best = new Map<number, Chain>([[0, first]]);
  for (const from of [0, ...days]) {
    yield 0;
    for (let turn = 0; turn < paddockCount; turn++) {
      const chain = best.get(from * paddockCount + turn);
      if (!chain) continue;
      if (from === finish) continue;
      for (const to of days) {
        if (to <= from) continue;
        if (to - from > furthest) break;
        const moves = step(from, to, turn);
        if (!moves) continue;
        const points = moves.reduce((sum, move) => sum + pointsOf(move, turn), chain.points);
        const key = to * paddockCount + ((turn + 1) % paddockCount);
        const other = best.get(key);
        if (!other || points < other.points) best.set(key, { points, day: to, moves, before: chain });
      }
    }
  }
  let end: Chain | undefined;
  for (let turn = 0; turn < paddockCount; turn++) {
    const chain = best.get(finish * paddockCount + turn);
    if (chain && (!end || chain.points < end.points)) end = chain;
  }
  const moves: Move[] = [];
  for (let chain = end; chain; chain = chain.before) moves.push(...chain.moves);
  return end && moves.sort((a, b) => a.inDay - b.inDay || a.g - b.g);

  function paddockAt(g: number, turn: number): number {
    return ring![(places!.at[g]! + turn) % paddockCount]!;
  }

  function pointsOf({ g, p, inDay, out }: Move, turn: number): number {
    const left =
      turn === 0 || inDay <= groups[g]!.entry ? paddockCount : paddockAt(g, turn + paddockCount - 1);
    return stayPoints(tables, g, p, inDay, out) + stridePoints(tables, left, p);
  }

  /** The stays of all groups between two days of the round; undefined where one of them is not lawful. */
  function step(from: number, to: number, turn: number): Move[] | undefined {
    const moves: Move[] = [];
    for (const g of active) {
      const { entry, end } = groups[g]!;
      const inDay = from === 0 ? entry : Math.max(from, entry);
      const out = Math.min(to, end);
      if (inDay >= to || end <= from) continue;
      const p = paddockAt(g, turn);
      if (!isLawful(g, p, inDay, out)) return undefined;
      moves.push({ g, p, inDay, out });
    }
    return moves;
  }

  function isLawful(g: number, p: number, inDay: number, out: number): boolean {
    const { standing, entry, outs, firstOut, afterOut } = groups[g]!;
    if (standing && inDay === entry) return p === standing.paddock && standing.outs.includes(out);
    const stay = p * (tables.days + 1) + inDay;
    const last = afterOut[stay]! - 1;
    if (last < firstOut[stay]!) return false;
    return out >= outs[firstOut[stay]!]! && out <= outs[last]!;
  }
}

/** Days of the longest lawful stay of a group, from the season start on. */
function longestStayOf({ outs, firstOut, afterOut, standing }: GroupTable, days: number): number {
  let longest = Math.max(1, ...(standing?.outs ?? []));
  for (const [stay, after] of afterOut.entries()) {
    if (after > firstOut[stay]!) longest = Math.max(longest, outs[after - 1]! - (stay % (days + 1)));
  }
  return longest;
}

interface Places {
  /** Position of each group in the round. */
  readonly at: readonly number[];
}

/** Groups in order of entry, each into the place that has been free longest: the fewest places that do. */
function placesOf({ groups, paddockCount }: PlanTables): Places | undefined {
  const placeOf: number[] = groups.map(() => 0);
  const freeFrom: number[] = [];
  const order = groups.map((_, g) => g).filter((g) => groups[g]!.entry < groups[g]!.end);
  order.sort((a, b) => groups[a]!.entry - groups[b]!.entry);
  for (const g of order) {
    let place = freeFrom.findIndex((day) => day <= groups[g]!.entry);
    if (place < 0) place = freeFrom.length;
    freeFrom[place] = groups[g]!.end;
    placeOf[g] = place;
  }
  if (freeFrom.length > paddockCount) return undefined;
  return { at: placeOf.map((place) => Math.floor((place * paddockCount) / Math.max(1, freeFrom.length))) };
}

/**
 * The paddocks in the order of the round, those in which groups stand at their places. Each other one adjoins the one
 * before where it can; of several, the one with the fewest neighbours left, so that none is left behind.
 */
function ringOf(
  { groups, paddockCount, noStride, anyStride }: PlanTables,
  { at }: Places,
): number[] | undefined {
  const ring: (number | undefined)[] = new Array(paddockCount).fill(undefined);
  for (const [g, { standing }] of groups.entries()) {
    if (!standing) continue;
    if (ring[at[g]!] !== undefined) return undefined;
    ring[at[g]!] = standing.paddock;
  }
  if (new Set(ring.filter((p) => p !== undefined)).size < ring.filter((p) => p !== undefined).length)
    return undefined;
  const others = new Set(Array.from({ length: paddockCount }, (_, p) => p).filter((p) => !ring.includes(p)));
  const neighboursLeft = (p: number): number => noStride[p]!.filter((q) => others.has(q)).length;
  for (let place = 0; place < paddockCount; place++) {
    if (ring[place] !== undefined) continue;
    const before = ring[(place + paddockCount - 1) % paddockCount];
    const near = anyStride && before !== undefined ? noStride[before]!.filter((p) => others.has(p)) : [];
    near.sort((a, b) => neighboursLeft(a) - neighboursLeft(b));
    const next = near[0] ?? others.values().next().value!;
    ring[place] = next;
    others.delete(next);
  }
  return ring.map((p) => p!);
}
