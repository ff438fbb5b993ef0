import type { TabContent } from '../contract';
import type { UnitSystem } from '../units/units';
import { type ListProblem, PADDOCK_FIELDS, type PaddockList, type ReadPaddock } from './model';
import { readAdjoining } from './read-adjoining';
import { hasCell, placeOf, type RowReader, readAmount, readDay, readName, refuse } from './read-list-cell';
import { type LeftOut, readRows } from './read-rows';
import { typedTotalNotes } from './typed-total';

export interface PaddocksRead {
  readonly paddocks: readonly ReadPaddock[];
  readonly problems: readonly ListProblem[];
  /** What the grower should know about the reading although nothing is wrong. */
  readonly notes: readonly string[];
  /** Totals rows that were passed over. */
  readonly leftOut: readonly LeftOut[];
}

/** Reads the grower's paddock list. All problems come at once, each with its cell; write nothing if there are any. */
export function readPaddocks(
  tab: TabContent,
  list: PaddockList,
  system: UnitSystem,
  /** Whether the spreadsheet's locale writes a decimal comma. */
  comma: boolean,
): PaddocksRead {
  const { items, readers, ...told } = readRows(tab, list, { system, comma }, readPaddock);
  const adjoins = readAdjoining(items, readers);
  const paddocks = items.map((paddock, i) => (adjoins[i] ? { ...paddock, adjoins: adjoins[i] } : paddock));
  const areas = items.map(({ areaSquareMeters }) => areaSquareMeters);
  return { paddocks, ...told, notes: [...told.notes, ...typedTotalNotes(items, areas, readers)] };
}

function readPaddock(reader: RowReader): ReadPaddock | undefined {
  const name = readName(reader);
  const areaSquareMeters = readArea(reader);
  const openFrom = optional(reader, 'openFrom', readDay);
  const openUntil = optional(reader, 'openUntil', readDay);
  if (openFrom !== undefined && openUntil !== undefined && openUntil < openFrom) {
    refuse(reader, 'openUntil', 'not be before the day it opens');
  }
  const lastUsed = optional(reader, 'lastUsed', readDay);
  const restDays = optional(reader, 'restDays', (r, field) => readAmount(r, field, { min: 0 }));
  const fenceLengthMeters = optional(reader, 'fenceLength', (r, field) => readAmount(r, field, { above: 0 }));
  if (name === undefined || areaSquareMeters === undefined) return undefined;
  const cells = Object.fromEntries(
    PADDOCK_FIELDS.flatMap((f) => (placeOf(reader, f) ? [[f, placeOf(reader, f)]] : [])),
  );
  return {
    name,
    areaSquareMeters,
    ...(openFrom !== undefined && { openFrom }),
    ...(openUntil !== undefined && { openUntil }),
    ...(lastUsed !== undefined && { lastUsed }),
    ...(restDays !== undefined && { restDays }),
    ...(fenceLengthMeters !== undefined && { fenceLengthMeters }),
    cells,
  };
}

function optional<Field extends (typeof PADDOCK_FIELDS)[number]>(
  reader: RowReader,
  field: Field,
  read: (reader: RowReader, field: Field) => number | undefined,
): number | undefined {
  return hasCell(reader, field) ? read(reader, field) : undefined;
}

/** The area, or width × length where no area is typed. */
function readArea(reader: RowReader): number | undefined {
  const sides = hasCell(reader, 'width') || hasCell(reader, 'length');
  if (hasCell(reader, 'area') || !sides) {
    const field = placeOf(reader, 'area') ? 'area' : 'width';
    return readAmount(reader, field, { above: 0 });
  }
  const width = readAmount(reader, 'width', { above: 0 });
  const length = readAmount(reader, 'length', { above: 0 });
  return width === undefined || length === undefined ? undefined : width * length;
}
