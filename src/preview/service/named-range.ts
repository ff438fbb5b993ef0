/** SpreadsheetApp.NamedRange, and the workbook's list of them. */
import { type Area, areaOf, zoneOf } from './area';
import { type CallGate, GATE, guardService } from './call-gate';
import type { HostState } from './host-state';
import { Range } from './range';
import { RangePlace } from './range-place';

export class NamedRange {
  readonly [GATE]: CallGate;
  readonly #state: HostState;
  #name: string;

  constructor(state: HostState, name: string) {
    this[GATE] = state.gate;
    this.#state = state;
    this.#name = name;
  }
  getName(): string {
    return this.#name;
  }
  getRange(): Range {
    const area = namedArea(this.#state, this.#name);
    if (!area) throw new Error(`The named range "${this.#name}" no longer refers to a range.`);
    return new Range(this.#state, area);
  }
  setName(name: string): this {
    const area = RangePlace.area(this.getRange());
    removeName(this.#state, this.#name);
    setNamedArea(this.#state, name, area);
    this.#name = name;
    return this;
  }
  remove(): void {
    removeName(this.#state, this.#name);
  }
}

guardService(NamedRange, 'NamedRange');

export function namedRanges(state: HostState): NamedRange[] {
  return state.book.model.getters.getNamedRanges().map(({ name }) => new NamedRange(state, name));
}

export function namedArea(state: HostState, name: string): Area | undefined {
  const found = state.book.model.getters
    .getNamedRanges()
    .find((one) => one.name.toLowerCase() === name.toLowerCase());
  if (!found || found.range.invalidXc || !state.book.exists(found.range.sheetId)) return undefined;
  return areaOf(found.range.sheetId, found.range.zone);
}

export function setNamedArea(state: HostState, name: string, area: Area): void {
  const { book } = state;
  const { sheetId } = area;
  // Without the tab's id the engine measures the range against the tab that is on show.
  const where = { sheetId, ranges: [book.rangeData(sheetId, zoneOf(area))] };
  const known = book.model.getters
    .getNamedRanges()
    .find((one) => one.name.toLowerCase() === name.toLowerCase());
  const result = known
    ? book.run({ type: 'UPDATE_NAMED_RANGE', oldRangeName: known.name, newRangeName: known.name, ...where })
    : book.run({ type: 'CREATE_NAMED_RANGE', name, ...where });
  const reasons = result.reasons.filter((reason) => reason !== 'NoChanges');
  if (reasons.length > 0) throw new Error(`The name "${name}" is not a valid name for a range.`);
}

export function removeName(state: HostState, name: string): void {
  const known = state.book.model.getters
    .getNamedRanges()
    .find((one) => one.name.toLowerCase() === name.toLowerCase());
  if (!known) throw new Error(`The named range "${name}" does not exist.`);
  state.book.must({ type: 'DELETE_NAMED_RANGE', name: known.name });
}
