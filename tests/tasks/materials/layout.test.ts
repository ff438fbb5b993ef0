/** Fence of a layout: counted by hand, and against the worked numbers named beside each. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cutField } from '../../../shared/tasks/materials/cut-field';
import { gridFence } from '../../../shared/tasks/materials/grid-fence';
import type { LaidPaddock, Layout } from '../../../shared/tasks/materials/layout';
import { layoutFence } from '../../../shared/tasks/materials/layout-fence';

/** Posts so far apart, nets of 50. */
const gap = (postSpacing: number, netLength = 50) => ({ postSpacing, netLength });

/** The posts of a grid, counted one by one: every post is a point, shared posts are the same point. */
function countPosts(rows: number, columns: number, width: number, length: number, spacing: number) {
  const points = new Set<string>();
  const corners = new Set<string>();
  const put = (x: number, y: number) => points.add(`${x.toFixed(6)},${y.toFixed(6)}`);
  const run = (x0: number, y0: number, x1: number, y1: number) => {
    const gaps = Math.ceil((Math.abs(x1 - x0) + Math.abs(y1 - y0)) / spacing - 1e-9);
    for (let i = 0; i <= gaps; i++) put(x0 + ((x1 - x0) * i) / gaps, y0 + ((y1 - y0) * i) / gaps);
    corners.add(`${x0},${y0}`).add(`${x1},${y1}`);
  };
  for (let r = 0; r < rows; r++) {
    for (let c = 0; c < columns; c++) {
      const [x, y] = [c * width, r * length];
      run(x, y, x + width, y);
      run(x + width, y, x + width, y + length);
      run(x, y + length, x + width, y + length);
      run(x, y, x, y + length);
    }
  }
  return { posts: points.size, corners: corners.size };
}

/** The same grid as a paddock list that names its neighbours. Widths along the row, lengths across it. */
function asList(rows: number, columns: number, width: number, length: number): LaidPaddock[] {
  return Array.from({ length: rows * columns }, (_, i) => ({
    name: `P${i}`,
    widthMeters: width,
    lengthMeters: length,
    adjoins: [i - 1, i + 1, i - columns, i + columns].filter(
      (j) =>
        j >= 0 &&
        j < rows * columns &&
        (Math.abs(j - i) === columns || Math.floor(j / columns) === Math.floor(i / columns)),
    ),
  }));
}

describe('a grid of paddocks', () => {
  test('2 × 4 of 120 × 180: outer 1680, dividing 1560, both 3240 (the example of FENCE_GRID)', () => {
    const fence = gridFence(
      { kind: 'grid', rows: 2, columns: 4, widthMeters: 120, lengthMeters: 180 },
      gap(20),
      2,
    );
    expect([fence.outerMeters, fence.dividingMeters, fence.all.meters]).toEqual([1680, 1560, 3240]);
  });

  test('40 acres square, posts at 40 ft: 132 posts, 4 of them corners (counted in the fence facts)', () => {
    const fence = gridFence(
      { kind: 'grid', rows: 1, columns: 1, widthMeters: 1320, lengthMeters: 1320 },
      gap(40),
      1,
    );
    expect(fence.all).toMatchObject({ meters: 5280, posts: 132, corners: 4 });
  });

  test('1 acre square: about 835 ft (Univ. Wisconsin Extension, fencing primer, 2014)', () => {
    const side = Math.sqrt(43560);
    const fence = gridFence(
      { kind: 'grid', rows: 1, columns: 1, widthMeters: side, lengthMeters: side },
      gap(25),
      1,
    );
    expect(Math.round(fence.all.meters)).toBe(835);
  });

  test('posts and corners equal those counted one by one', () => {
    const size = fc.integer({ min: 1, max: 5 });
    const side = fc.integer({ min: 3, max: 60 });
    fc.assert(
      fc.property(
        size,
        size,
        side,
        side,
        fc.integer({ min: 2, max: 30 }),
        (rows, columns, width, length, spacing) => {
          const fence = gridFence(
            { kind: 'grid', rows, columns, widthMeters: width, lengthMeters: length },
            gap(spacing),
            1,
          );
          const counted = countPosts(rows, columns, width, length, spacing);
          expect(fence.all.posts).toBe(counted.posts);
          expect(fence.all.corners).toBe(counted.corners);
        },
      ),
      { numRuns: 60 },
    );
  });
});

describe('whole nets, by hand', () => {
  const lane = (columns: number) =>
    ({ kind: 'grid', rows: 1, columns, widthMeters: 40, lengthMeters: 60 }) as const;

  test('one paddock of 40 × 60 m: 200 m, four nets of 50', () => {
    expect(gridFence(lane(1), gap(10), 1).all.nets).toBe(4);
  });

  test('a lane of three: 200 m, then 140 m and 140 m less the common side: 4 + 3 + 3', () => {
    expect(gridFence(lane(3), gap(10), 1).all.nets).toBe(10);
    // Two of them at a time, on the way back apart: 4 + 4.
    expect(gridFence(lane(3), gap(10), 2).set.nets).toBe(8);
  });

  test('2 × 2 of 40 × 60 m: 200, 140, 160 and 100 m: 4 + 3 + 4 + 2', () => {
    const square = { kind: 'grid', rows: 2, columns: 2, widthMeters: 40, lengthMeters: 60 } as const;
    expect(gridFence(square, gap(10), 1).all.nets).toBe(13);
  });

  test('four nets of 164 ft close a square of 164 ft a side, 0.617 acre', () => {
    const side = 164 * 0.3048;
    const fence = gridFence(
      { kind: 'grid', rows: 1, columns: 1, widthMeters: side, lengthMeters: side },
      gap(8, side),
      1,
    );
    expect(fence.all.nets).toBe(4);
  });
});

