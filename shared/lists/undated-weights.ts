/** Weights of which the list gives no day: taken as of whatever day it is, so the pigs would never gain. Asked once. */
import { BLANK, date, text } from '../block/cells';
import type { CellChange } from '../contract';
import type { Day } from '../core/calendar/day';
import { freeColumn } from './free-column';
import { isBlankCell } from './list-rows';
import { MADE_HEADINGS } from './made-headings';
import type { GroupList, ListSource, ReadGroup } from './model';

export interface UndatedWeights {
  readonly tab: string;
  /** Where the days go, and the row of its heading where that is yet to be written. */
  readonly column: number;
  readonly headingRow?: number;
  readonly rows: readonly { readonly row: number; readonly name: string }[];
}

/** Undefined where every weight has its day. Of a group that is weighed in a log the list's weight does not count. */
export function undatedWeights(
  { tab, list }: ListSource<GroupList>,
  groups: readonly ReadGroup[],
): UndatedWeights | undefined {
  const { weight, weighedOn } = list.columns;
  const isBlank = (row: number, column: number | undefined): boolean =>
    column === undefined || isBlankCell(tab.values[row - 1]?.[column - 1] ?? '');
  const rows = groups.flatMap(({ name, cells, herd = [] }) => {
    const { row } = cells.name!;
    const isLogged = herd.some(({ weightKg }) => weightKg !== undefined);
    return isLogged || !cells.weight || isBlank(row, weight) || !isBlank(row, cells.weighedOn?.column)
      ? []
      : [{ row, name: name.trim() }];
  });
  if (rows.length === 0) return undefined;
  const place = weighedOn === undefined ? { headingRow: list.headingRow } : {};
  return { tab: tab.name, column: weighedOn ?? freeColumn(tab, list), ...place, rows };
}

/** The cells that give all of them one day. */
export function datedWeights({ tab, column, headingRow, rows }: UndatedWeights, day: Day): CellChange[] {
  const heading =
    headingRow === undefined
      ? []
      : [{ tab, row: headingRow, column, before: BLANK, after: text(MADE_HEADINGS.weighedOn) }];
  return [...heading, ...rows.map(({ row }) => ({ tab, row, column, before: BLANK, after: date(day) }))];
}
