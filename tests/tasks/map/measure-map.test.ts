import area from '@turf/area';
import { lineString, polygon } from '@turf/helpers';
import length from '@turf/length';
import { describe, expect, it } from 'vitest';
import { findNeighbours } from '../../../shared/tasks/map/find-neighbours';
import { guessRole } from '../../../shared/tasks/map/guess-role';
import { localPlane } from '../../../shared/tasks/map/local-plane';
import { mapFromGeojson } from '../../../shared/tasks/map/map-from-geojson';
import { measureMap } from '../../../shared/tasks/map/measure-map';
import { SAMPLE_MAP } from './sample-map';

const measured = measureMap(
  mapFromGeojson(SAMPLE_MAP).shapes.map((shape) => ({ ...shape, role: guessRole(shape) })),
  8,
  3,
);
const byName = new Map(measured.paddocks.map((paddock) => [paddock.name, paddock]));

describe('measureMap', () => {
  it('agrees with @turf/area and @turf/length, which reckon on a sphere, to within its 0.7 %', () => {
    for (const feature of SAMPLE_MAP.features) {
      const paddock = byName.get(feature.properties.name);
      if (!paddock) continue;
      const coordinates = feature.geometry.coordinates as unknown as number[][][];
      expect(paddock.areaSquareMeters / area(polygon(coordinates))).toBeCloseTo(1, 2);
      const outline = length(lineString(coordinates[0]!), { units: 'meters' });
      expect(Math.abs(paddock.boundaryMeters / outline - 1)).toBeLessThan(0.007);
    }
    expect(byName.size).toBe(4);
  });

  it('finds who adjoins whom, across the wobble of a walked line, and no others', () => {
    expect(byName.get('North')?.adjoining).toEqual(['Middle']);
    expect(byName.get('Middle')?.adjoining).toEqual(['North', 'Pond field']);
    expect(byName.get('Pond field')?.adjoining).toEqual(['Middle']);
    expect(byName.get('Far')?.adjoining).toEqual([]);
    expect(measured.overlapping).toEqual([]);
  });

  it('measures to water and wells: 0.0005° of latitude, 0.001° of longitude at 44° N', () => {
    // Degree lengths of WGS84 at 44°: 111,112 m of latitude and 80,212 m of longitude; from the series
    // 111132.92 − 559.82 cos 2φ + 1.175 cos 4φ and 111412.84 cos φ − 93.5 cos 3φ (NGA, from memory).
    expect(byName.get('North')?.waterMeters).toBeCloseTo(0.0005 * 111_112, 1);
    expect(byName.get('North')?.wellMeters).toBeCloseTo(0.001 * 80_212, 1);
  });

  it('takes the hole off the area but leaves the boundary to the outline', () => {
    const far = byName.get('Far');
    const outline = SAMPLE_MAP.features[3]!.geometry.coordinates as unknown as number[][][];
    const hole = area(polygon([outline[1]!]));
    expect(far!.areaSquareMeters / (area(polygon([outline[0]!])) - hole)).toBeCloseTo(1, 2);
    expect(far!.holesBoundaryMeters).toBeGreaterThan(0);
  });
});

describe('localPlane', () => {
  it('has the published lengths of a degree at 45° (111.132 km and 78.847 km; tables of WGS84, from memory)', () => {
    const plane = localPlane({ latitudeDegrees: 45, longitudeDegrees: 0 });
    expect(plane({ latitudeDegrees: 46, longitudeDegrees: 0 }).north / 1000).toBeCloseTo(111.132, 3);
    expect(plane({ latitudeDegrees: 45, longitudeDegrees: 1 }).east / 1000).toBeCloseTo(78.847, 3);
  });

  it('goes the short way across 180°', () => {
    const plane = localPlane({ latitudeDegrees: 0, longitudeDegrees: 179.999 });
    expect(plane({ latitudeDegrees: 0, longitudeDegrees: -179.999 }).east).toBeCloseTo(222.64, 1);
  });
});

const square = (east: number, north: number, size = 100) => [
  { east, north },
  { east: east + size, north },
  { east: east + size, north: north + size },
  { east, north: north + size },
];

describe('findNeighbours, by plane geometry', () => {
  it('does not count a touch of corners', () => {
    expect(findNeighbours([square(0, 0), square(100, 100)], 3).adjoining).toEqual([[], []]);
  });

  it('counts a shared stretch of unequal sides', () => {
    expect(findNeighbours([square(0, 0), square(102, 60, 30)], 3).adjoining).toEqual([[1], [0]]);
  });

  it('does not reach across a 5 m lane with a tolerance of 3 m, but does with 6 m', () => {
    const pair = [square(0, 0), square(105, 0)];
    expect(findNeighbours(pair, 3).adjoining).toEqual([[], []]);
    expect(findNeighbours(pair, 6).adjoining).toEqual([[1], [0]]);
  });

  it('names paddocks that lie over one another', () => {
    expect(findNeighbours([square(0, 0), square(50, 50)], 3).overlapping).toEqual([[0, 1]]);
    expect(findNeighbours([square(0, 0), square(99, 0)], 3).overlapping).toEqual([]);
    // Drawn twice, also from another corner on, and an outline with a bay.
    const [first, ...rest] = square(0, 0);
    expect(findNeighbours([square(0, 0), square(200, 0), [...rest, first!]], 3).overlapping).toEqual([
      [0, 2],
    ]);
    const bay = [
      [0, 0],
      [90, 0],
      [90, 90],
      [60, 90],
      [60, 10],
      [30, 10],
      [30, 90],
      [0, 90],
    ];
    const outline = bay.map(([east = 0, north = 0]) => ({ east, north }));
    expect(findNeighbours([outline, outline], 3).overlapping).toEqual([[0, 1]]);
  });

  it('takes 500 paddocks in a grid in bearable time', () => {
    const grid = Array.from({ length: 500 }, (_, i) => square((i % 25) * 100, Math.floor(i / 25) * 100));
    const { adjoining } = findNeighbours(grid, 3);
    expect(adjoining[0]).toEqual([1, 25]);
    expect(adjoining[26]).toEqual([1, 25, 27, 51]);
  });
});