describe('a field cut into paddocks', () => {
  test('strips keep the length of the field', () => {
    expect(cutField(300, 200, 6, 'strips')).toMatchObject({
      rows: 1,
      columns: 6,
      widthMeters: 50,
      lengthMeters: 200,
    });
  });

  test('six from 300 × 200: 2 rows of 3 need 300 + 2 × 200 = 700 of dividing fence, the least of all', () => {
    const grid = cutField(300, 200, 6, 'least fence');
    expect(grid).toMatchObject({ rows: 2, columns: 3, widthMeters: 100, lengthMeters: 100 });
    expect(gridFence(grid, gap(10), 1).dividingMeters).toBe(700);
  });

  test('the cut keeps the field’s area and outer fence, whatever the number', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 40 }),
        fc.constantFrom('strips' as const, 'least fence' as const),
        (n, cut) => {
          const grid = cutField(310, 170, n, cut);
          const fence = gridFence(grid, gap(10), 1);
          expect(grid.rows * grid.columns).toBe(n);
          expect(fence.outerMeters).toBeCloseTo(2 * (310 + 170), 6);
          expect(grid.widthMeters * grid.lengthMeters * n).toBeCloseTo(310 * 170, 6);
        },
      ),
      { numRuns: 50 },
    );
  });
});

describe('a paddock list', () => {
  test('a lane of equal paddocks is the same fence as one row of a grid', () => {
    const list: Layout = {
      kind: 'list',
      touching: 'lengths',
      paddocks: Array.from({ length: 5 }, (_, i) => ({ name: `L${i}`, widthMeters: 40, lengthMeters: 60 })),
    };
    const grid: Layout = { kind: 'grid', rows: 1, columns: 5, widthMeters: 40, lengthMeters: 60 };
    const fence = layoutFence(list, gap(7), 2);
    expect({ ...fence, longest: [] }).toEqual(layoutFence(grid, gap(7), 2));
    // The last and the first stand apart, and take most.
    expect(fence.longest).toEqual(['L4', 'L0']);
  });

  test('square paddocks in any block, neighbours named: the same as the grid, crossings counted once', () => {
    const size = fc.integer({ min: 1, max: 4 });
    fc.assert(
      fc.property(
        size,
        size,
        fc.integer({ min: 5, max: 40 }),
        fc.integer({ min: 2, max: 11 }),
        (rows, columns, side, spacing) => {
          const list: Layout = {
            kind: 'list',
            touching: 'lengths',
            paddocks: asList(rows, columns, side, side),
          };
          const grid: Layout = { kind: 'grid', rows, columns, widthMeters: side, lengthMeters: side };
          const fence = layoutFence(list, gap(spacing, 17), 1);
          expect({ ...fence, longest: [] }).toEqual(layoutFence(grid, gap(spacing, 17), 1));
        },
      ),
      { numRuns: 60 },
    );
  });

  test('paddocks that stand alone share nothing', () => {
    const list: Layout = {
      kind: 'list',
      touching: 'alone',
      paddocks: [
        { name: 'A', widthMeters: 30, lengthMeters: 50 },
        { name: 'B', fenceMeters: 205 },
      ],
    };
    const fence = layoutFence(list, gap(10), 2);
    // By hand: 160 + 205; posts 6 + 10 and ⌈20.5⌉ = 21; corners 4 each.
    expect(fence).toEqual({
      outerMeters: 365,
      dividingMeters: 0,
      // Nets of 50: ⌈3.2⌉ + ⌈4.1⌉ = 4 + 5.
      all: { meters: 365, posts: 37, nets: 9, corners: 8 },
      set: { meters: 365, posts: 37, nets: 9, corners: 8 },
      longest: ['A', 'B'],
    });
  });

  test('a set leapfrogs: the largest pair, their common side once', () => {
    const sizes = [
      [40, 60],
      [50, 60],
      [90, 80],
      [30, 50],
    ] as const;
    const list: Layout = {
      kind: 'list',
      touching: 'lengths',
      paddocks: sizes.map(([widthMeters, lengthMeters], i) => ({ name: `P${i}`, widthMeters, lengthMeters })),
    };
    // By hand: 220 + 340 − min(60, 80) = 500; the next pair 340 + 160 − 50 = 450; round again 160 + 200 = 360.
    expect(layoutFence(list, gap(10), 2).set.meters).toBe(500);
    // Two small ones: on the way back from the last to the first each stands alone, 160 + 200.
    const small: Layout = { ...list, paddocks: list.paddocks.filter((_, i) => i !== 2) };
    expect(layoutFence(small, gap(10), 2).set.meters).toBe(360);
    // A side more than all paddocks together is never asked for.
    expect(layoutFence(list, gap(10), 9).set.meters).toBe(layoutFence(list, gap(10), 4).set.meters);
  });
});
