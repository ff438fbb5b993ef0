import { cellA1 } from '../block/a1';
import { bareMark, markOfStanding } from '../block/memory';
import type { BlockContent } from '../block/read-block';
import { UNITS_LABEL } from './settings';

/** Refuses a table whose units were typed over, by that cell: every figure in it is in the others. */
export function refuseOtherUnits({ info, values, memory }: BlockContent): void {
  const label = markOfStanding(UNITS_LABEL, '');
  const row = memory?.rows.findIndex((one) => one?.marks[0] === label) ?? -1;
  const was = memory?.rows[row]?.marks[1];
  const got = values[row]?.[1] ?? '';
  if (was === undefined || got === '' || bareMark(was) === markOfStanding(got, '')) return;
  throw new Error(
    `${cellA1(info.row + row, info.column + 1)}: the units of a table that stands cannot be changed, got ${String(got)}. Put the other units back; for these write the table on a new tab. Nothing was written.`,
  );
}
