/** The map as a drawing to scale: plain shapes and words in picture units, north up. */
import { fromInside, symbolOf, type UnitSystem } from '../../units/units';
import type { PlanePoint } from './local-plane';
import type { Role, ShapeForm } from './map-model';
import type { MeasuredMap, MeasuredPaddock } from './measure-map';

export interface Spot {
  readonly x: number;
  readonly y: number;
}

export interface SketchLabel extends Spot {
  readonly text: string;
  /** Degrees, so that the words run along their side. */
  readonly turn: number;
}

export interface SketchPaddock {
  readonly name: string;
  readonly area: string;
  readonly outline: readonly Spot[];
  readonly middle: Spot;
  readonly sides: readonly SketchLabel[];
}

export interface SketchMark {
  readonly name: string;
  readonly role: Role;
  readonly form: ShapeForm;
  readonly points: readonly Spot[];
  /** Where the name stands. */
  readonly label: Spot;
  /** A dashed line from the nearest paddock, with its length. */
  readonly gap: { readonly from: Spot; readonly to: Spot; readonly label: SketchLabel } | undefined;
}

export interface Sketch {
  readonly width: number;
  readonly height: number;
  readonly paddocks: readonly SketchPaddock[];
  readonly marks: readonly SketchMark[];
  readonly bar: { readonly length: number; readonly text: string };
}

/** Picture units, one a pixel on the page. Judgement. */
const LEAST_WIDTH = 560;
const MOST_WIDTH = 1600;
/** A middling paddock is drawn this wide, so that its name and sides have room. */
const PADDOCK_SIZE = 130;
const MARGIN = 34;
const FOOT = 46;
const LEAST_HEIGHT = 160;
const MOST_HEIGHT = 1600;
/** A side drawn shorter than this has no room for its length. */
const SHORTEST_LABELLED = 34;
/** Words stand this far inside their side. */
const LABEL_INSET = 9;

export function sketchMap(map: MeasuredMap, units: UnitSystem): Sketch {
  const all = [
    ...map.paddocks.flatMap(({ outline }) => outline),
    ...map.marks.flatMap(({ points }) => points),
  ];
  const box = boxOf(all);
  const width = widthFor(map, box.wide);
  const scale = Math.min((width - 2 * MARGIN) / box.wide, (MOST_HEIGHT - 2 * MARGIN - FOOT) / box.high);
  const height = Math.max(LEAST_HEIGHT, box.high * scale + 2 * MARGIN + FOOT);
  const left = (width - box.wide * scale) / 2;
  const spot = ({ east, north }: PlanePoint): Spot => ({
    x: left + (east - box.west) * scale,
    y: MARGIN + (box.north - north) * scale,
  });
  const feet = (meters: number): string => lengthText(meters, units);
  return {
    width,
    height,
    paddocks: map.paddocks.map((paddock) => sketchPaddock(paddock, spot, units)),
    marks: map.marks.map(({ name, role, form, points, gap }) => ({
      name,
      role,
      form,
      points: points.map(spot),
      label: labelSpot(points.map(spot), form),
      gap: gap && {
        from: spot(gap.from),
        to: spot(gap.to),
        label: alongSide(spot(gap.from), spot(gap.to), feet(gap.meters), 7),
      },
    })),
    bar: scaleBar(scale, width, units),
  };
}

function widthFor(map: MeasuredMap, wideMeters: number): number {
  const sizes = map.paddocks.map(({ areaSquareMeters }) => Math.sqrt(areaSquareMeters)).sort((a, b) => a - b);
  const middling = sizes[Math.floor(sizes.length / 2)] ?? wideMeters;
  const wanted = (PADDOCK_SIZE * wideMeters) / middling + 2 * MARGIN;
  return Math.round(Math.min(MOST_WIDTH, Math.max(LEAST_WIDTH, wanted)));
}

