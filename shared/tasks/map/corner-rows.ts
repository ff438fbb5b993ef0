/**
 * The corner table of the map block: one row a corner, typed degrees and plain formulas for what follows from
 * them. Within a farm they agree with geodesics to better than one part in a million.
 *
 *   side   √(north² + east²), north = M·Δφ, east = N·cos φ·Δλ at the middle latitude (M, N radii of curvature)
 *   area   |Σ Δλ·((S₁ + S₂)/2 + sin φ·(east² + 3·north²)/12)|, where S(φ) is the area of the ellipsoid between the
 *          equator and φ per radian of longitude; the last term is the strip between a geodesic and a chord
 *
 * Source: standard formulas of the ellipsoid (from memory), the strip term derived here; checked in the tests
 * against geodesic polygons (karney2013).
 */
import { formula, number, text } from '../../block/cells';
import type { BlockCell } from '../../contract';
import type { Corner } from '../../core/fence/corner';
import { QUANTITIES, symbolOf, type UnitSystem } from '../../units/units';
import type { Draft } from '../draft-block';
import { figure, roundUp } from '../formula-parts';
import { WGS84_AXIS_METERS, WGS84_FLATTENING } from './local-plane';
import { CORNER_HEADINGS, holeName } from './map-block';
import type { MeasuredPaddock } from './measure-map';

export type Rows = readonly [first: number, last: number];
type ColumnName = keyof typeof COLUMNS;

const COLUMNS = {
  latitude: 2,
  longitude: 3,
  side: 4,
  gaps: 5,
  north: 6,
  east: 7,
  band: 8,
  piece: 9,
} as const;

export interface CornerRows {
  readonly of: (paddock: string) => { readonly outline: Rows; readonly holes: readonly Rows[] };
  readonly column: (rows: Rows, column: ColumnName) => string;
  /** The square metres in the unit of area. */
  readonly areaUnit: string;
}

/** By definition: WGS84, and the units of the table. */
const AXIS = figure(WGS84_AXIS_METERS);
const E2 = figure(WGS84_FLATTENING * (2 - WGS84_FLATTENING));

interface Figures {
  readonly lengthUnit: string;
  readonly postSpacing: string;
}

export function addCorners(
  draft: Draft,
  paddocks: readonly MeasuredPaddock[],
  units: UnitSystem,
  postSpacing: string,
): CornerRows {
  const figures = { lengthUnit: figure(QUANTITIES.length[units].factor), postSpacing };
  const headings = [
    ...CORNER_HEADINGS,
    `side (${symbolOf('length', units)})`,
    'gaps',
    'north (m)',
    'east (m)',
    'band (m²)',
    'piece (m²)',
  ];
  draft.add(headings.map(text), 'heading');
  const rows = new Map(
    paddocks.map(({ name, corners, holes }) => [
      name,
      {
        outline: addRing(draft, name, corners, figures),
        holes: holes.map((hole, i) => addRing(draft, holeName(name, i), hole, figures)),
      },
    ]),
  );
  return {
    of: (paddock) => rows.get(paddock)!,
    column: ([first, last], column) => draft.down(first, last, COLUMNS[column]),
    areaUnit: figure(QUANTITIES.area[units].factor),
  };
}

function addRing(draft: Draft, name: string, corners: readonly Corner[], figures: Figures): Rows {
  const first = draft.next();
  const last = first + corners.length - 1;
  corners.forEach((corner, i) => {
    const row = first + i;
    draft.add(cornerCells(draft, name, i, corner, [row, row === last ? first : row + 1], figures), [
      'plain',
      'plain',
      'input',
      'input',
      'plain',
      'plain',
      'muted',
      'muted',
      'muted',
      'muted',
    ]);
  });
  return [first, last];
}

function cornerCells(
  draft: Draft,
  name: string,
  index: number,
  corner: Corner,
  [row, next]: Rows,
  { lengthUnit, postSpacing }: Figures,
): BlockCell[] {
  const at = (column: ColumnName, ofRow = row): string => draft.at(ofRow, COLUMNS[column]);
  const middle = radians(`(${at('latitude')}+${at('latitude', next)})/2`);
  const w = `(1-${E2}*SIN(${middle})^2)`;
  const turn = radians(`(MOD(${at('longitude', next)}-${at('longitude')}+180;360)-180)`);
  const sine = `SIN(${radians(at('latitude'))})`;
  const e = `SQRT(${E2})`;
  return [
    text(name),
    number(index + 1),
    number(corner.latitudeDegrees, '0.0000000'),
    number(corner.longitudeDegrees, '0.0000000'),
    formula(`=SQRT(${at('north')}^2+${at('east')}^2)/${lengthUnit}`, '#,##0.0'),
    formula(`=IF(${postSpacing}>0;${roundUp(`${at('side')}/${postSpacing}`)};"")`, '0'),
    formula(
      `=${AXIS}*(1-${E2})/(${w}*SQRT(${w}))*${radians(`(${at('latitude', next)}-${at('latitude')})`)}`,
      '0.00',
    ),
    formula(`=${AXIS}/SQRT(${w})*COS(${middle})*${turn}`, '0.00'),
    formula(
      `=${AXIS}^2*(1-${E2})/2*(${sine}/(1-${E2}*${sine}^2)+LN((1+${e}*${sine})/(1-${e}*${sine}))/(2*${e}))`,
      '0',
    ),
    formula(
      `=${turn}*((${at('band')}+${at('band', next)})/2+SIN(${middle})*(${at('east')}^2+3*${at('north')}^2)/12)`,
      '0',
    ),
  ];
}

function radians(degrees: string): string {
  return `(${degrees}*PI()/180)`;
}
