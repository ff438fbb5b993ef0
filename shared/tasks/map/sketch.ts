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
  /** Its name, or its number where the name has no room. */
  readonly label: string;
  /** '' where it has no room. */
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
  /** A dashed line from the nearest paddock, with its length where that has room. */
  readonly gap:
    | { readonly from: Spot; readonly to: Spot; readonly label: SketchLabel | undefined }
    | undefined;
}

export interface Sketch {
  readonly width: number;
  readonly height: number;
  readonly paddocks: readonly SketchPaddock[];
  readonly marks: readonly SketchMark[];
  readonly bar: { readonly length: number; readonly text: string };
}

/** Picture units, one a pixel where it is shown. */
export interface Frame {
  readonly width: number;
  readonly mostHeight: number;
  /** A name stands also where it runs over the edge of its paddock. */
  readonly isEveryName: boolean;
}
/** Beside the sheet, and in a window of its own or on paper. Judgement. */
export const SMALL_FRAME: Frame = { width: 252, mostHeight: 360, isEveryName: false };
export const LARGE_FRAME: Frame = { width: 1000, mostHeight: 640, isEveryName: true };

const MARGIN = 10;
const FOOT = 34;
const LEAST_HEIGHT = 120;
/** Words stand this far inside their side. */
const LABEL_INSET = 9;
/** Width of a letter as a share of the size of its words, and room at both ends. Judgement. */
const LETTER = 0.58;
const ROOM = 4;
/** Sizes of the words: names, areas and marks, lengths. */
export const TEXT_SIZES = { name: 12, area: 11, length: 10 } as const;

export function sketchMap(map: MeasuredMap, units: UnitSystem, frame: Frame): Sketch {
  const all = [
    ...map.paddocks.flatMap(({ outline }) => outline),
    ...map.marks.flatMap(({ points }) => points),
  ];
  const box = boxOf(all);
  const { width } = frame;
  const scale = Math.min((width - 2 * MARGIN) / box.wide, (frame.mostHeight - 2 * MARGIN - FOOT) / box.high);
  const height = Math.max(LEAST_HEIGHT, box.high * scale + 2 * MARGIN + FOOT);
  const left = (width - box.wide * scale) / 2;
  const spot = ({ east, north }: PlanePoint): Spot => ({
    x: left + (east - box.west) * scale,
    y: MARGIN + (box.north - north) * scale,
  });
  return {
    width,
    height,
    paddocks: map.paddocks.map((paddock, i) => sketchPaddock(paddock, i, spot, units, frame)),
    marks: map.marks.map(({ name, role, form, points, gap }) => ({
      name,
      role,
      form,
      points: points.map(spot),
      label: labelSpot(points.map(spot), form, name, width),
      gap: gap && {
        from: spot(gap.from),
        to: spot(gap.to),
        label: lengthLabel(spot(gap.from), spot(gap.to), lengthText(gap.meters, units), 7),
      },
    })),
    bar: scaleBar(scale, width, units),
  };
}

function sketchPaddock(
  { name, areaSquareMeters, outline, sidesMeters }: MeasuredPaddock,
  index: number,
  spot: (point: PlanePoint) => Spot,
  units: UnitSystem,
  { isEveryName }: Frame,
): SketchPaddock {
  const spots = outline.map(spot);
  const middle = middleOf(spots);
  const fits = (text: string, size: number, y: number): boolean =>
    textWidth(text, size) <= widthAt(spots, { x: middle.x, y });
  const area = areaText(areaSquareMeters, units);
  const below = middle.y + TEXT_SIZES.name + 2;
  const hasName = isEveryName || fits(name, TEXT_SIZES.name, middle.y);
  // The page's y runs down, so an outline that turns left on the ground has its inside on the other hand.
  const inset = signedArea(spots) > 0 ? LABEL_INSET : -LABEL_INSET;
  const sides = spots.flatMap((from, i) => {
    const to = spots[(i + 1) % spots.length]!;
    const text = lengthText(sidesMeters[i] ?? 0, units);
    const label = lengthLabel(from, to, text, inset);
    // Not over the name: it has the lines round the middle for itself.
    return label && !isNearName(label, middle, name) ? [label] : [];
  });
  return {
    name,
    label: hasName ? name : String(index + 1),
    area: fits(area, TEXT_SIZES.area, middle.y) && fits(area, TEXT_SIZES.area, below) ? area : '',
    outline: spots,
    middle,
    sides,
  };
}

function isNearName({ x, y }: Spot, middle: Spot, name: string): boolean {
  const room = (textWidth(name, TEXT_SIZES.name) + textWidth('000', TEXT_SIZES.length)) / 2;
  return Math.abs(y - middle.y) < 2 * TEXT_SIZES.name && Math.abs(x - middle.x) < room;
}

/** The length of a line along it; undefined where the line is drawn too short for the words. */
function lengthLabel(from: Spot, to: Spot, text: string, inset: number): SketchLabel | undefined {
  const isShort = Math.hypot(to.x - from.x, to.y - from.y) < textWidth(text, TEXT_SIZES.length);
  return isShort ? undefined : alongSide(from, to, text, inset);
}

function textWidth(text: string, size: number): number {
  return text.length * size * LETTER + ROOM;
}

/** How wide an outline is at a height, to both sides of a spot; 0 outside. */
function widthAt(spots: readonly Spot[], { x, y }: Spot): number {
  const crossings = spots.flatMap((a, i) => {
    const b = spots[(i + 1) % spots.length]!;
    return a.y > y === b.y > y ? [] : [a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x)];
  });
  const left = Math.max(...crossings.filter((at) => at <= x));
  const right = Math.min(...crossings.filter((at) => at >= x));
  return Number.isFinite(right - left) ? 2 * Math.min(x - left, right - x) : 0;
}

/** Under the middle stretch of a line, beside a point, in the middle of an area. */
function labelSpot(spots: readonly Spot[], form: ShapeForm, name: string, width: number): Spot {
  if (form === 'area') return middleOf(spots);
  const half = Math.floor((spots.length - 1) / 2);
  const middle = mean(spots.slice(half, half + 2));
  const rightmost = width - textWidth(name, TEXT_SIZES.area);
  return { x: Math.max(ROOM, Math.min(middle.x + 7, rightmost)), y: middle.y + 14 };
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
