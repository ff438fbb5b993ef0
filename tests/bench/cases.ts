/**
 * What is measured: for each function ten thousand rows of arguments, and the same arithmetic in a bare loop of
 * its own, written out again so that each loop can be compiled by itself.
 */
import library from 'geographiclib-geodesic';

export const ROWS = 10_000;

type Column = readonly (readonly number[])[];

export interface BenchCase {
  readonly name: string;
  /** Arguments: a Column is a range, anything else stands as it is. */
  readonly args: readonly unknown[];
  /** Which of the arguments are ranges. */
  readonly ranges: readonly number[];
  readonly bare: () => unknown;
  /** Calls into a geodesic library or walks a calendar: not plain arithmetic. */
  readonly heavy?: true;
}

function column(from: number, step: number, period: number): Column {
  return Array.from({ length: ROWS }, (_, i) => [from + step * (i % period)]);
}

const side = column(120.5, 1.25, 97);
const other = column(80.25, 2.5, 89);
const spacing = column(10.5, 0.25, 37);
const head = column(4, 1, 23);
const lb = column(60.5, 1.5, 101);
const days = column(1, 1, 61);
const gain = column(1.1, 0.05, 17);
const acres = column(0.25, 0.125, 31);
const paddocks = column(5, 1, 19);
const limits = column(20_000, 500, 41);

const POUND = 0.45359237;
const GALLON = 3.785411784;
const FOOT = 0.3048;
const INCH = 0.0254;
const RISE = Math.exp(-4.04);

const GROWTH = [0, 0, 20, 50, 80, 60, 35, 30, 40, 25, 5, 0];
const BANDS = [
  [5, 7, 0.21],
  [7, 11, 0.335],
  [11, 25, 0.585],
  [25, 50, 0.758],
  [50, 75, 0.9],
  [75, 100, 0.917],
  [100, 135, 0.867],
] as const;
const SQUARE = [
  [40, -80],
  [40, -79.99],
  [40.01, -79.99],
  [40.01, -80],
] as const;

