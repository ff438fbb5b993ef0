import { areaA1 } from '../../../shared/block/a1';
import { firstFew } from '../../../shared/block/first-few';
import type { Request } from '../../../shared/contract';
import { type Area, type SheetPort, Told } from '../port';
import { takeBack } from './take-back';

/** Puts formulas and words into blank cells of the grower's: all of them, or none. */
export function fillCells(port: SheetPort, { tab, cells }: Request<'fillCells'>): { cells: number } {
  return port.locked(() => {
    const areas = cells.map(({ row, column }) => ({ tab, row, column, rows: 1, columns: 1 }));
    for (const area of areas) port.makeRoom(area);
    const taken = areas.filter((area) => !isEmptyArea(port, area)).map(areaA1);
    if (taken.length > 0) {
      throw new Told(`Something stands in ${firstFew(taken)} on "${tab}" by now. Nothing was written.`);
    }
    try {
      for (const [i, area] of areas.entries()) port.putFormula(area, cells[i]!.value);
    } catch (error) {
      takeBack(error, () => port.clear(areas), [`"${tab}"`]);
    }
    return { cells: areas.length };
  });
}

function isEmptyArea(port: SheetPort, area: Area): boolean {
  const { values, formulas } = port.ground(area);
  return values.flat().every((value) => value === '') && formulas.flat().every((formula) => formula === '');
}
