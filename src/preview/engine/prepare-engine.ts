/** What the engine needs once, before the first workbook: a missing built-in, our names, our clock. */
import { groupHistoryByCall } from './call-history';
import { firstError } from './cell-values';
import { watchChangingFunctions } from './changing-cells';
import type { Engine, EngineCommand, EngineResult } from './engine';
import { EXTRA_ERROR_NAMES, SCRIPT_ERROR } from './error-names';
import { adaptEvaluation } from './evaluation';
import { PARSE_ERROR_FUNCTION } from './formula-text';
import { measureWhenLooked } from './header-positions';
import { hooksIn } from './host-hooks';
import { serialOfDate } from './zone-time';

/** Name of the engine command that runs many commands as one undo step and one recalculation. */
export const BATCH_COMMAND = 'SOUNDER_BATCH';

export type Batch = { type: typeof BATCH_COMMAND; commands: EngineCommand[] };

const prepared = new WeakSet<object>();

/** o-spreadsheet 19.3 uses Object.groupBy, which Node 20 does not have. */
export function addMissingBuiltIns(): void {
  type GroupBy = (items: Iterable<unknown>, keyOf: (item: unknown, index: number) => PropertyKey) => unknown;
  const target = Object as unknown as { groupBy?: GroupBy };
  target.groupBy ??= (items, keyOf) => {
    const groups: Record<PropertyKey, unknown[]> = Object.create(null);
    let index = 0;
    for (const item of items) {
      const key = keyOf(item, index++);
      groups[key] ??= [];
      groups[key].push(item);
    }
    return groups;
  };
}

export function prepareEngine(engine: Engine): void {
  if (prepared.has(engine.registries)) return;
  prepared.add(engine.registries);
  addMissingBuiltIns();
  for (const name of EXTRA_ERROR_NAMES) engine.registries.errorTypes.add(name);
  addBatchCommand(engine);
  groupHistoryByCall(engine);
  adaptEvaluation(engine);
  measureWhenLooked(engine);
  addClock(engine);
  watchChangingFunctions(engine);
  addStrictSumproduct(engine);
  addJoinOfShownDays(engine);
  engine.addFunction(PARSE_ERROR_FUNCTION, {
    description: 'Keeps a formula that could not be read.',
    hidden: true,
    args: [engine.helpers.arg('formula (string)', '')],
    compute: () => ({ value: SCRIPT_ERROR, message: 'Formula parse error.' }),
  });
}

function addBatchCommand(engine: Engine): void {
  class BatchPlugin extends engine.UIPlugin {
    override handle(command: EngineCommand): void {
      const batch = command as unknown as Batch;
      if (batch.type !== BATCH_COMMAND) return;
      const dispatch = this.dispatch as unknown as (type: string, payload: object) => void;
      for (const { type, ...payload } of batch.commands) dispatch.call(this, type, payload);
    }
  }
  engine.registries.featurePluginRegistry.add('sounderBatch', BatchPlugin);
}

/** SUMPRODUCT that passes errors on, for workbooks that want it so. */
function addStrictSumproduct(engine: Engine): void {
  const functions = engine.registries.functionRegistry;
  const plain = functions.get('SUMPRODUCT');
  functions.replace('SUMPRODUCT', {
    ...plain,
    compute(...ranges) {
      const hooks = hooksIn(this);
      const error = hooks?.modes.sumproductPassesErrors ? firstError(engine, ranges) : undefined;
      return (error as never) ?? plain.compute.apply(this, ranges);
    },
  });
}

/** `&` as it is, and for workbooks that want it so with days as they are shown. */
function addJoinOfShownDays(engine: Engine): void {
  const functions = engine.registries.functionRegistry;
  const plain = functions.get('CONCATENATE');
  functions.replace('CONCATENATE', {
    ...plain,
    compute(...parts) {
      const hooks = hooksIn(this);
      const { locale } = this;
      const shown = parts.map((part) => {
        const { value, format } = (part ?? {}) as EngineResult;
        const isDay = typeof value === 'number' && format && engine.helpers.isDateTimeFormat(format);
        return isDay ? { value: engine.helpers.formatValue(value, { format, locale }) } : part;
      });
      return plain.compute.apply(this, hooks?.modes.daysJoinAsShown ? shown : parts);
    },
  });
}

/** TODAY and NOW in the workbook's own time zone, by the host's clock. */
function addClock(engine: Engine): void {
  const serialNow = (context: unknown): number => {
    const hooks = hooksIn(context);
    return hooks ? serialOfDate(hooks.now(), hooks.timeZone()) : serialOfDate(new Date(), 'UTC');
  };
  const functions = engine.registries.functionRegistry;
  functions.replace('TODAY', {
    ...functions.get('TODAY'),
    compute() {
      return { value: Math.floor(serialNow(this)), format: this.locale.dateFormat };
    },
  });
  functions.replace('NOW', {
    ...functions.get('NOW'),
    compute() {
      return { value: serialNow(this), format: `${this.locale.dateFormat} ${this.locale.timeFormat}` };
    },
  });
}
