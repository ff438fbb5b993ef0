/**
 * C. F. F. Karney, "Algorithms for geodesics", Journal of Geodesy 87:43–55, 2013: the Planimeter cases of the
 * GeographicLib test set, numbered as there, with its own tolerances (1e-4 m for lengths printed to 4 places, else 1 m
 * and 1 m²). They check how this sheet drives the library. Closed forms check the library: WGS84 is a = 6378137 m,
 * 1/f = 298.257223563.
 */
import { describe, expect, it } from 'vitest';
import { cell, numberOf } from '../cell';

type Corners = readonly (readonly [number, number])[];

const meters = (corners: Corners): number => numberOf('BOUNDARY_LENGTH', corners, 'metric');
const squareMeters = (corners: Corners): number => numberOf('BOUNDARY_AREA', corners, 'metric') * 10_000;
const reversed = (corners: Corners): Corners => [...corners].reverse();

const PLANIMETER: readonly [string, Corners, number, number, number][] = [
  [
    '0, round the north pole',
    [
      [89, 0],
      [89, 90],
      [89, 180],
      [89, -90],
    ],
    631819.8745,
    1e-4,
    24952305678,
  ],
  [
    '0, round the south pole',
    [
      [-89, 0],
      [-89, 90],
      [-89, 180],
      [-89, -90],
    ],
    631819.8745,
    1e-4,
    24952305678,
  ],
  [
    '0, across the equator',
    [
      [0, -1],
      [-1, 0],
      [0, 1],
      [1, 0],
    ],
    627598.2731,
    1e-4,
    24619419146,
  ],
  [
    '0, an octant',
    [
      [90, 0],
      [0, 0],
      [0, 90],
    ],
    30022685,
    1,
    63758202715511,
  ],
  [
    '5, pole and dateline',
    [
      [89, 0.1],
      [89, 90.1],
      [89, -179.9],
    ],
    539297,
    1,
    12476152838.5,
  ],
  [
    '15, a triangle',
    [
      [2, 1],
      [1, 2],
      [3, 3],
    ],
    Number.NaN,
    1,
    18454562325.45119,
  ],
];

describe('Planimeter cases of the GeographicLib test set', () => {
  for (const [name, corners, perimeter, lengthTolerance, area] of PLANIMETER) {
    it(`Planimeter${name}, either way round`, () => {
      for (const way of [corners, reversed(corners)]) {
        if (!Number.isNaN(perimeter))
          expect(Math.abs(meters(way) - perimeter)).toBeLessThanOrEqual(lengthTolerance);
        expect(Math.abs(squareMeters(way) - area)).toBeLessThanOrEqual(1);
      }
    });
  }

  it('Planimeter29: a square of 1 km on the equator is 1 km²', () => {
    const degrees = (1000 / 6378137) * (180 / Math.PI);
    // North by the meridian radius a (1 − e²) at the equator.
    const f = 1 / 298.257223563;
    const north = (1000 / (6378137 * (1 - f * (2 - f)))) * (180 / Math.PI);
    expect(
      Math.abs(
        squareMeters([
          [0, 0],
          [0, degrees],
          [north, degrees],
          [north, 0],
        ]) - 1e6,
      ),
    ).toBeLessThan(0.1);
  });
});

describe('closed forms on WGS84', () => {
  const A = 6378137;
  const F = 1 / 298.257223563;
  const E2 = F * (2 - F);

  /** Length of the meridian between two latitudes, by Simpson's rule over a (1 − e²) ÷ (1 − e² sin²φ)^1.5. */
  function meridian(from: number, to: number): number {
    const [low, high] = [(from * Math.PI) / 180, (to * Math.PI) / 180];
    const steps = 2000;
    const radius = (x: number): number => (A * (1 - E2)) / (1 - E2 * Math.sin(x) ** 2) ** 1.5;
    let sum = radius(low) + radius(high);
    for (let i = 1; i < steps; i++) sum += (i % 2 === 1 ? 4 : 2) * radius(low + ((high - low) * i) / steps);
    return (sum * (high - low)) / steps / 3;
  }

  it('quarter of the equator and two quarter meridians', () => {
    // The quarter meridian of WGS84 is 10001965.729 m (published in many places, from memory).
    expect(Math.abs(meridian(0, 90) - 10001965.729)).toBeLessThan(0.0005);
    expect(
      meters([
        [90, 0],
        [0, 0],
        [0, 90],
      ]),
    ).toBeCloseTo((Math.PI / 2) * A + 2 * meridian(0, 90), 3);
  });

  it('an eighth of the ellipsoid', () => {
    const e = Math.sqrt(E2);
    const whole = 2 * Math.PI * A * A * (1 + ((1 - E2) / e) * Math.atanh(e));
    expect(
      squareMeters([
        [90, 0],
        [0, 0],
        [0, 90],
      ]) /
        (whole / 8),
    ).toBeCloseTo(1, 12);
  });

  it('one degree of latitude at 40 to 41 degrees, as two sides of a thin triangle from the equator', () => {
    // Corners on one meridian and a point a hair to the side: the outline is twice the meridian.
    const hair = 1e-7;
    const thin = meters([
      [40, 0],
      [41, 0],
      [40.5, hair],
    ]);
    expect(thin / (2 * meridian(40, 41))).toBeCloseTo(1, 9);
  });

  it('one degree of longitude on the equator is π a ÷ 180', () => {
    const thin = meters([
      [0, 0],
      [0, 1],
      [1e-7, 0.5],
    ]);
    expect(thin / (2 * ((Math.PI * A) / 180))).toBeCloseTo(1, 9);
  });
});

describe('units', () => {
  const FIELD: Corners = [
    [42, -93],
    [42, -92.999],
    [42.001, -92.999],
    [42.001, -93],
  ];

  it('feet and acres by the exact definitions', () => {
    expect(numberOf('BOUNDARY_LENGTH', FIELD) * 0.3048).toBeCloseTo(meters(FIELD), 8);
    expect(numberOf('BOUNDARY_AREA', FIELD) * 4046.8564224).toBeCloseTo(squareMeters(FIELD), 6);
    expect(cell('BOUNDARY_POSTS', FIELD, 40)).toBe(cell('BOUNDARY_POSTS', FIELD, 40 * 0.3048, 'metric'));
  });
});
