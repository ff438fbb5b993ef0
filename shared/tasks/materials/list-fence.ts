import { gapsOnSide } from '../../core/fence/gaps-on-side';
import { postCount } from '../../core/fence/post-count';
import { ceilForgiving } from '../../units/ceil-forgiving';
import type { FenceCount, LaidPaddock, LayoutFence, ListLayout, PieceLengths, Touching } from './layout';
import { crossings, type SharedSide, sharedSides } from './shared-sides';

/** A closed line of unknown shape is taken as having four corners. Judgement. */
const CORNERS_EACH = 4;

/**
 * Fence of a paddock list, shared sides counted once.
 *
 *   outer = Σ round − 2 × Σ shared, dividing = Σ shared, all = Σ round − Σ shared
 *   nets = Σ ⌈(round − sides shared with paddocks before it) ÷ net⌉
 *
 * A shared side is the shorter of the two sides that touch, which is exact where the paddocks are equally long
 * there. The set is the most that `setPaddocks` paddocks that follow one another need: in the moves of a group where a
 * rotation stands, else in the list, the way back from the last to the first among them. Source: counting.
 */
export function listFence(list: ListLayout, pieces: PieceLengths, setPaddocks: number): LayoutFence {
  const { postSpacing } = pieces;
  const sides = sharedSides(list);
  const round = list.paddocks.map((paddock) => fenceRound(paddock, postSpacing));
  const shared = sides.map((side) => sharedMeters(list, side));
  const dividingMeters = sum(shared);
  const roundMeters = sum(round.map(({ meters }) => meters));
  const doublePosts = sum(shared.map((meters) => gapsOnSide(meters, postSpacing) + 1));
  const met = crossings(list.paddocks.length, sides);
  return {
    outerMeters: roundMeters - 2 * dividingMeters,
    dividingMeters,
    all: {
      meters: roundMeters - dividingMeters,
      posts: sum(round.map(({ posts }) => posts)) - doublePosts + met,
      nets: netsOf(
        list,
        list.paddocks.map((_, at) => at),
        sides,
        round,
        pieces.netLength,
      ),
      corners: CORNERS_EACH * list.paddocks.length - 2 * sides.length + met,
    },
    ...largestSet(list, sides, round, pieces, setPaddocks),
  };
}

/** Whole nets for the paddocks at `set`: each less what it shares with those of the set that stand before it in the list. */
function netsOf(
  list: ListLayout,
  set: readonly number[],
  sides: readonly SharedSide[],
  round: readonly Ring[],
  netLength: number,
): number {
  const inside = sidesInSet(set, sides);
  return sum(
    set.map((at) => {
      const shared = inside.filter(({ later }) => later === at).map((side) => sharedMeters(list, side));
      return ceilForgiving(((round[at]?.meters ?? 0) - sum(shared)) / netLength);
    }),
  );
}

type Ring = Omit<FenceCount, 'nets'>;

function fenceRound(paddock: LaidPaddock, spacing: number): Ring {
  const { widthMeters: width, lengthMeters: length } = paddock;
  const meters = ringMeters(paddock);
  const isKnown = width !== undefined && length !== undefined;
  const posts = isKnown ? postCount(width, length, spacing) : gapsOnSide(meters, spacing);
  return { meters, posts, corners: CORNERS_EACH };
}

function sharedMeters(list: ListLayout, side: SharedSide): number {
  return Math.min(
    touchingSide(list.paddocks[side.earlier], list.touching),
    touchingSide(list.paddocks[side.later], list.touching),
  );
}

function touchingSide(paddock: LaidPaddock | undefined, touching: Touching): number {
  return (touching === 'lengths' ? paddock?.lengthMeters : paddock?.widthMeters) ?? 0;
}

/**
 * For each paddock the positions of those that stand together where it is the first: with a rotation the set that takes
 * most fence, none where it is the first of no set; else `setPaddocks` from it on in the list, round again to the start.
 */
export function setsFrom(list: ListLayout, setPaddocks: number): readonly (readonly number[])[] {
  const { paddocks, inTurn } = list;
  const size = Math.min(setPaddocks, paddocks.length);
  if (!inTurn) {
    return paddocks.map((_, first) => Array.from({ length: size }, (_, i) => (first + i) % paddocks.length));
  }
  const sides = sharedSides(list);
  const meters = (set: readonly number[]): number =>
    sum(set.map((at) => ringMeters(paddocks[at]))) -
    sum(sidesInSet(set, sides).map((side) => sharedMeters(list, side)));
  const all = inTurn.flatMap((turn) =>
    turn
      .slice(0, Math.max(1, turn.length - size + 1))
      .map((_, at) => [...new Set(turn.slice(at, at + size))]),
  );
  return paddocks.map((_, first) => {
    const own = all.filter(([at]) => at === first);
    return own.sort((a, b) => meters(b) - meters(a))[0] ?? [];
  });
}

function ringMeters({ widthMeters, lengthMeters, fenceMeters = 0 }: Partial<LaidPaddock> = {}): number {
  return widthMeters !== undefined && lengthMeters !== undefined
    ? 2 * (widthMeters + lengthMeters)
    : fenceMeters;
}

/** Shared sides between paddocks of a set. */
export function sidesInSet(set: readonly number[], sides: readonly SharedSide[]): readonly SharedSide[] {
  return sides.filter(({ earlier, later }) => set.includes(earlier) && set.includes(later));
}

function largestSet(
  list: ListLayout,
  sides: readonly SharedSide[],
  round: readonly Ring[],
  { postSpacing, netLength }: PieceLengths,
  setPaddocks: number,
): Pick<LayoutFence, 'set' | 'longest'> {
  const sets = setsFrom(list, setPaddocks).map((set) => {
    const inside = sidesInSet(set, sides).map((side) => sharedMeters(list, side));
    return {
      names: set.map((at) => list.paddocks[at]?.name ?? ''),
      meters: sum(set.map((at) => round[at]?.meters ?? 0)) - sum(inside),
      posts:
        sum(set.map((at) => round[at]?.posts ?? 0)) -
        sum(inside.map((meters) => gapsOnSide(meters, postSpacing) + 1)),
      nets: netsOf(list, set, sides, round, netLength),
      corners: CORNERS_EACH * set.length - 2 * inside.length,
    };
  });
  const most = (of: (set: FenceCount) => number): number => Math.max(0, ...sets.map(of));
  const meters = most((set) => set.meters);
  return {
    set: {
      meters,
      posts: most((set) => set.posts),
      nets: most((set) => set.nets),
      corners: most((set) => set.corners),
    },
    longest: sets.find((set) => set.meters === meters)?.names ?? [],
  };
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
