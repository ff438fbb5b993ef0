/**
 * Crossing outlines against plane geometry: on a field of a few hundred metres two sides cross on the ground exactly where
 * the straight lines through their degrees cross on paper. Any corners at all, near the dateline and far from it.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cell } from '../cell';

type Spot = readonly [number, number];

/** Twice the area of a triangle, positive where c lies to the left of the way from a to b. */
const turn = (a: Spot, b: Spot, c: Spot): number =>
  (b[1] - a[1]) * (c[0] - a[0]) - (b[0] - a[0]) * (c[1] - a[1]);

function cross(a: Spot, b: Spot, c: Spot, d: Spot): boolean {
  return turn(a, b, c) * turn(a, b, d) < 0 && turn(c, d, a) * turn(c, d, b) < 0;
}

function crossesItself(spots: readonly Spot[]): boolean {
  const count = spots.length;
  const side = (i: number): readonly [Spot, Spot] => [spots[i % count]!, spots[(i + 1) % count]!];
  for (let i = 0; i < count; i++) {
    for (let j = i + 2; j < count; j++) {
      if ((j + 1) % count !== i && cross(...side(i), ...side(j))) return true;
    }
  }
  return false;
}

/** Area on paper in square degrees; a hair-thin outline is left to the tolerance of touching. */
const doubleArea = (spots: readonly Spot[]): number =>
  Math.abs(spots.reduce((sum, spot, i) => sum + turn([0, 0], spot, spots[(i + 1) % spots.length]!), 0));

const grid = fc.integer({ min: 0, max: 997 });

describe('crossing outlines', () => {
  it.each([
    ['in Iowa', 42, -93],
    ['across the dateline', -16.8, 179.9995],
    ['in the north', 68, 23],
    ['on the equator and the zero meridian', -0.0005, -0.0005],
  ])('%s: refused exactly where plane geometry finds a crossing', (_, latitude, longitude) => {
    let [crossing, plain] = [0, 0];
    fc.assert(
      fc.property(fc.array(fc.tuple(grid, grid), { minLength: 4, maxLength: 7 }), (spots) => {
        const touching = spots.some((spot, i) =>
          spots.some((from, j) => {
            const to = spots[(j + 1) % spots.length]!;
            const apart = Math.abs(turn(from, to, spot)) / Math.hypot(to[0] - from[0], to[1] - from[1]);
            // Within 2 mm (0.02 of a millionth of a degree) the tolerance of touching decides.
            return i !== j && i !== (j + 1) % spots.length && !(apart > 0.02);
          }),
        );
        const repeated = new Set(spots.map(String)).size < spots.length;
        if (touching || repeated || doubleArea(spots) === 0) return;
        const corners = spots.map(([north, east]) => [
          latitude + north * 1e-6,
          ((longitude + east * 1e-6 + 540) % 360) - 180,
        ]);
        const run = (): unknown => cell('BOUNDARY_AREA', corners);
        if (crossesItself(spots)) {
          crossing++;
          expect(run).toThrow(/crossing or touching/);
        } else {
          plain++;
          expect(run()).toBeGreaterThan(0);
        }
      }),
      { numRuns: 500 },
    );
    expect(crossing).toBeGreaterThan(50);
    expect(plain).toBeGreaterThan(50);
  });
});
