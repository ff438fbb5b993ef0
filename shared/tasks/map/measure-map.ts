/** Everything that is measured on a map: the paddocks, who adjoins whom, and how far water and wells are. */
import { boundaryArea } from '../../core/fence/boundary-area';
import type { Corner } from '../../core/fence/corner';
import { sidePosts } from '../../core/fence/side-posts';
import { outlineSides } from '../../core/fence/wgs84';
import { findNeighbours } from './find-neighbours';
import { type FlatShape, gapToShape } from './gap-to-shape';
import { localPlane, middleOf, type PlanePoint } from './local-plane';
import type { MapShape, Role } from './map-model';
import { type Gap, nearest } from './plane-distance';

export interface MappedShape extends MapShape {
  readonly role: Role;
}

export interface MeasuredPaddock {
  readonly name: string;
  readonly corners: readonly Corner[];
  readonly holes: readonly (readonly Corner[])[];
  /** From each corner to the next. */
  readonly sidesMeters: readonly number[];
  readonly boundaryMeters: number;
  /** Holes taken off. */
  readonly areaSquareMeters: number;
  readonly holesBoundaryMeters: number;
  readonly posts: number;
  readonly adjoining: readonly string[];
  /** Nearest water and well; undefined where the map has none. */
  readonly waterMeters: number | undefined;
  readonly wellMeters: number | undefined;
  readonly outline: readonly PlanePoint[];
}

export interface MeasuredMap {
  readonly paddocks: readonly MeasuredPaddock[];
  /** Names of paddocks that lie over one another. */
  readonly overlapping: readonly (readonly [string, string])[];
  /** Water, wells and other things to draw. */
  readonly marks: readonly Mark[];
}

export interface Mark extends FlatShape {
  readonly name: string;
  readonly role: Role;
  /** From the paddock that is nearest, for water and wells. */
  readonly gap: Gap | undefined;
}

/** Lengths and areas are geodesic on WGS84 (karney2013); distances and neighbours on a local plane. */
export function measureMap(
  shapes: readonly MappedShape[],
  postSpacingMeters: number,
  toleranceMeters: number,
): MeasuredMap {
  const plane = localPlane(middleOf(shapes.flatMap(({ corners }) => corners)));
  const flat = shapes.map((shape) => ({ ...shape, points: shape.corners.map(plane) }));
  const areas = flat.filter(({ role, form }) => role === 'paddock' && form === 'area');
  const marks = flat.filter((shape) => !areas.includes(shape));
  const { adjoining, overlapping } = findNeighbours(
    areas.map(({ points }) => points),
    toleranceMeters,
  );
  const nameAt = (i: number): string => areas[i]?.name ?? '';
  const toNearest = (outline: readonly PlanePoint[], role: Role): number | undefined => {
    const distances = marks
      .filter((mark) => mark.role === role)
      .map((mark) => gapToShape(outline, mark).meters);
    return distances.length === 0 ? undefined : Math.min(...distances);
  };
  return {
    paddocks: areas.map((shape, i) => ({
      ...measurePaddock(shape, postSpacingMeters),
      adjoining: (adjoining[i] ?? []).map(nameAt),
      waterMeters: toNearest(shape.points, 'water'),
      wellMeters: toNearest(shape.points, 'well'),
      outline: shape.points,
    })),
    overlapping: overlapping.map(([i, j]) => [nameAt(i), nameAt(j)] as const),
    marks: marks.map(({ name, role, form, points }) => {
      const near = role === 'water' || role === 'well' ? areas : [];
      const gaps = near.map((area) => gapToShape(area.points, { form, points }));
      return { name, role, form, points, gap: gaps.length > 0 ? nearest(gaps) : undefined };
    }),
  };
}

function measurePaddock({ name, corners, holes }: MapShape, postSpacingMeters: number) {
  const sidesMeters = outlineSides(corners);
  const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
  return {
    name,
    corners,
    holes,
    sidesMeters,
    boundaryMeters: sum(sidesMeters),
    areaSquareMeters: boundaryArea(corners) - sum(holes.map((hole) => boundaryArea(hole))),
    holesBoundaryMeters: sum(holes.flatMap((hole) => outlineSides(hole))),
    posts: sidePosts(sidesMeters, postSpacingMeters, true),
  };
}
