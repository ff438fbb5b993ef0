/** LockService.getDocumentLock(): one lock per workbook, let go when the call of the script ends. */
import { type CallGate, GATE, guardService } from './call-gate';
import type { HostState } from './host-state';

export class Lock {
  readonly [GATE]: CallGate;
  readonly #state: HostState;

  constructor(state: HostState) {
    this[GATE] = state.gate;
    this.#state = state;
  }
  /** Waiting is not simulated: where somebody else holds the lock the answer is false at once. */
  tryLock(_timeoutMilliseconds: number): boolean {
    if (this.#state.lockHeldElsewhere) return false;
    this.#state.lockHeld = true;
    return true;
  }
  releaseLock(): void {
    this.#state.lockHeld = false;
  }
}

export class LockService {
  readonly [GATE]: CallGate;
  readonly #state: HostState;

  constructor(state: HostState) {
    this[GATE] = state.gate;
    this.#state = state;
  }
  getDocumentLock(): Lock {
    return new Lock(this.#state);
  }
}

guardService(Lock, 'Lock');
guardService(LockService, 'LockService');
