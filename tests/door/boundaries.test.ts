/** Outlines by latitude and longitude that are awkward: dateline, poles, repeated corners, crossings. */
import { describe, expect, it } from 'vitest';
import { cell, numberOf } from '../cell';

type Corners = readonly (readonly [number, number])[];

const SQUARE: Corners = [
  [42, -93],
  [42, -92.998],
  [42.002, -92.998],
  [42.002, -93],
];
const moved = (corners: Corners, north: number, east: number): Corners =>
  corners.map(([lat, lon]) => [lat + north, ((lon + east + 540) % 360) - 180]);

describe('outlines', () => {
  it('have one length and area, wherever they start and whichever way they run', () => {
    const area = numberOf('BOUNDARY_AREA', SQUARE);
    const length = numberOf('BOUNDARY_LENGTH', SQUARE);
    for (let first = 0; first < 4; first++) {
      const turned = [...SQUARE.slice(first), ...SQUARE.slice(0, first)];
      for (const way of [turned, [...turned].reverse()]) {
        expect(numberOf('BOUNDARY_AREA', way) / area).toBeCloseTo(1, 10);
        expect(numberOf('BOUNDARY_LENGTH', way) / length).toBeCloseTo(1, 12);
        expect(cell('BOUNDARY_POSTS', way, 25)).toBe(cell('BOUNDARY_POSTS', SQUARE, 25));
      }
    }
  });

  it('may repeat the first corner at the end', () => {
    expect(cell('BOUNDARY_AREA', [...SQUARE, SQUARE[0]])).toBe(cell('BOUNDARY_AREA', SQUARE));
    expect(cell('BOUNDARY_POSTS', [...SQUARE, SQUARE[0]], 25)).toBe(cell('BOUNDARY_POSTS', SQUARE, 25));
  });

  it('are the same across the dateline as elsewhere', () => {
    const there = moved(SQUARE, 0, -87.001);
    expect(there.some(([, lon]) => lon > 0) && there.some(([, lon]) => lon < 0)).toBe(true);
    expect(numberOf('BOUNDARY_AREA', there) / numberOf('BOUNDARY_AREA', SQUARE)).toBeCloseTo(1, 9);
    expect(numberOf('BOUNDARY_LENGTH', there) / numberOf('BOUNDARY_LENGTH', SQUARE)).toBeCloseTo(1, 9);
  });

  it('take 180 and −180 degrees, and any longitude at a pole, for the same place', () => {
    const east: Corners = [
      [10, 179],
      [10, 180],
      [11, 180],
      [11, 179],
    ];
    const mixed: Corners = [
      [10, 179],
      [10, -180],
      [11, 180],
      [11, 179],
    ];
    expect(numberOf('BOUNDARY_AREA', mixed)).toBeCloseTo(numberOf('BOUNDARY_AREA', east), 4);
    expect(
      numberOf(
        'BOUNDARY_AREA',
        [
          [90, 0],
          [0, 0],
          [0, 90],
        ],
        'metric',
      ),
    ).toBeCloseTo(
      numberOf(
        'BOUNDARY_AREA',
        [
          [90, 77],
          [0, 0],
          [0, 90],
        ],
        'metric',
      ),
      3,
    );
    expect(() =>
      cell('BOUNDARY_AREA', [
        [90, 0],
        [90, 50],
        [80, 20],
        [80, 60],
      ]),
    ).toThrow('BOUNDARY_AREA: corners must not repeat a corner, got corners 1 and 2 at the same place');
  });

  it('may go round a pole', () => {
    const ring: Corners = [
      [89, 0],
      [89, 90],
      [89, 180],
      [89, -90],
    ];
    expect(numberOf('BOUNDARY_AREA', ring, 'metric')).toBeCloseTo(2495230.5678, 3);
  });

  const CROSSED: readonly [string, Corners][] = [
    [
      'a bow tie',
      [
        [42, -93],
        [42.002, -92.998],
        [42.002, -93],
        [42, -92.998],
      ],
    ],
    [
      'a bow tie on the dateline',
      moved(
        [
          [42, -93],
          [42.002, -92.998],
          [42.002, -93],
          [42, -92.998],
        ],
        0,
        -87.001,
      ),
    ],
    [
      'a bow tie south of the equator',
      [
        [-42, 93],
        [-42.002, 93.002],
        [-42.002, 93],
        [-42, 93.002],
      ],
    ],
    [
      'a corner on another side',
      [
        [0, 0],
        [0, 2],
        [1, 2],
        [0, 1],
        [1, 0],
      ],
    ],
    [
      'a corner used twice',
      [
        [42, -93],
        [42, -92.998],
        [42.001, -92.999],
        [42.002, -92.998],
        [42.002, -93],
        [42.001, -92.999],
      ],
    ],
    [
      'a way out and back',
      [
        [0, 0],
        [0, 2],
        [0, 1],
        [1, 1],
      ],
    ],
    [
      'three corners in a line',
      [
        [0, 0],
        [0, 1],
        [0, 2],
      ],
    ],
  ];

  it.each(CROSSED)('are refused where they cross or touch: %s', (_, corners) => {
    // From every corner, so that the closing side gets its turn too.
    const starts = corners.map((_corner, i) => [...corners.slice(i), ...corners.slice(0, i)]);
    for (const way of starts.flatMap((start) => [start, [...start].reverse()])) {
      for (const [name, ...rest] of [['BOUNDARY_AREA'], ['BOUNDARY_LENGTH'], ['BOUNDARY_POSTS', 25]]) {
        expect(() => cell(String(name), way, ...rest)).toThrow(
          /^BOUNDARY_[A-Z]+: corners must go round the outside without crossing or touching, got sides \d+–\d+ and \d+–\d+ that meet$/,
        );
      }
    }
  });

  it('are told by the sides that cross', () => {
    expect(() =>
      cell('BOUNDARY_AREA', [
        [42, -93],
        [42.002, -92.998],
        [42.002, -93],
        [42, -92.998],
      ]),
    ).toThrow('got sides 1–2 and 3–4 that meet');
  });

  it('are refused with a corner typed twice in a row, or with too few different ones', () => {
    expect(() =>
      cell('BOUNDARY_AREA', [
        [0, 0],
        [0, 1],
        [0, 1],
        [1, 1],
      ]),
    ).toThrow('BOUNDARY_AREA: corners must not repeat a corner, got corners 2 and 3 at the same place');
    expect(() =>
      cell('BOUNDARY_AREA', [
        [0, 0],
        [0, 1],
        [0, 0],
      ]),
    ).toThrow('BOUNDARY_AREA: corners must hold at least 3 different corners, got 2');
    expect(() =>
      cell('BOUNDARY_AREA', [
        [0, 0],
        [0, 180],
        [1, 90],
      ]),
    ).toThrow(
      'BOUNDARY_AREA: corners must lie near each other, got corners 1 and 2 on opposite sides of the earth',
    );
  });

  it('of a thousand corners answer quickly', () => {
    const ring = Array.from({ length: 1000 }, (_, i) => {
      const angle = (2 * Math.PI * i) / 1000;
      const radius = 0.01 * (1 + 0.2 * Math.sin(7 * angle));
      return [42 + radius * Math.sin(angle), -93 + radius * Math.cos(angle)] as const;
    });
    const start = performance.now();
    expect(numberOf('BOUNDARY_AREA', ring)).toBeGreaterThan(0);
    expect(performance.now() - start).toBeLessThan(3000);
  });
});
