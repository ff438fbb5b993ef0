import { checkedOutline } from './checked-outline';
import type { Corner } from './corner';
import { measureOutline } from './wgs84';

/**
 * Area inside the closed line through the corners, in square metres, either way round: geodesic polygon on the
 * WGS84 ellipsoid, on the map, not along slopes. Inside is the smaller side.
 *
 * Source: karney2013. Errors: those of checkedOutline.
 */
export function boundaryArea(corners: readonly Corner[]): number {
  return measureOutline(checkedOutline(corners)).areaSquareMeters;
}
