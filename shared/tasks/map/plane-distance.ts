/** Distances and insides on the flat farm, in metres. */
import type { PlanePoint } from './local-plane';

export type Segment = readonly [PlanePoint, PlanePoint];

/** Sides of a closed outline. */
export function sidesOf(outline: readonly PlanePoint[]): readonly Segment[] {
  return outline.map((from, i): Segment => [from, outline[(i + 1) % outline.length] ?? from]);
}

export function pointToSegment(point: PlanePoint, [from, to]: Segment): number {
  const [dx, dy] = [to.east - from.east, to.north - from.north];
  const square = dx * dx + dy * dy;
  const along = ((point.east - from.east) * dx + (point.north - from.north) * dy) / (square || 1);
  const t = Math.max(0, Math.min(1, along));
  return Math.hypot(point.east - from.east - t * dx, point.north - from.north - t * dy);
}

/** 0 where they cross. */
export function segmentToSegment(one: Segment, other: Segment): number {
  if (doCross(one, other)) return 0;
  return Math.min(
    pointToSegment(one[0], other),
    pointToSegment(one[1], other),
    pointToSegment(other[0], one),
    pointToSegment(other[1], one),
  );
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
