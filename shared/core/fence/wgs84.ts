/** The WGS84 ellipsoid of geographiclib-geodesic (C. F. F. Karney, Journal of Geodesy 87:43, 2013). */
import library from 'geographiclib-geodesic';
import type { Corner } from './corner';

/** Perimeter and area of a closed outline; the area is of the smaller side, whichever way round it runs. */
export function measureOutline(corners: readonly Corner[]): {
  lengthMeters: number;
  areaSquareMeters: number;
} {
  const polygon = library.Geodesic.WGS84.Polygon(false);
  for (const { latitudeDegrees, longitudeDegrees } of corners) {
    polygon.AddPoint(latitudeDegrees, longitudeDegrees);
  }
  const { perimeter, area } = polygon.Compute(false, true);
  return { lengthMeters: perimeter, areaSquareMeters: Math.abs(area ?? 0) };
}

/** Lengths of the sides of a closed outline, from each corner to the next, in metres. */
export function outlineSides(corners: readonly Corner[]): readonly number[] {
  return corners.map((from, i) => {
    const to = corners[(i + 1) % corners.length] ?? from;
    const { s12 } = library.Geodesic.WGS84.Inverse(
      from.latitudeDegrees,
      from.longitudeDegrees,
      to.latitudeDegrees,
      to.longitudeDegrees,
      library.Geodesic.DISTANCE,
    );
    return s12 ?? 0;
  });
}
