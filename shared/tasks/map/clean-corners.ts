import type { Corner } from '../../core/fence/corner';

/** Corners out of GeoJSON positions, or why not. */
export type Cleaned =
  | { readonly ok: true; readonly corners: readonly Corner[] }
  | { readonly ok: false; readonly why: string };

/** Two points nearer than about a centimetre are the same point: 1e-7 degrees of latitude are 11 mm. */
const SAME_DEGREES = 1e-7;

/**
 * Reads positions ([longitude, latitude, …] in decimal degrees, RFC 7946 section 3.1.1) and drops points that
 * repeat the one before.
 */
export function cleanCorners(positions: unknown): Cleaned {
  if (!Array.isArray(positions)) return { ok: false, why: 'it has no list of coordinates' };
  const corners: Corner[] = [];
  for (const [i, position] of positions.entries()) {
    const [longitude, latitude] = Array.isArray(position) ? position : [];
    const why = degreesTrouble(latitude, longitude);
    if (why) return { ok: false, why: `point ${i + 1} ${why}` };
    const corner: Corner = { latitudeDegrees: latitude, longitudeDegrees: longitude };
    const last = corners[corners.length - 1];
    if (!last || !samePlace(last, corner)) corners.push(corner);
  }
  return { ok: true, corners };
}

/** The same for an outline: its last point repeats the first (RFC 7946 section 3.1.6) and is dropped. */
export function cleanOutline(positions: unknown): Cleaned {
  const cleaned = cleanCorners(positions);
  if (!cleaned.ok) return cleaned;
  const { corners } = cleaned;
  const [first, last] = [corners[0], corners[corners.length - 1]];
  const closed = corners.length > 1 && first && last && samePlace(first, last);
  return { ok: true, corners: closed ? corners.slice(0, -1) : corners };
}

/** What is wrong with a latitude and a longitude; undefined where nothing is. */
export function degreesTrouble(latitude: unknown, longitude: unknown): string | undefined {
  if (!isNumber(latitude) || !isNumber(longitude)) return 'is not two numbers';
  if (Math.abs(latitude) > 90) {
    const swapped = Math.abs(longitude) <= 90 ? '; latitude and longitude may be swapped' : '';
    return `has latitude ${latitude}, which must lie between -90 and 90${swapped}`;
  }
  if (Math.abs(longitude) > 180) return `has longitude ${longitude}, which must lie between -180 and 180`;
  return undefined;
}

function isNumber(value: unknown): value is number {
  return typeof value === 'number' && Number.isFinite(value);
}

function samePlace(a: Corner, b: Corner): boolean {
  return (
    Math.abs(a.latitudeDegrees - b.latitudeDegrees) < SAME_DEGREES &&
    Math.abs(a.longitudeDegrees - b.longitudeDegrees) < SAME_DEGREES
  );
}
