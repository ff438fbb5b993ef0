/** The cells of a paddock list that say in which days a paddock is shut; columns that are not there yet come to its right edge. */
import { BLANK, date, text } from '../block/cells';
import type { CellChange } from '../contract';
import type { Day } from '../core/calendar/day';
import { freeColumn } from '../lists/free-column';
import { MADE_HEADINGS } from '../lists/made-headings';
import type { ListSource, PaddockList, ReadPaddock } from '../lists/model';
import { cellChange } from './kept-cell';

export interface ShutDays {
  readonly shutFrom: Day;
  /** Absent: for good. */
  readonly shutUntil?: Day | undefined;
}

/** Each with what it is called: "Shut from of East in your paddock list". */
export function shutCells(
  { tab, list }: ListSource<PaddockList>,
  { name, cells }: ReadPaddock,
  days: ShutDays,
): { readonly what: string; readonly cell: CellChange }[] {
  let edge: number | undefined;
  return (['shutFrom', 'shutUntil'] as const).flatMap((field) => {
    const own = list.columns[field];
    const day = days[field];
    if (own === undefined && day === undefined) return [];
    const column = own ?? freeColumn(tab, list, edge);
    edge = own === undefined ? column : edge;
    const heading = cellChange(tab, list.headingRow, column, text(MADE_HEADINGS[field]));
    const typed = cellChange(tab, cells.name!.row, column, day === undefined ? BLANK : date(day));
    const what = `${MADE_HEADINGS[field]} of ${name.trim()} in your paddock list`;
    return [
      ...(own === undefined ? [{ what: 'A heading for your paddock list', cell: heading }] : []),
      ...(typed.before.k === 'blank' && day === undefined ? [] : [{ what, cell: typed }]),
    ];
  });
}
