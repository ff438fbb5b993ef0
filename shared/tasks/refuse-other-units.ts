import { cellA1 } from '../block/a1';
import type { BlockContent } from '../block/read-block';
import { QUANTITIES } from '../units/units';
import { UNITS_LABEL } from './settings';

/**
 * Refuses a table whose units were typed over, by that cell. `lost` are the cells that a table in other units would not
 * have, as lostCells() names them: units are among them, which nobody types.
 */
export function refuseOtherUnits({ info, values }: BlockContent, lost: readonly string[]): void {
  const symbols = Object.values(QUANTITIES).flatMap(({ US, metric }) => [US.symbol, metric.symbol]);
  const row = values.findIndex(([first]) => first === UNITS_LABEL);
  if (row < 0 || !lost.some((cell) => symbols.some((symbol) => cell.endsWith(`(“${symbol}”)`)))) return;
  throw new Error(
    `${cellA1(info.row + row, info.column + 1)}: the units of a table that stands cannot be changed, got ${String(values[row]?.[1])}. Put the other units back; for these write the table on a new tab. Nothing was written.`,
  );
}
