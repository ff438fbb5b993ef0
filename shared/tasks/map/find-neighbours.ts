import type { PlanePoint } from './local-plane';
import { isInside, pointToSegment, sidesOf } from './plane-distance';
import { sharedSide } from './shared-side';

/** Two lines walked with a hand-held receiver seldom fall together better than this. Judgement. */
export const NEIGHBOUR_TOLERANCE_METERS = 3;
/** A shared stretch shorter than a gateway is a touch of corners. Judgement. */
export const LEAST_SHARED_METERS = 3;

export interface Neighbours {
  /** For each outline the numbers of those that adjoin it, in order. */
  readonly adjoining: readonly (readonly number[])[];
  /** Pairs that lie over one another by more than the tolerance. */
  readonly overlapping: readonly (readonly [number, number])[];
}

/**
 * Paddocks adjoin where they run beside one another for at least LEAST_SHARED_METERS, within the tolerance.
 * Outlines in metres on one plane.
 */
export function findNeighbours(
  outlines: readonly (readonly PlanePoint[])[],
  toleranceMeters: number,
): Neighbours {
  const boxes = outlines.map(boxOf);
  const adjoining = outlines.map((): number[] => []);
  const overlapping: (readonly [number, number])[] = [];
  for (let i = 0; i < outlines.length; i++) {
    for (let j = i + 1; j < outlines.length; j++) {
      if (!isNear(boxes[i]!, boxes[j]!, toleranceMeters)) continue;
      const [one, other] = [outlines[i]!, outlines[j]!];
      if (sharedSide(one, other, toleranceMeters) >= LEAST_SHARED_METERS) {
        adjoining[i]!.push(j);
        adjoining[j]!.push(i);
      }
      if (reachesInto(one, other, toleranceMeters) || reachesInto(other, one, toleranceMeters)) {
        overlapping.push([i, j]);
      }
    }
  }
  return { adjoining: adjoining.map((list) => list.sort((a, b) => a - b)), overlapping };
}

/** A corner, the middle of a side or a point well inside lies deeper inside the other than the tolerance. */
function reachesInto(one: readonly PlanePoint[], other: readonly PlanePoint[], tolerance: number): boolean {
  const sides = sidesOf(other);
  const onOutline = sidesOf(one).flatMap(([a, b]) => [
    a,
    { east: (a.east + b.east) / 2, north: (a.north + b.north) / 2 },
  ]);
  // An outline drawn twice lies on the other one all the way round.
  const probes = [...onOutline, ...innerPoint(one)];
  return probes.some(
    (point) => isInside(point, other) && sides.every((side) => pointToSegment(point, side) > tolerance),
  );
}

/** The middle of the widest stretch inside, on a line from west to east half-way up; none for an outline without area. */
function innerPoint(outline: readonly PlanePoint[]): PlanePoint[] {
  const { south, north } = boxOf(outline);
  const middle = (south + north) / 2;
  const crossings = sidesOf(outline)
    .filter(([a, b]) => a.north > middle !== b.north > middle)
    .map(([a, b]) => a.east + ((middle - a.north) / (b.north - a.north)) * (b.east - a.east))
    .sort((a, b) => a - b);
  const stretches = crossings.flatMap((west, i) =>
    i % 2 === 0 && i + 1 < crossings.length ? [[west, crossings[i + 1]!] as const] : [],
  );
  const [widest] = stretches.sort((a, b) => b[1] - b[0] - (a[1] - a[0]));
  return widest ? [{ east: (widest[0] + widest[1]) / 2, north: middle }] : [];
}

interface Box {
  readonly west: number;
  readonly east: number;
  readonly south: number;
  readonly north: number;
}

function boxOf(outline: readonly PlanePoint[]): Box {
  const easts = outline.map(({ east }) => east);
  const norths = outline.map(({ north }) => north);
  return {
    west: Math.min(...easts),
    east: Math.max(...easts),
    south: Math.min(...norths),
    north: Math.max(...norths),
  };
}

function isNear(a: Box, b: Box, by: number): boolean {
  return a.west - by <= b.east && b.west - by <= a.east && a.south - by <= b.north && b.south - by <= a.north;
}
