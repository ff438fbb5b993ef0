/**
 * Shapes out of GeoJSON (RFC 7946): Polygon, MultiPolygon, LineString, MultiLineString, Point, MultiPoint, in
 * features and collections of any nesting. Whatever cannot be used is named, the rest is read.
 */
import { checkedOutline } from '../../core/fence/checked-outline';
import type { Corner } from '../../core/fence/corner';
import { Refusal } from '../../refusals';
import { type Cleaned, cleanCorners, cleanOutline } from './clean-corners';
import { MOST_CORNERS, MOST_CORNERS_OF_ONE, MOST_DEPTH, MOST_SHAPES } from './limits';
import type { FarmMap, MapShape } from './map-model';
import { MapTrouble } from './map-trouble';
import { uniqueNames } from './unique-names';
import * as words from './words';

interface Found {
  readonly shapes: MapShape[];
  readonly problems: string[];
  unnamed: number;
  corners: number;
}

type Json = Readonly<Record<string, unknown>>;

/** Errors: MapTrouble where nothing at all can be used or the map is too big. */
export function mapFromGeojson(value: unknown): FarmMap {
  const found: Found = { shapes: [], problems: [], unnamed: 0, corners: 0 };
  refuseOtherCoordinates(value);
  walk(value, '', found, 0);
  if (found.shapes.length === 0) {
    const [why = words.NO_SHAPES] = found.problems;
    throw new MapTrouble(words.nothingUsable(why));
  }
  const names = uniqueNames(found.shapes.map(({ name }) => name));
  return {
    shapes: found.shapes.map((shape, i) => ({ ...shape, name: names[i] ?? shape.name })),
    problems: found.problems,
  };
}

/** GeoJSON is always WGS84; older files could name another system, in metres for example. */
function refuseOtherCoordinates(value: unknown): void {
  const crs =
    isObject(value) && isObject(value.crs) && isObject(value.crs.properties) ? value.crs : undefined;
  const name = crs ? String((crs.properties as Json).name ?? '') : '';
  if (name === '' || /CRS84|EPSG:+4326|WGS ?84/i.test(name)) return;
  throw new MapTrouble(words.otherCoordinates(name.slice(0, 60)));
}

/** Counted on the way, before the check for crossing sides, which takes the square of the corners. */
function addShape(shape: MapShape, found: Found): void {
  found.shapes.push(shape);
  if (found.shapes.length > MOST_SHAPES) {
    throw new MapTrouble(words.tooManyShapes(MOST_SHAPES));
  }
}

function countCorners(positions: unknown, found: Found): void {
  found.corners += Array.isArray(positions) ? positions.length : 0;
  if (found.corners <= MOST_CORNERS) return;
  throw new MapTrouble(words.tooManyCorners(MOST_CORNERS));
}

function walk(value: unknown, name: string, found: Found, depth: number): void {
  if (depth > MOST_DEPTH) throw new MapTrouble(words.nestedDeep(MOST_DEPTH));
  if (!isObject(value)) {
    found.problems.push(words.NOT_AN_OBJECT);
    return;
  }
  const children = value.type === 'FeatureCollection' ? value.features : value.geometries;
  if (value.type === 'FeatureCollection' || value.type === 'GeometryCollection') {
    const list = Array.isArray(children) ? children : [];
    if (!Array.isArray(children)) found.problems.push(words.noList(value.type));
    for (const child of list) walk(child, name, found, depth + 1);
    return;
  }
  if (value.type !== 'Feature') {
    addGeometry(value, name, found);
    return;
  }
  const own = nameOf(value) || name;
  if (value.geometry === null || value.geometry === undefined) {
    found.problems.push(words.noGeometry(quoted(own)));
    return;
  }
  walk(value.geometry, own, found, depth + 1);
}

function nameOf(feature: Json): string {
  const properties = isObject(feature.properties) ? feature.properties : {};
  const key = ['name', 'Name', 'NAME', 'title', 'label', 'id'].find((one) => isNameValue(properties[one]));
  const value = key === undefined ? feature.id : properties[key];
  return isNameValue(value) ? String(value).trim() : '';
}

function isNameValue(value: unknown): value is string | number {
  return (typeof value === 'string' && value.trim() !== '') || typeof value === 'number';
}

function addGeometry(geometry: Json, given: string, found: Found): void {
  const { type, coordinates } = geometry;
  const name = given || `Shape ${++found.unnamed}`;
  const add = ADDERS.get(type);
  if (add) add(coordinates, name, found);
  else {
    found.problems.push(words.otherShape(quoted(name), String(type).slice(0, 30)));
  }
}

type Adder = (coordinates: unknown, name: string, found: Found) => void;

function eachPart(coordinates: unknown, name: string, found: Found, add: Adder): void {
  const parts = Array.isArray(coordinates) ? coordinates : [];
  if (parts.length === 0) found.problems.push(words.emptyShape(quoted(name)));
  for (const [i, part] of parts.entries())
    add(part, parts.length === 1 ? name : `${name}, part ${i + 1}`, found);
}

const addArea: Adder = (coordinates, name, found) => {
  const rings = Array.isArray(coordinates) ? coordinates : [];
  const outline = usableOutline(rings[0], found);
  if (!outline.ok) {
    found.problems.push(`${quoted(name)} was left out: ${outline.why}.`);
    return;
  }
  const holes: (readonly Corner[])[] = [];
  for (const [i, ring] of rings.slice(1).entries()) {
    const hole = usableOutline(ring, found);
    if (hole.ok) holes.push(hole.corners);
    else found.problems.push(words.badHole(i + 1, quoted(name), hole.why));
  }
  addShape({ name, form: 'area', corners: outline.corners, holes }, found);
};

function usableOutline(positions: unknown, found: Found): Cleaned {
  countCorners(positions, found);
  const cleaned = cleanOutline(positions);
  if (!cleaned.ok) return cleaned;
  if (cleaned.corners.length > MOST_CORNERS_OF_ONE) {
    return { ok: false, why: `it has ${cleaned.corners.length} corners, more than ${MOST_CORNERS_OF_ONE}` };
  }
  try {
    return { ok: true, corners: checkedOutline(cleaned.corners) };
  } catch (error) {
    if (error instanceof Refusal) return { ok: false, why: error.message };
    throw error;
  }
}

const addLine: Adder = (coordinates, name, found) => {
  countCorners(coordinates, found);
  const line = cleanCorners(coordinates);
  if (line.ok && line.corners.length >= 2) {
    addShape({ name, form: 'line', corners: line.corners, holes: [] }, found);
  } else
    found.problems.push(`${quoted(name)} was left out: ${line.ok ? 'a line needs two points' : line.why}.`);
};

const addPoint: Adder = (coordinates, name, found) => {
  const point = cleanCorners([coordinates]);
  if (point.ok) addShape({ name, form: 'point', corners: point.corners, holes: [] }, found);
  else found.problems.push(`${quoted(name)} was left out: ${point.why}.`);
};

const ADDERS: ReadonlyMap<unknown, Adder> = new Map<unknown, Adder>([
  ['Polygon', addArea],
  ['MultiPolygon', (coordinates, name, found) => eachPart(coordinates, name, found, addArea)],
  ['LineString', addLine],
  ['MultiLineString', (coordinates, name, found) => eachPart(coordinates, name, found, addLine)],
  ['Point', addPoint],
  ['MultiPoint', (coordinates, name, found) => eachPart(coordinates, name, found, addPoint)],
]);

function quoted(name: string): string {
  return name === '' ? 'A shape without a name' : `"${name.slice(0, 60)}"`;
}

function isObject(value: unknown): value is Json {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
