/** SpreadsheetApp.Protection. What the script protects itself stays editable for the person at the keyboard. */
import type { Area } from './area';
import { type CallGate, GATE, guardService } from './call-gate';
import type { HostState, ProtectedArea } from './host-state';
import { Range } from './range';

export class Protection {
  readonly [GATE]: CallGate;
  readonly #state: HostState;
  readonly #record: ProtectedArea;

  constructor(state: HostState, record: ProtectedArea) {
    this[GATE] = state.gate;
    this.#state = state;
    this.#record = record;
  }
  getRange(): Range {
    return new Range(this.#state, this.#record.area);
  }
  remove(): void {
    if (this.#record.byOther) throw new Error('You do not have permission to remove this protection.');
    this.#state.protections = this.#state.protections.filter((one) => one !== this.#record);
  }
}

guardService(Protection, 'Protection');

export function protect(state: HostState, area: Area, wholeSheet: boolean): Protection {
  const id = Math.max(0, ...state.protections.map((one) => one.id)) + 1;
  const record = { id, area, wholeSheet, description: '', warningOnly: false, byOther: false };
  state.protections.push(record);
  return new Protection(state, record);
}

export function protectionsOf(state: HostState, sheetId: string, wholeSheet: boolean): Protection[] {
  return state.protections
    .filter((one) => one.area.sheetId === sheetId && one.wholeSheet === wholeSheet)
    .map((one) => new Protection(state, one));
}
