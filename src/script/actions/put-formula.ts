import { type SheetPort, Told } from '../port';
import { activeArea } from './active-area';

/** Puts a formula into the active cell if nothing stands there, neither a value nor a formula that shows none. */
export function putFormula(port: SheetPort, formula: string): { a1: string } {
  if (!formula.startsWith('=')) throw new Told('A formula begins with =. Nothing was written.');
  return port.locked(() => {
    const active = activeArea(port);
    const cell = { ...active, rows: 1, columns: 1 };
    const { values, formulas } = port.read(cell);
    if (values[0]?.[0] !== '' || formulas[0]?.[0] !== '') {
      throw new Told(
        `${active.a1} on "${active.tab}" already holds something. Click an empty cell and try again. Nothing was written.`,
      );
    }
    port.putFormula(cell, formula);
    return { a1: active.a1 };
  });
}
