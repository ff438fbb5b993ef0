import type { PlanePoint } from './local-plane';
import type { ShapeForm } from './map-model';
import {
  type Gap,
  gapBetween,
  gapToSegment,
  isInside,
  nearest,
  type Segment,
  sidesOf,
} from './plane-distance';

export interface FlatShape {
  readonly form: ShapeForm;
  readonly points: readonly PlanePoint[];
}

/** From the nearest point of a paddock to a point, line or area of water; 0 where it lies in it or round it. */
export function gapToShape(paddock: readonly PlanePoint[], { form, points }: FlatShape): Gap {
  const [corner, first] = [paddock[0]!, points[0]!];
  if (isInside(first, paddock)) return { meters: 0, from: first, to: first };
  if (form === 'area' && isInside(corner, points)) return { meters: 0, from: corner, to: corner };
  const sides = sidesOf(paddock);
  if (form === 'point') {
    return nearest(
      sides.map((side) => {
        const gap = gapToSegment(first, side);
        return { meters: gap.meters, from: gap.to, to: first };
      }),
    );
  }
  const parts = form === 'area' ? sidesOf(points) : runsOf(points);
  return nearest(sides.flatMap((side) => parts.map((part) => gapBetween(side, part))));
}

function runsOf(line: readonly PlanePoint[]): readonly Segment[] {
  return line.slice(1).map((to, i): Segment => [line[i] ?? to, to]);
}
