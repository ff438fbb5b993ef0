/** Distances and insides on the flat farm, in metres. */
import type { PlanePoint } from './local-plane';

export type Segment = readonly [PlanePoint, PlanePoint];

/** Sides of a closed outline. */
export function sidesOf(outline: readonly PlanePoint[]): readonly Segment[] {
  return outline.map((from, i): Segment => [from, outline[(i + 1) % outline.length] ?? from]);
}

/** Two points and how far they are apart. */
export interface Gap {
  readonly meters: number;
  readonly from: PlanePoint;
  readonly to: PlanePoint;
}

export function pointToSegment(point: PlanePoint, segment: Segment): number {
  return gapToSegment(point, segment).meters;
}

/** From a point to the nearest point of a segment. */
export function gapToSegment(point: PlanePoint, [start, end]: Segment): Gap {
  const [dx, dy] = [end.east - start.east, end.north - start.north];
  const square = dx * dx + dy * dy;
  const along = ((point.east - start.east) * dx + (point.north - start.north) * dy) / (square || 1);
  const t = Math.max(0, Math.min(1, along));
  const to = { east: start.east + t * dx, north: start.north + t * dy };
  return { meters: Math.hypot(point.east - to.east, point.north - to.north), from: point, to };
}

/** From the nearest point of one segment to that of the other; 0 where they cross. */
export function gapBetween(one: Segment, other: Segment): Gap {
  const gaps = [
    gapToSegment(one[0], other),
    gapToSegment(one[1], other),
    turned(gapToSegment(other[0], one)),
    turned(gapToSegment(other[1], one)),
  ];
  const least = nearest(gaps);
  return doCross(one, other) ? { meters: 0, from: least.from, to: least.from } : least;
}

/** The smallest gap of at least one. */
export function nearest(gaps: readonly Gap[]): Gap {
  return gaps.reduce((best, gap) => (gap.meters < best.meters ? gap : best));
}

function turned({ meters, from, to }: Gap): Gap {
  return { meters, from: to, to: from };
}

/** Even-odd rule. */
export function isInside(point: PlanePoint, outline: readonly PlanePoint[]): boolean {
  return sidesOf(outline).reduce((inside, [a, b]) => {
    if (a.north > point.north === b.north > point.north) return inside;
    const east = a.east + ((b.east - a.east) * (point.north - a.north)) / (b.north - a.north);
    return point.east < east ? !inside : inside;
  }, false);
}

function doCross([a, b]: Segment, [c, d]: Segment): boolean {
  return turn(a, b, c) * turn(a, b, d) < 0 && turn(c, d, a) * turn(c, d, b) < 0;
}

function turn(a: PlanePoint, b: PlanePoint, c: PlanePoint): number {
  return (b.east - a.east) * (c.north - a.north) - (b.north - a.north) * (c.east - a.east);
}
