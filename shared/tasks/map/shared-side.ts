import type { PlanePoint } from './local-plane';
import { type Segment, sidesOf } from './plane-distance';

/** Two sides that meet at a steeper angle than this do not run along one another. Judgement. */
const LEAST_COSINE = Math.cos((20 * Math.PI) / 180);

/**
 * How many metres of the first outline run along the second: the length of its sides that lies within
 * `toleranceMeters` of a side of the other and in nearly the same direction (20°, judgement).
 */
export function sharedSide(
  one: readonly PlanePoint[],
  other: readonly PlanePoint[],
  toleranceMeters: number,
): number {
  const others = sidesOf(other);
  return sidesOf(one).reduce((sum, side) => {
    const length = Math.hypot(side[1].east - side[0].east, side[1].north - side[0].north);
    if (length === 0) return sum;
    const pieces = others.flatMap((beside) => stretchAlong(side, length, beside, toleranceMeters));
    return sum + joined(pieces);
  }, 0);
}

/** From and to, in metres from the side's beginning, where the other side runs beside it. */
function stretchAlong(
  [from, to]: Segment,
  length: number,
  [a, b]: Segment,
  tolerance: number,
): readonly (readonly [number, number])[] {
  const ux = (to.east - from.east) / length;
  const uy = (to.north - from.north) / length;
  const place = (p: PlanePoint) => ({
    along: (p.east - from.east) * ux + (p.north - from.north) * uy,
    off: (p.north - from.north) * ux - (p.east - from.east) * uy,
  });
  const [p, q] = [place(a), place(b)];
  const run = q.along - p.along;
  const size = Math.hypot(run, q.off - p.off);
  if (size === 0 || Math.abs(run) / size < LEAST_COSINE) return [];
  const offAt = (along: number): number => p.off + ((q.off - p.off) * (along - p.along)) / run;
  let low = Math.max(0, Math.min(p.along, q.along));
  let high = Math.min(length, Math.max(p.along, q.along));
  const slope = (q.off - p.off) / run;
  if (slope !== 0) {
    // Cut to where the distance across stays within the tolerance.
    const [first, second] = [-tolerance, tolerance].map((off) => p.along + (off - p.off) / slope);
    low = Math.max(low, Math.min(first!, second!));
    high = Math.min(high, Math.max(first!, second!));
  }
  if (high <= low || Math.abs(offAt((low + high) / 2)) > tolerance) return [];
  return [[low, high]];
}

/** Length of all stretches together, overlaps once. */
function joined(pieces: readonly (readonly [number, number])[]): number {
  let [sum, end] = [0, -Infinity];
  for (const [low, high] of [...pieces].sort((a, b) => a[0] - b[0])) {
    sum += Math.max(0, high - Math.max(low, end));
    end = Math.max(end, high);
  }
  return sum;
}
