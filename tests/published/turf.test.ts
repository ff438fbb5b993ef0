/**
 * A second library: @turf/length and @turf/area, which take the earth for a sphere of 6,371,008.8 m. The difference is
 * known from the radii of curvature of WGS84, M north to south and N east to west: lengths differ by M ÷ R or N ÷ R,
 * between −0.56 % and +0.45 %, areas by M N ÷ R², −0.45 % at the equator to +0.90 % at the poles.
 */
import { area } from '@turf/area';
import { lineString, polygon } from '@turf/helpers';
import { length } from '@turf/length';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { numberOf } from '../cell';

type Ring = readonly (readonly [number, number])[];

/**
 * A farm between 60 degrees south and north: corners at ascending angles round a middle, so that nothing crosses.
 * Not nearer the poles, where a straight side and Turf's side of a parallel drift apart.
 */
const farm = fc
  .record({
    latitude: fc.double({ min: -60, max: 60, noNaN: true }),
    longitude: fc.double({ min: -179, max: 179, noNaN: true }),
    meters: fc.array(fc.double({ min: 500, max: 1500, noNaN: true }), { minLength: 4, maxLength: 12 }),
  })
  .map(({ latitude, longitude, meters }): Ring => {
    const degree = 111_320;
    return meters.map((radius, i) => {
      const angle = (2 * Math.PI * i) / meters.length;
      const lat = latitude + (radius * Math.sin(angle)) / degree;
      const lon = longitude + (radius * Math.cos(angle)) / degree / Math.cos((latitude * Math.PI) / 180);
      return [lat, lon] as const;
    });
  });

const lonLat = (ring: Ring): [number, number][] => [...ring, ring[0]!].map(([lat, lon]) => [lon, lat]);

const SPHERE = 6_371_008.8;
const A = 6_378_137;
const E2 = (1 / 298.257223563) * (2 - 1 / 298.257223563);

/** Radii of curvature of WGS84 at a latitude: along the meridian and across it. */
function radii(latitude: number): readonly [number, number] {
  const bend = 1 - E2 * Math.sin((latitude * Math.PI) / 180) ** 2;
  return [(A * (1 - E2)) / bend ** 1.5, A / Math.sqrt(bend)];
}

describe('against Turf on a sphere', () => {
  it('length differs by no more than the radii of curvature do', () => {
    fc.assert(
      fc.property(farm, (ring) => {
        const [m, n] = radii(ring[0]![0]);
        const sphere = length(lineString(lonLat(ring)), { units: 'meters' });
        const ratio = numberOf('BOUNDARY_LENGTH', ring, 'metric') / sphere;
        expect(ratio).toBeGreaterThan(Math.min(m, n) / SPHERE - 2e-5);
        expect(ratio).toBeLessThan(Math.max(m, n) / SPHERE + 2e-5);
      }),
      { numRuns: 200 },
    );
  });

  it('area differs by M N ÷ R² to one part in a thousand', () => {
    fc.assert(
      fc.property(farm, (ring) => {
        const [m, n] = radii(ring[0]![0]);
        const sphere = area(polygon([lonLat(ring)]));
        const ellipsoid = numberOf('BOUNDARY_AREA', ring, 'metric') * 10_000;
        expect(Math.abs(ellipsoid / sphere / ((m * n) / SPHERE ** 2) - 1)).toBeLessThan(1e-3);
      }),
      { numRuns: 200 },
    );
  });
});
