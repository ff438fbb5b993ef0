import type { Corner } from '../../core/fence/corner';

/** Metres east and north of a middle point. */
export interface PlanePoint {
  readonly east: number;
  readonly north: number;
}

/** WGS84 ellipsoid: half axis in metres and flattening (definition). */
export const WGS84_AXIS_METERS = 6_378_137;
export const WGS84_FLATTENING = 1 / 298.257223563;

const DEGREE = Math.PI / 180;

/**
 * Flattens a farm round a point: metres along the meridian and along the parallel, with the radii of curvature
 * of the WGS84 ellipsoid there. For drawing and for finding neighbours, not for areas: over a farm of 2 km the
 * scale is off by less than 1 in 1,000 up to 70 degrees of latitude. Longitudes may run across 180°.
 *
 *   M = a (1 − e²) ÷ (1 − e² sin²φ)^1.5     N = a ÷ √(1 − e² sin²φ)
 */
export function localPlane(middle: Corner): (corner: Corner) => PlanePoint {
  const e2 = WGS84_FLATTENING * (2 - WGS84_FLATTENING);
  const latitude = middle.latitudeDegrees * DEGREE;
  const w = 1 - e2 * Math.sin(latitude) ** 2;
  const metersPerNorth = ((WGS84_AXIS_METERS * (1 - e2)) / w ** 1.5) * DEGREE;
  const metersPerEast = (WGS84_AXIS_METERS / Math.sqrt(w)) * Math.cos(latitude) * DEGREE;
  return ({ latitudeDegrees, longitudeDegrees }) => ({
    east: shortWay(longitudeDegrees - middle.longitudeDegrees) * metersPerEast,
    north: (latitudeDegrees - middle.latitudeDegrees) * metersPerNorth,
  });
}

/** Middle of the box round the corners, across 180° where that is the shorter way. */
export function middleOf(corners: readonly Corner[]): Corner {
  const first = corners[0] ?? { latitudeDegrees: 0, longitudeDegrees: 0 };
  const norths = corners.map(({ latitudeDegrees }) => latitudeDegrees);
  const easts = corners.map(({ longitudeDegrees }) => shortWay(longitudeDegrees - first.longitudeDegrees));
  return {
    latitudeDegrees: between(norths),
    longitudeDegrees: shortWay(first.longitudeDegrees + between(easts)),
  };
}

function between(values: readonly number[]): number {
  const [low, high] = values.reduce(([l, h], v) => [Math.min(l, v), Math.max(h, v)], [Infinity, -Infinity]);
  return (low + high) / 2;
}

function shortWay(degrees: number): number {
  return ((((degrees + 180) % 360) + 360) % 360) - 180;
}
