import { Refusal } from '../../refusals';
import { arcsMeet, areOpposite, isOnArc, type Point, pointOf, samePoint } from './arc';
import type { Corner } from './corner';

/**
 * Corners of an outline that can be measured: the closing corner is dropped where it repeats the first one.
 *
 * Refuses fewer than 3 corners, a corner used twice, and an outline that crosses or touches itself. Crossing is
 * judged with great circles on a sphere, which on farm-sized sides is the same as on the ellipsoid.
 */
export function checkedOutline(corners: readonly Corner[]): readonly Corner[] {
  const points = corners.map(pointOf);
  const open = points.length > 1 && samePoint(points[0]!, points[points.length - 1]!) ? -1 : undefined;
  const outline = points.slice(0, open);
  if (outline.length < 3) {
    throw new Refusal('corners', 'hold at least 3 different corners', String(outline.length));
  }
  refuseEmptySides(outline);
  refuseMeetingSides(outline);
  return corners.slice(0, open);
}

function refuseEmptySides(points: readonly Point[]): void {
  points.forEach((point, i) => {
    const next = (i + 1) % points.length;
    if (samePoint(point, points[next]!)) {
      throw new Refusal(
        'corners',
        'not repeat a corner',
        `corners ${i + 1} and ${next + 1} at the same place`,
      );
    }
    if (areOpposite(point, points[next]!)) {
      throw new Refusal(
        'corners',
        'lie near each other',
        `corners ${i + 1} and ${next + 1} on opposite sides of the earth`,
      );
    }
  });
}

function refuseMeetingSides(points: readonly Point[]): void {
  const count = points.length;
  for (let i = 0; i < count; i++) {
    const [a, b, after] = [points[i]!, points[(i + 1) % count]!, points[(i + 2) % count]!];
    if (isOnArc(after, a, b) || isOnArc(a, b, after)) refuseMeeting(i, (i + 1) % count, count);
    // Sides next to each other share a corner, so the others begin two further on.
    const last = i === 0 ? count - 1 : count;
    for (let j = i + 2; j < last; j++) {
      if (arcsMeet(a, b, points[j]!, points[(j + 1) % count]!)) refuseMeeting(i, j, count);
    }
  }
}

function refuseMeeting(i: number, j: number, count: number): never {
  const name = (from: number): string => `${from + 1}–${((from + 1) % count) + 1}`;
  throw new Refusal(
    'corners',
    'go round the outside without crossing or touching',
    `sides ${name(i)} and ${name(j)} that meet`,
  );
}
