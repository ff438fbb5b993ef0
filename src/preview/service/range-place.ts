/** Where a range is: the part of Range that only tells its place. */
import { type Area, a1Of, areaOf, overlaps, zoneOf } from './area';
import { type CallGate, GATE, guardService } from './call-gate';
import type { HostState } from './host-state';
import { closedToEditing, OUT_OF_BOUNDS, wrongSignature, wrongSize } from './refusals';

export class RangePlace {
  readonly [GATE]: CallGate;
  readonly #state: HostState;
  readonly #area: Area;

  constructor(state: HostState, area: Area) {
    const { rows, columns } = state.book.size(area.sheetId);
    if (area.row + area.rows > rows || area.column + area.columns > columns) throw new Error(OUT_OF_BOUNDS);
    this[GATE] = state.gate;
    this.#state = state;
    this.#area = area;
  }

  /** For the other services; scripts have no use for it. */
  static state(range: RangePlace): HostState {
    return range.#state;
  }

  static area(range: RangePlace): Area {
    return range.#area;
  }

  getA1Notation(): string {
    return a1Of(this.#area);
  }
  getRow(): number {
    return this.#area.row + 1;
  }
  getColumn(): number {
    return this.#area.column + 1;
  }
  getNumRows(): number {
    return this.#area.rows;
  }
  getNumColumns(): number {
    return this.#area.columns;
  }
  getLastRow(): number {
    return this.#area.row + this.#area.rows;
  }
  getLastColumn(): number {
    return this.#area.column + this.#area.columns;
  }
  isPartOfMerge(): boolean {
    return mergesIn(this.#state, this.#area).length > 0;
  }
}

guardService(RangePlace, 'Range');

export function mergesIn(state: HostState, area: Area): Area[] {
  return state.book.model.getters
    .getMergesInZone(area.sheetId, zoneOf(area))
    .map((zone) => areaOf(area.sheetId, zone));
}

/** How many rows and columns of a tab stand still. */
export function frozen(state: HostState, sheetId: string): Pick<Area, 'rows' | 'columns'> {
  const { xSplit, ySplit } = state.book.model.getters.getPaneDivisions(sheetId);
  return { rows: ySplit, columns: xSplit };
}

/** Whether a part of the area would stand still and another scroll. */
export function isCut(area: Area, { rows, columns }: Pick<Area, 'rows' | 'columns'>): boolean {
  const parts = (first: number, count: number, edge: number): boolean => first < edge && first + count > edge;
  return parts(area.row, area.rows, rows) || parts(area.column, area.columns, columns);
}

/** Whether somebody else protected a part of the area. */
export function isClosed(state: HostState, area: Area): boolean {
  return state.protections.some(
    (one) =>
      one.byOther &&
      !one.warningOnly &&
      (one.wholeSheet ? one.area.sheetId === area.sheetId : overlaps(one.area, area)),
  );
}

/** Throws as Sheets does. */
export function refuseProtected(state: HostState, area: Area): void {
  if (isClosed(state, area)) throw closedToEditing();
}

/** Checks that values are rows of equal length that fit the area exactly. */
export function fittingMatrix<Entry>(method: string, area: Area, values: unknown): Entry[][] {
  if (!Array.isArray(values) || values.length === 0 || !values.every((row) => Array.isArray(row))) {
    throw wrongSignature(`Range.${method}`, [values]);
  }
  if (values.length !== area.rows) throw wrongSize('rows', values.length, area.rows);
  for (const row of values as unknown[][]) {
    if (row.length !== area.columns) throw wrongSize('columns', row.length, area.columns);
  }
  return values as Entry[][];
}

export function filled<Entry>(area: Area, entry: Entry): Entry[][] {
  return Array.from({ length: area.rows }, () => Array<Entry>(area.columns).fill(entry));
}
