/** Utilities and Session, as far as a script of ours may need them. */
import { isDate } from '../engine/cell-values';
import { formatZoneDate } from '../engine/zone-time';
import { type CallGate, GATE, guardService } from './call-gate';
import type { HostState } from './host-state';
import { wrongSignature } from './refusals';

export class Utilities {
  readonly [GATE]: CallGate;
  readonly #state: HostState;

  constructor(state: HostState) {
    this[GATE] = state.gate;
    this.#state = state;
  }
  /** Nobody waits here, but what takes time in Sheets is done afterwards. */
  sleep(milliseconds: number): void {
    this.#state.loading.settle(milliseconds);
  }
  formatDate(date: unknown, timeZone: string, format: string): string {
    if (!isDate(date) || typeof timeZone !== 'string' || typeof format !== 'string') {
      throw wrongSignature('Utilities.formatDate', [date, timeZone, format]);
    }
    return formatZoneDate(date, timeZone, format);
  }
}

export class Session {
  readonly [GATE]: CallGate;
  readonly #state: HostState;

  constructor(state: HostState) {
    this[GATE] = state.gate;
    this.#state = state;
  }
  getScriptTimeZone(): string {
    return this.#state.scriptTimeZone;
  }
}

guardService(Utilities, 'Utilities');
guardService(Session, 'Session');