function sketchPaddock(
  { name, areaSquareMeters, outline, sidesMeters }: MeasuredPaddock,
  spot: (point: PlanePoint) => Spot,
  units: UnitSystem,
): SketchPaddock {
  const spots = outline.map(spot);
  // The page's y runs down, so an outline that turns left on the ground has its inside on the other hand.
  const inset = signedArea(spots) > 0 ? LABEL_INSET : -LABEL_INSET;
  const sides = spots.flatMap((from, i) => {
    const to = spots[(i + 1) % spots.length]!;
    if (Math.hypot(to.x - from.x, to.y - from.y) < SHORTEST_LABELLED) return [];
    return [alongSide(from, to, lengthText(sidesMeters[i] ?? 0, units), inset)];
  });
  return { name, area: areaText(areaSquareMeters, units), outline: spots, middle: middleOf(spots), sides };
}

/** Under the middle stretch of a line, beside a point, in the middle of an area. */
function labelSpot(spots: readonly Spot[], form: ShapeForm): Spot {
  if (form === 'area') return middleOf(spots);
  const half = Math.floor((spots.length - 1) / 2);
  const middle = mean(spots.slice(half, half + 2));
  return { x: middle.x + 7, y: middle.y + 14 };
}

/** Words in the middle of a line, `inset` to its right hand as it runs, never upside down. */
function alongSide(from: Spot, to: Spot, text: string, inset: number): SketchLabel {
  const size = Math.hypot(to.x - from.x, to.y - from.y) || 1;
  const [ux, uy] = [(to.x - from.x) / size, (to.y - from.y) / size];
  const turn = (Math.atan2(uy, ux) * 180) / Math.PI;
  return {
    text,
    x: (from.x + to.x) / 2 - uy * inset,
    y: (from.y + to.y) / 2 + ux * inset,
    turn: turn > 90 ? turn - 180 : turn <= -90 ? turn + 180 : turn,
  };
}

/** Centre of gravity of the outline; the mean of the corners where it has no area. */
function middleOf(spots: readonly Spot[]): Spot {
  const twice = 2 * signedArea(spots);
  if (Math.abs(twice) < 1e-9) return mean(spots);
  const sum = spots.reduce(
    (total, a, i) => {
      const b = spots[(i + 1) % spots.length]!;
      const cross = a.x * b.y - b.x * a.y;
      return { x: total.x + (a.x + b.x) * cross, y: total.y + (a.y + b.y) * cross };
    },
    { x: 0, y: 0 },
  );
  return { x: sum.x / (3 * twice), y: sum.y / (3 * twice) };
}

function mean(spots: readonly Spot[]): Spot {
  const sum = spots.reduce((a, b) => ({ x: a.x + b.x, y: a.y + b.y }));
  return { x: sum.x / spots.length, y: sum.y / spots.length };
}

function signedArea(spots: readonly Spot[]): number {
  return spots.reduce((sum, a, i) => {
    const b = spots[(i + 1) % spots.length]!;
    return sum + (a.x * b.y - b.x * a.y) / 2;
  }, 0);
}

/** The longest of 1, 2, 5, 10, 20, 50 … that fits. */
function scaleBar(scale: number, width: number, units: UnitSystem): Sketch['bar'] {
  const perUnit = scale / fromInside(1, 'length', units);
  const most = Math.min(200, width / 4) / perUnit;
  const decade = 10 ** Math.floor(Math.log10(most));
  const amount = [5, 2, 1].map((n) => n * decade).find((n) => n <= most) ?? decade;
  return { length: amount * perUnit, text: `${plain(amount)} ${symbolOf('length', units)}` };
}

export function lengthText(meters: number, units: UnitSystem): string {
  return `${plain(Math.round(fromInside(meters, 'length', units)))} ${symbolOf('length', units)}`;
}

export function areaText(squareMeters: number, units: UnitSystem): string {
  return `${plain(Number(fromInside(squareMeters, 'area', units).toPrecision(3)))} ${symbolOf('area', units)}`;
}

function plain(value: number): string {
  return String(Number(value.toPrecision(6)));
}

function boxOf(points: readonly PlanePoint[]) {
  const easts = points.map(({ east }) => east);
  const norths = points.map(({ north }) => north);
  const [west, north] = [Math.min(...easts), Math.max(...norths)];
  // A farm of one point still has a size.
  return {
    west,
    north,
    wide: Math.max(1, Math.max(...easts) - west),
    high: Math.max(1, north - Math.min(...norths)),
  };
}
