import { firstFew } from '../../../shared/block/first-few';
import { cellOnTab } from '../../../shared/lists/cell-on-tab';
import type { GrowerList } from '../../../shared/lists/model';
import type { ListSource } from '../../../shared/table/model';
import type { Book } from '../parts/use-book';
import { listAgain } from './list-again';

/**
 * Throws, with the cells, where a list stands otherwise in the sheet now than when the page read it: what is about to
 * be written was worked out from the older one.
 */
export function refuseChangedLists(
  sources: readonly (ListSource<GrowerList> | undefined)[],
  now: Book,
): void {
  const changed = sources.flatMap((source) => (source ? changedCells(source, now) : []));
  if (changed.length === 0) return;
  throw new Error(
    `The list was changed in the sheet after the page had read it: ${firstFew(changed)}. Press “Read the spreadsheet again” so that it counts, look at the numbers and write once more. Nothing was written.`,
  );
}

/** Cells that differ, as they stand now; the heading row's first cell where the list is gone or has other columns. */
function changedCells({ tab, list }: ListSource<GrowerList>, now: Book): readonly string[] {
  const again = listAgain(now, list);
  const tabNow = now.tabs.find(({ name }) => name === list.tab);
  const columns = Object.entries(list.columns) as [keyof typeof list.columns, number][];
  const columnsNow: typeof list.columns | undefined = again?.columns;
  if (!again || !tabNow || columns.some(([field]) => columnsNow?.[field] === undefined)) {
    return [cellOnTab(list.tab, list.headingRow, Math.min(...columns.map(([, column]) => column)))];
  }
  const rows = Math.max(list.lastRow - list.headingRow, again.lastRow - again.headingRow) + 1;
  return Array.from({ length: rows }, (_, r) => r).flatMap((r) =>
    columns.flatMap(([field, column]) => {
      const columnNow = columnsNow?.[field] ?? column;
      const before = tab.values[list.headingRow - 1 + r]?.[column - 1] ?? '';
      const value = tabNow.values[again.headingRow - 1 + r]?.[columnNow - 1] ?? '';
      const isSame = JSON.stringify(before) === JSON.stringify(value);
      return isSame ? [] : [cellOnTab(list.tab, again.headingRow + r, columnNow)];
    }),
  );
}
