/**
 * The one gate every service call of the script passes: it counts, lets tests make a call fail, and refuses writes
 * from cell functions. Calls that a service makes to itself are not counted.
 *
 * A write is queued, a wait is a call whose answer the script needs from Google: every reading but of what the script
 * knows already (where a range lies, objects being built), and flush.
 */
import { type Modes, WriteRefusal } from './modes';

export type FailurePlan = {
  /** The how-manieth call (from 0), a method ("setValues" or "Range.setValues"), or a test of both. */
  on: number | string | ((method: string, index: number) => boolean);
  error: Error;
  /** Let the call take effect and throw afterwards. */
  after?: boolean;
  /** From that call on every later one throws as well, as when the script's time is up. */
  forGood?: boolean;
};

/**
 * Calls that need no answer from Google though they read; a tab's name and type come along with the list of tabs.
 * Judgement, no figures are published.
 */
const LOCAL =
  /^(Utilities|Session|Html\w+|Menu|BooleanCondition|ConditionalFormat\w+|DataValidation\w*)\.|\.(getUi|createMenu|new[A-Z]\w*|releaseLock|getDocumentLock|activate|alert|protect|merge)$|^SpreadsheetApp\.getActive|^(Spreadsheet|Sheet)\.getRange$|^Sheet\.get(Name|Type)$|^Range\.(getRow|getColumn|getNumRows|getNumColumns|getA1Notation|getLastRow|getLastColumn|getSheet|getCell)$/;
/** Writes that give back something new from Google. */
const ANSWERED_WRITES = new Set(['Spreadsheet.insertSheet']);

const DEFAULT_ERROR = 'Service Spreadsheets failed while accessing document with id preview.';

export class CallGate {
  private counts = new Map<string, number>();
  private total = 0;
  private waited = 0;
  private refused: Error | undefined;
  private plans: FailurePlan[] = [];
  private fatal: Error | undefined;
  private depth = 0;
  private inCellFunction = false;

  constructor(private readonly modes: Modes) {}

  /** Calls so far by method, for example { "Range.setValues": 1 }. */
  get callCounts(): Record<string, number> {
    return Object.fromEntries(this.counts);
  }

  get callTotal(): number {
    return this.total;
  }

  /** Calls so far that had to wait for Google. */
  get waits(): number {
    return this.waited;
  }

  get isInCellFunction(): boolean {
    return this.inCellFunction;
  }

  resetCounts(): void {
    this.counts.clear();
    this.total = 0;
    this.waited = 0;
    this.fatal = undefined;
  }

  failOn(
    on: FailurePlan['on'],
    error: Error | string = DEFAULT_ERROR,
    how: Pick<FailurePlan, 'after' | 'forGood'> = {},
  ): void {
    this.plans.push({ on, error: typeof error === 'string' ? new Error(error) : error, ...how });
  }

  clearFailures(): void {
    this.plans = [];
    this.fatal = undefined;
  }

  call<Result>(service: string, method: string, isWrite: boolean, work: () => Result, self: Result): Result {
    if (this.depth > 0) return work();
    if (this.inCellFunction) {
      if (isWrite) throw new Error(`You do not have permission to call ${method}`);
      return work();
    }
    const name = `${service}.${method}`;
    const plan = this.count(name);
    if (this.fatal) throw this.fatal;
    if (plan?.forGood) this.fatal = plan.error;
    const isWait = isWrite ? ANSWERED_WRITES.has(name) : !LOCAL.test(name);
    if (isWait) {
      this.waited += 1;
      this.flush();
    } else if (isWrite && this.modes.lateRefusals !== 'no') {
      return this.queued(plan, work, self);
    }
    return this.now(plan, work);
  }

  /** A queued write: refused later, and with it everything that is queued behind it. */
  private queued<Result>(plan: FailurePlan | undefined, work: () => Result, self: Result): Result {
    if (this.refused) return self;
    try {
      return this.now(plan, work);
    } catch (error) {
      if (error !== plan?.error && !(error instanceof WriteRefusal)) throw error;
      if (error === this.fatal) throw error;
      this.refused = error as Error;
      return self;
    }
  }

  /** Everything queued is written: a refusal that came meanwhile is thrown. */
  flush(): void {
    const { refused } = this;
    this.forgetQueue();
    if (refused && this.modes.lateRefusals === 'told') throw refused;
  }

  forgetQueue(): void {
    this.refused = undefined;
  }

  private now<Result>(plan: FailurePlan | undefined, work: () => Result): Result {
    if (plan && !plan.after) throw plan.error;
    this.depth += 1;
    try {
      const result = work();
      if (plan) throw plan.error;
      return result;
    } finally {
      this.depth -= 1;
    }
  }

  /** Runs calls that are not the script's: neither counted nor made to fail. */
  uncounted<Result>(work: () => Result): Result {
    this.depth += 1;
    try {
      return work();
    } finally {
      this.depth -= 1;
    }
  }

  private count(method: string): FailurePlan | undefined {
    const index = this.total;
    this.total += 1;
    this.counts.set(method, (this.counts.get(method) ?? 0) + 1);
    return this.plans.find(({ on }) => {
      if (typeof on === 'number') return on === index;
      if (typeof on === 'string') return on === method || method.endsWith(`.${on}`);
      return on(method, index);
    });
  }

  /** Runs a cell function: whatever it calls is read-only and not counted. */
  insideCellFunction<Result>(work: () => Result): Result {
    const before = { depth: this.depth, inCellFunction: this.inCellFunction };
    this.depth = 0;
    this.inCellFunction = true;
    try {
      return work();
    } finally {
      this.depth = before.depth;
      this.inCellFunction = before.inCellFunction;
    }
  }
}

/** A service object knows its gate under this key, which scripts have no business with. */
export const GATE = Symbol('gate');

type ServiceClass = { prototype: object };

/** Puts the gate before every method of a service class. `writes` are the methods that change anything. */
export function guardService(
  serviceClass: ServiceClass,
  service: string,
  writes: readonly string[] = [],
): void {
  const { prototype } = serviceClass;
  for (const [method, property] of Object.entries(Object.getOwnPropertyDescriptors(prototype))) {
    if (method === 'constructor' || typeof property.value !== 'function') continue;
    const work = property.value as (this: object, ...values: unknown[]) => unknown;
    const isWrite =
      writes.includes(method) || /^(set|insert|delete|clear|add|remove|show|append)/.test(method);
    Object.defineProperty(prototype, method, {
      ...property,
      value: function guarded(this: { [GATE]: CallGate }, ...values: unknown[]) {
        return this[GATE].call<unknown>(service, method, isWrite, () => work.apply(this, values), this);
      },
    });
  }
}
