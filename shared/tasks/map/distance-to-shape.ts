import type { PlanePoint } from './local-plane';
import type { ShapeForm } from './map-model';
import { isInside, pointToSegment, type Segment, segmentToSegment, sidesOf } from './plane-distance';

export interface FlatShape {
  readonly form: ShapeForm;
  readonly points: readonly PlanePoint[];
}

/** Metres from the nearest point of a paddock to a point, line or area of water; 0 where it lies in it. */
export function distanceToShape(paddock: readonly PlanePoint[], shape: FlatShape): number {
  const sides = sidesOf(paddock);
  const first = shape.points[0];
  if (first && isInside(first, paddock)) return 0;
  if (shape.form === 'point')
    return first ? least(sides.map((side) => pointToSegment(first, side))) : Infinity;
  const corner = paddock[0];
  if (shape.form === 'area' && corner && isInside(corner, shape.points)) return 0;
  const parts = shape.form === 'area' ? sidesOf(shape.points) : runsOf(shape.points);
  return least(sides.flatMap((side) => parts.map((part) => segmentToSegment(side, part))));
}

function runsOf(line: readonly PlanePoint[]): readonly Segment[] {
  return line.slice(1).map((to, i): Segment => [line[i] ?? to, to]);
}

function least(values: readonly number[]): number {
  return values.reduce((low, value) => Math.min(low, value), Infinity);
}
