/**
 * Cells that change at every calculation. Google Sheets calls no cell function that refers to one, directly or through
 * other cells: it shows #ERROR! (reports of its message; TODAY is not among them).
 */
import type { Engine, EngineModel } from './engine';
import { hooksIn } from './host-hooks';

type Getters = EngineModel['getters'];
type Position = { sheetId: string; row: number; col: number };
/** What the engine hands to a function beside its arguments. */
type Context = {
  getters: Getters;
  __originCellPosition?: Position;
};

const CHANGING = ['NOW', 'RAND', 'RANDARRAY', 'RANDBETWEEN'];
const CALLS_ONE = new RegExp(`\\b(${CHANGING.join('|')})\\(`);

/** Notes in a workbook's hooks that one of these was calculated there: until then nobody has to look for them. */
export function watchChangingFunctions(engine: Engine): void {
  const functions = engine.registries.functionRegistry;
  for (const name of CHANGING) {
    const plain = functions.get(name);
    functions.replace(name, {
      ...plain,
      compute(...values) {
        const hooks = hooksIn(this);
        if (hooks) hooks.hasChangingCells = true;
        return plain.compute.apply(this, values);
      },
    });
  }
}

/** Whether the formula that is being calculated refers to such a cell. */
export function refersToChangingCell(context: unknown): boolean {
  const { getters, __originCellPosition: origin } = context as Context;
  const hooks = hooksIn(context);
  if (!origin || !hooks?.hasChangingCells || !hooks.modes.changingCellsRefused) return false;
  const seen = new Set<string>();
  const isChanging = (position: Position): boolean => {
    const key = `${position.sheetId} ${position.row} ${position.col}`;
    if (seen.has(key)) return false;
    seen.add(key);
    const cell = getters.getCell(position);
    if (!cell?.isFormula) return false;
    const { normalizedFormula, rangeDependencies } = cell.compiledFormula;
    if (CALLS_ONE.test(normalizedFormula)) return true;
    return rangeDependencies.some(({ sheetId, zone }) => {
      const { right, bottom } = getters.getSheetZone(sheetId);
      for (let row = zone.top; row <= Math.min(zone.bottom, bottom); row += 1) {
        for (let col = zone.left; col <= Math.min(zone.right, right); col += 1) {
          if (isChanging({ sheetId, row, col })) return true;
        }
      }
      return false;
    });
  };
  return isChanging(origin);
}
