import type { UnitSystem } from '../units/units';
import { rowKind } from './list-rows';
import type { GroupList, ListSource } from './model';
import { type RowReader, untold } from './read-list-cell';
import { writingOfList } from './writing-of-list';

/** A reader for each item of a list that is only looked at: what cannot be read there is told to nobody. */
export function untoldReaders(
  { tab, list }: ListSource<GroupList>,
  system: UnitSystem,
  habits: Pick<RowReader, 'comma' | 'dates'>,
): RowReader[] {
  const writing = writingOfList(tab, list, habits);
  const last = Math.min(list.lastRow, tab.values.length);
  const rows = Array.from({ length: Math.max(0, last - list.firstRow + 1) }, (_, i) => list.firstRow + i);
  const under = { tab, row: list.headingRow, columns: list.columns };
  return rows
    .filter((row) => rowKind(under, row) === 'item')
    .map((row) => ({ tab, list, row, system, ...writing, ...untold() }));
}
