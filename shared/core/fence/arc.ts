/** Points and great-circle arcs on the unit sphere, for deciding whether an outline crosses itself. */
import type { Corner } from './corner';

export interface Point {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** Closer than this, points count as one and a point counts as lying on an arc: 0.6 mm on the ground. */
const TOUCH_RADIANS = 1e-10;

/** Corner as a point of the unit sphere. At a pole the longitude drops out; 180 and −180 degrees agree. */
export function pointOf({ latitudeDegrees, longitudeDegrees }: Corner): Point {
  const latitude = (latitudeDegrees * Math.PI) / 180;
  const longitude = (longitudeDegrees * Math.PI) / 180;
  const fromAxis = Math.abs(latitudeDegrees) === 90 ? 0 : Math.cos(latitude);
  return { x: fromAxis * Math.cos(longitude), y: fromAxis * Math.sin(longitude), z: Math.sin(latitude) };
}

export function samePoint(a: Point, b: Point): boolean {
  return distance(a, b) <= TOUCH_RADIANS;
}

/** True where the two points lie opposite each other, so that no shortest line between them is the only one. */
export function areOpposite(a: Point, b: Point): boolean {
  return distance(a, b) > 1.9999;
}

/** True where arcs ab and cd have a point in common. */
export function arcsMeet(a: Point, b: Point, c: Point, d: Point): boolean {
  if (areFarApart(a, b, c, d)) return false;
  return (
    arcsCross(a, b, c, d) || isOnArc(a, c, d) || isOnArc(b, c, d) || isOnArc(c, a, b) || isOnArc(d, a, b)
  );
}

/** True where p lies on arc ab, its ends included. */
export function isOnArc(p: Point, a: Point, b: Point): boolean {
  const across = side(a, b, p) / distance(a, b);
  if (Math.abs(across) > TOUCH_RADIANS) return false;
  const middle = { x: a.x + b.x, y: a.y + b.y, z: a.z + b.z };
  return dot(p, middle) >= dot(a, middle) || samePoint(p, a) || samePoint(p, b);
}

/** An arc lies within the ball over its chord, so arcs whose balls are apart cannot meet. */
function areFarApart(a: Point, b: Point, c: Point, d: Point): boolean {
  const reach = (distance(a, b) + distance(c, d)) / 2 + TOUCH_RADIANS;
  const x = (a.x + b.x - c.x - d.x) / 2;
  const y = (a.y + b.y - c.y - d.y) / 2;
  const z = (a.z + b.z - c.z - d.z) / 2;
  return x * x + y * y + z * z > reach * reach;
}

/** The four-turns test: all of acb, cbd, bda and dac turn the same way (from memory, spherical geometry). */
function arcsCross(a: Point, b: Point, c: Point, d: Point): boolean {
  const acb = side(a, c, b);
  return acb * side(b, d, a) > 0 && acb * side(c, b, d) > 0 && acb * side(d, a, c) > 0;
}

/** Positive where p lies to the left of the way from a to b; by differences, so that metres keep their digits. */
function side(a: Point, b: Point, p: Point): number {
  const [ux, uy, uz] = [b.x - a.x, b.y - a.y, b.z - a.z];
  const [vx, vy, vz] = [p.x - a.x, p.y - a.y, p.z - a.z];
  return a.x * (uy * vz - uz * vy) + a.y * (uz * vx - ux * vz) + a.z * (ux * vy - uy * vx);
}

function dot(a: Point, b: Point): number {
  return a.x * b.x + a.y * b.y + a.z * b.z;
}

function distance(a: Point, b: Point): number {
  return Math.hypot(a.x - b.x, a.y - b.y, a.z - b.z);
}
