/** Makes the script's cell functions known to the engine, with their help. */
import { engineResult, firstError, scriptArgument } from './cell-values';
import { refersToChangingCell } from './changing-cells';
import type { Engine, EngineResult } from './engine';
import { SCRIPT_ERROR } from './error-names';
import { type HostHooks, hooksIn } from './host-hooks';

export type CellFunctionHelp = {
  name: string;
  description: string;
  parameters: { name: string; help: string }[];
};

/** From reports. */
const CHANGING_REFUSED =
  'This function is not allowed to reference a cell with NOW(), RAND(), RANDARRAY(), or RANDBETWEEN().';

type Context = { locale: { dateFormat: string } } & Record<string, unknown>;

/** Signatures registered so far. The engine's registry is one for the whole process, whatever the workbook. */
const registered = new Map<string, string>();

export function registerCellFunctions(engine: Engine, functions: readonly CellFunctionHelp[]): void {
  for (const help of functions) {
    const signature = JSON.stringify(help);
    const isOurs = registered.has(help.name);
    if (registered.get(help.name) === signature) continue;
    // As in Sheets, a built-in function of the same name wins.
    if (!isOurs && engine.registries.functionRegistry.contains(help.name)) continue;
    engine.registries.functionRegistry.replace(help.name, {
      description: help.description,
      category: 'Sounder Sheet',
      args: help.parameters.map((parameter) => ({
        ...engine.helpers.arg(
          `${parameter.name} (any, range<any>${isOptional(parameter.help)})`,
          parameter.help,
        ),
        acceptErrors: true,
      })),
      compute(...cells) {
        const context = this as unknown as Context;
        const hooks = hooksIn(this);
        if (!hooks?.hasCellFunction(help.name)) {
          return { value: '#NAME?', message: `Unknown function: '${help.name}'.` };
        }
        if (refersToChangingCell(this)) return { value: SCRIPT_ERROR, message: CHANGING_REFUSED };
        return runCellFunction(engine, hooks, help.name, cells as never[], context.locale.dateFormat);
      },
    });
    // Google Sheets calls a function with too few arguments too, so that its own refusal is what people read.
    engine.registries.functionRegistry.get(help.name).minArgRequired = 0;
    registered.set(help.name, signature);
  }
}

/** "Optional." at the beginning of an argument's help is the only sign of it that Sheets shows. */
function isOptional(help: string): string {
  return /^optional\b/i.test(help) ? ', optional' : '';
}

function runCellFunction(
  engine: Engine,
  hooks: HostHooks,
  name: string,
  cells: never[],
  dateFormat: string,
): EngineResult | EngineResult[][] {
  const timeZone = hooks.timeZone();
  const error = hooks.modes.errorCellsRefused ? firstError(engine, cells) : undefined;
  if (error) return error;
  try {
    const zoneOfDates = hooks.modes.datesInScriptZone ? hooks.scriptTimeZone() : timeZone;
    const values = cells.map((cell) => scriptArgument(engine, cell, zoneOfDates));
    return engineResult(hooks.callCellFunction(name, values), timeZone, dateFormat);
  } catch (error) {
    return { value: SCRIPT_ERROR, message: error instanceof Error ? error.message : String(error) };
  }
}
