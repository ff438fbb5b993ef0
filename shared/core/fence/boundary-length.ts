import { checkedOutline } from './checked-outline';
import type { Corner } from './corner';
import { measureOutline } from './wgs84';

/**
 * Length of the closed line through the corners, in metres: geodesics on the WGS84 ellipsoid, no hills.
 *
 * Source: karney2013. Errors: those of checkedOutline.
 */
export function boundaryLength(corners: readonly Corner[]): number {
  return measureOutline(checkedOutline(corners)).lengthMeters;
}