export const CASES: readonly BenchCase[] = [
  {
    name: 'FENCE_LENGTH',
    args: [side, other, 2],
    ranges: [0, 1],
    bare: () => {
      const out = [];
      for (let r = 0; r < ROWS; r++) out.push([2 * (side[r]![0]! + other[r]![0]!) * 2]);
      return out;
    },
  },
  {
    name: 'FENCE_GRID',
    args: [head, paddocks, side, other],
    ranges: [0, 1, 2, 3],
    bare: () => {
      const out = [];
      for (let r = 0; r < ROWS; r++) {
        const [m, n, w, l] = [head[r]![0]!, paddocks[r]![0]!, side[r]![0]!, other[r]![0]!];
        const outer = 2 * (m * l + n * w);
        const inner = (m - 1) * n * w + (n - 1) * m * l;
        out.push([outer, inner, outer + inner]);
      }
      return out;
    },
  },
  {
    name: 'POST_COUNT',
    args: [side, other, spacing],
    ranges: [0, 1, 2],
    bare: () => {
      const out = [];
      for (let r = 0; r < ROWS; r++) {
        const s = spacing[r]![0]!;
        out.push([2 * Math.ceil(side[r]![0]! / s - 1e-9) + 2 * Math.ceil(other[r]![0]! / s - 1e-9)]);
      }
      return out;
    },
  },
  {
    name: 'SIDE_POSTS',
    args: [[[210], [135], [180]], spacing],
    ranges: [1],
    bare: () => {
      const out = [];
      for (let r = 0; r < ROWS; r++) {
        const s = spacing[r]![0]!;
        out.push([Math.ceil(210 / s - 1e-9) + Math.ceil(135 / s - 1e-9) + Math.ceil(180 / s - 1e-9)]);
      }
      return out;
    },
  },
  {
    name: 'ROLL_COUNT',
    args: [limits, 1320, head],
    ranges: [0, 2],
    bare: () => {
      const out = [];
      for (let r = 0; r < ROWS; r++) {
        out.push([Math.max(0, Math.ceil(limits[r]![0]! / 1320 - head[r]![0]! - 1e-9))]);
      }
      return out;
    },
  },
  {
    name: 'STRAND_HEIGHTS',
    args: [lb],
    ranges: [0],
    bare: () => {
      const out = [];
      for (let r = 0; r < ROWS; r++) {
        const kg = lb[r]![0]! * POUND;
        const nose = (0.095 * Math.cbrt(kg)) / INCH;
        out.push(kg < 45 * POUND ? [Math.min(6, nose), 12] : [Math.min(10, nose), 18]);
      }
      return out;
    },
  },
  {
    name: 'ENERGIZER_JOULES',
    args: [limits, 1.5],
    ranges: [0],
    bare: () => {
      const out = [];
      for (let r = 0; r < ROWS; r++) out.push([((limits[r]![0]! * FOOT) / 1609.344) * 1.5]);
      return out;
    },
  },
  {
    name: 'GROUND_RODS',
    args: [head, 6],
    ranges: [0],
    bare: () => {
      const out = [];
      for (let r = 0; r < ROWS; r++) out.push([Math.ceil(Math.max(3 * head[r]![0]!, 3 / 0.3048) / 6 - 1e-9)]);
      return out;
    },
  },
  {
    name: 'WIRE_OHMS',
    args: ['stainless', gain, head, 'metric'],
    ranges: [1, 2],
    bare: () => {
      const out = [];
      for (let r = 0; r < ROWS; r++) {
        const m = gain[r]![0]! / 1000;
        out.push([(7.2e-7 / ((Math.PI / 4) * m * m) / head[r]![0]!) * 1000]);
      }
      return out;
    },
  },
  {
    name: 'FENCE_VOLTAGE',
    args: [8000, 300, gain, 35, limits, 500],
    ranges: [2, 4],
    bare: () => {
      const out = [];
      for (let r = 0; r < ROWS; r++) {
        const leak = limits[r]![0]!;
        const z = Math.sqrt(35 * leak);
        const x = gain[r]![0]! * Math.sqrt(35 / leak);
        const zin = (z * (500 + z * Math.tanh(x))) / (z + 500 * Math.tanh(x));
        out.push([(8000 * zin) / (300 + zin) / (Math.cosh(x) + (z / 500) * Math.sinh(x))]);
      }
      return out;
    },
  },
  {
    name: 'PIG_WEIGHT',
    args: [lb, days, gain],
    ranges: [0, 1, 2],
    bare: () => {
      const out = [];
      for (let r = 0; r < ROWS; r++) out.push([lb[r]![0]! + gain[r]![0]! * days[r]![0]!]);
      return out;
    },
  },
  {
    name: 'DAYS_TO_WEIGHT',
    args: [lb, 270],
    ranges: [0],
    bare: () => {
      const out = [];
      for (let r = 0; r < ROWS; r++) {
        const [from, to] = [lb[r]![0]! * POUND, 270 * POUND];
        let sum = 0;
        for (const [low, high, rate] of BANDS) {
          if (high > from && low < to) sum += (Math.min(high, to) - Math.max(low, from)) / rate;
        }
        out.push([sum]);
      }
      return out;
    },
  },
  {
    name: 'FEED_NEEDED',
    args: [head, lb, days, gain],
    ranges: [0, 1, 2, 3],
    bare: () => {
      const out = [];
      for (let r = 0; r < ROWS; r++) {
        const t = days[r]![0]!;
        const z = RISE * gain[r]![0]! * POUND * t;
        const fall = Math.exp(-RISE * lb[r]![0]! * POUND) * (-Math.expm1(-z) / z);
        out.push([(head[r]![0]! * 1.15 * 10563 * t * (1 - fall)) / 3300 / 0.95 / POUND]);
      }
      return out;
    },
  },
  {
    name: 'WATER_NEEDED',
    args: [head, lb, days],
    ranges: [0, 1, 2],
    bare: () => {
      const out = [];
      for (let r = 0; r < ROWS; r++) {
        const c = ((days[r]![0]! - 32) * 5) / 9;
        const ratio = c <= 22 ? 2.7 : c >= 33 ? 5 : 2.7 + ((c - 22) / 11) * 2.3;
        const me = -10563 * Math.expm1(-RISE * lb[r]![0]! * POUND);
        out.push([((1.15 * 1.25 * head[r]![0]! * me) / 3300) * (ratio / GALLON)]);
      }
      return out;
    },
  },
  {
    name: 'SHELTER_AREA',
    args: [head, lb],
    ranges: [0, 1],
    bare: () => {
      const out = [];
      for (let r = 0; r < ROWS; r++) {
        out.push([(head[r]![0]! * 0.047 * (lb[r]![0]! * POUND) ** 0.67) / (FOOT * FOOT)]);
      }
      return out;
    },
  },
  {
    name: 'STOCKING_DENSITY',
    args: [head, acres, lb],
    ranges: [0, 1, 2],
    bare: () => {
      const out = [];
      for (let r = 0; r < ROWS; r++) out.push([(head[r]![0]! * lb[r]![0]!) / acres[r]![0]!]);
      return out;
    },
  },
  {
    name: 'ANIMAL_UNITS',
    args: [head, lb],
    ranges: [0, 1],
    bare: () => {
      const out = [];
      for (let r = 0; r < ROWS; r++) out.push([(head[r]![0]! * lb[r]![0]!) / 1000]);
      return out;
    },
  },
  {
    name: 'NUTRIENT_LOAD',
    args: [head, lb, days, acres],
    ranges: [0, 1, 2, 3],
    bare: () => {
      const out = [];
      for (let r = 0; r < ROWS; r++) {
        const load = (head[r]![0]! * lb[r]![0]! * days[r]![0]!) / acres[r]![0]! / 1000;
        out.push([0.54 * load, 0.09 * load, 0.24 * load]);
      }
      return out;
    },
  },
  {
    name: 'REST_PERIOD',
    args: [paddocks, days],
    ranges: [0, 1],
    bare: () => {
      const out = [];
      for (let r = 0; r < ROWS; r++) out.push([days[r]![0]! * (paddocks[r]![0]! - 1)]);
      return out;
    },
  },
  {
    name: 'PADDOCKS_NEEDED',
    args: [days, gain],
    ranges: [0, 1],
    bare: () => {
      const out = [];
      for (let r = 0; r < ROWS; r++) out.push([Math.ceil(days[r]![0]! / gain[r]![0]! + 1 - 1e-9)]);
      return out;
    },
  },
  {
    name: 'DAYS_ON',
    args: [paddocks, days],
    ranges: [0, 1],
    bare: () => {
      const out = [];
      for (let r = 0; r < ROWS; r++) out.push([days[r]![0]! / (paddocks[r]![0]! - 1)]);
      return out;
    },
  },
  {
    name: 'STAY_DAYS',
    args: [acres, head, lb, limits, gain],
    ranges: [0, 1, 2, 3, 4],
    bare: () => {
      const out = [];
      for (let r = 0; r < ROWS; r++) {
        const each = (limits[r]![0]! * acres[r]![0]!) / head[r]![0]!;
        const w = lb[r]![0]!;
        out.push([(2 * each) / (w + Math.sqrt(w * w + 2 * gain[r]![0]! * each))]);
      }
      return out;
    },
  },
  {
    name: 'GRAZING_AREA',
    args: [lb, days, limits, 0.75],
    ranges: [0, 1, 2],
    bare: () => {
      const out = [];
      for (let r = 0; r < ROWS; r++) out.push([(lb[r]![0]! * days[r]![0]!) / (limits[r]![0]! * 0.75)]);
      return out;
    },
  },
  {
    name: 'REGROWTH_DAYS',
    args: ['2026-04-20', [GROWTH], limits.map(([x]) => [(x ?? 0) / 20])],
    ranges: [2],
    heavy: true,
    bare: () => {
      const out = [];
      for (let r = 0; r < ROWS; r++) {
        let missing = limits[r]![0]! / 20;
        let count = 0;
        for (
          const date = new Date(Date.UTC(2026, 3, 20));
          ;
          date.setUTCDate(date.getUTCDate() + 1), count++
        ) {
          const rate = GROWTH[date.getUTCMonth()]!;
          if (missing <= rate) {
            out.push([count + missing / rate]);
            break;
          }
          missing -= rate;
        }
      }
      return out;
    },
  },
  {
    name: 'BOUNDARY_POSTS',
    args: [SQUARE, spacing],
    ranges: [1],
    heavy: true,
    bare: () => {
      const out = [];
      for (let r = 0; r < ROWS; r++) {
        let posts = 0;
        for (let i = 0; i < 4; i++) {
          const [a, b] = [SQUARE[i]!, SQUARE[(i + 1) % 4]!];
          const { s12 = 0 } = library.Geodesic.WGS84.Inverse(a[0], a[1], b[0], b[1]);
          posts += Math.ceil(s12 / FOOT / spacing[r]![0]! - 1e-9);
        }
        out.push([posts]);
      }
      return out;
    },
  },
];

/** Functions whose arguments are all lists, or that answer several rows: measured by single calls only. */
export const SINGLE_ONLY = [
  { name: 'BOUNDARY_LENGTH', args: [SQUARE] },
  { name: 'BOUNDARY_AREA', args: [SQUARE] },
  {
    name: 'GROUND_LIMIT',
    args: [
      [[10000], [20000], [40000]],
      [[0.9], [0.8], [0.7]],
    ],
  },
  { name: 'TRAINING_PEN', args: [8, 216] },
] as const;
