/** Reads arguments that are taken whole: lists of numbers and boundary corners. */
import type { ListParam, Param } from '../catalogue/define';
import type { Corner } from '../core/fence/corner';
import { describeCell, Refusal } from '../refusals';
import type { UnitSystem } from '../units/units';
import { isBlank, readNumber } from './read-cell';

/** Rows of cells: what a range is, and what a single cell becomes. */
export function asRows(arg: unknown): readonly (readonly unknown[])[] {
  if (!Array.isArray(arg)) return [[arg]];
  return arg.every(Array.isArray) ? arg : arg.map((row) => (Array.isArray(row) ? row : [row]));
}

/**
 * All lists of a function at once, because paired lists lose a blank cell only together.
 * Returns, for each list parameter by position, its numbers.
 */
export function readLists(
  params: readonly Param[],
  args: readonly unknown[],
  system: UnitSystem,
): ReadonlyMap<number, readonly number[]> {
  const lists = params.flatMap((param, i) =>
    param.kind === 'list' ? [{ param, i, cells: asRows(args[i]).flat() }] : [],
  );
  const paired = lists.filter(({ param }) => param.blanks === 'pair');
  refuseUnequal(paired);
  const read = new Map<number, readonly number[]>();
  for (const { param, i, cells } of lists) {
    const kept = cells
      .map((cell, at) => ({ cell, at }))
      .filter(({ cell, at }) => !leftOut(param, cell, at, paired));
    const numbers = kept.map(({ cell, at }) => readListed(param, cell, at, system));
    refuseCount(param, numbers.length);
    read.set(i, numbers);
  }
  return read;
}

function refuseUnequal(paired: readonly { param: ListParam; cells: readonly unknown[] }[]): void {
  const [first, ...others] = paired;
  for (const other of others) {
    if (first && other.cells.length !== first.cells.length) {
      throw new Refusal(
        other.param.name,
        `have as many cells as ${first.param.name} (${first.cells.length})`,
        String(other.cells.length),
      );
    }
  }
}

function leftOut(
  param: ListParam,
  cell: unknown,
  at: number,
  paired: readonly { cells: readonly unknown[] }[],
): boolean {
  if (!isBlank(cell) || param.blanks === 'refuse') return false;
  return param.blanks === 'skip' || paired.every(({ cells }) => isBlank(cells[at]));
}

function readListed(param: ListParam, cell: unknown, at: number, system: UnitSystem): number {
  try {
    return readNumber(param, cell, system);
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    throw new Refusal(`${param.name}, cell ${at + 1}`, error.must, error.got);
  }
}

function refuseCount(param: ListParam, count: number): void {
  const { atLeast, atMost } = param;
  if (count >= atLeast && (atMost === undefined || count <= atMost)) return;
  const wanted =
    atMost === undefined
      ? `at least ${atLeast}`
      : atMost === atLeast
        ? `${atLeast}`
        : `${atLeast} to ${atMost}`;
  throw new Refusal(
    param.name,
    `hold ${wanted} ${atLeast === 1 && atMost === undefined ? 'number' : 'numbers'}`,
    String(count),
  );
}

const LATITUDE = { name: 'latitude', min: -90, max: 90 } as const;
const LONGITUDE = { name: 'longitude', min: -180, max: 180 } as const;
const FEWEST_CORNERS = 3;

/** Two columns of decimal degrees; rows that are wholly blank are left out. */
export function readCorners(name: string, arg: unknown): readonly Corner[] {
  if (isBlank(arg)) throw new Refusal(name, 'be given', 'a blank');
  const rows = asRows(arg);
  const wide = rows.find((row) => row.length !== 2);
  if (wide)
    throw new Refusal(
      name,
      'be two columns, latitude and longitude',
      `${wide.length} column${wide.length === 1 ? '' : 's'}`,
    );
  const corners = rows.flatMap((row, at) => (row.every(isBlank) ? [] : [readCorner(name, row, at)]));
  if (corners.length < FEWEST_CORNERS)
    throw new Refusal(name, 'hold at least 3 corners', String(corners.length));
  return corners;
}

function readCorner(name: string, row: readonly unknown[], at: number): Corner {
  const degrees = (param: typeof LATITUDE | typeof LONGITUDE, cell: unknown): number => {
    try {
      return readNumber(param, cell, 'metric');
    } catch (error) {
      if (!(error instanceof Refusal)) throw error;
      throw new Refusal(`${name}, row ${at + 1}, ${param.name}`, error.must, describeCell(cell));
    }
  };
  return { latitudeDegrees: degrees(LATITUDE, row[0]), longitudeDegrees: degrees(LONGITUDE, row[1]) };
}
