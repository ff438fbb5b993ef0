/** Lists that lie on their side: names across the sheet, and what is known of them below. */
import { areaA1, quotedTab } from '../block/a1';
import { isInArea } from '../block/is-in-area';
import type { TabContent } from '../contract';
import { findLists } from './find-lists';
import { ownArea } from './list-area';
import type { CellPlace, ListKind } from './model';
import * as words from './words';

/** What to do with a list that lies on its side, for each of them; `at`: only where that cell is in it. */
export function lyingLists(kind: ListKind, tabs: readonly TabContent[], at?: CellPlace): readonly string[] {
  const lying = findLists(tabs.map(turned)).filter((list) => list.kind === kind && list.missing.length === 0);
  return lying
    .map(ownArea)
    .map((area) => ({ ...area, row: area.column, column: area.row, rows: area.columns, columns: area.rows }))
    .filter((area) => !at || isInArea(area, at.row, at.column))
    .map((area) => {
      const range = `${quotedTab(area.tab)}!${areaA1(area)}`;
      return words.liesOnSide(range);
    });
}

function turned({ name, values, formulas }: TabContent): TabContent {
  return { name, values: transposed(values, ''), formulas: transposed(formulas, '') };
}

function transposed<Cell>(rows: readonly (readonly Cell[])[], blank: Cell): Cell[][] {
  const width = Math.max(0, ...rows.map((row) => row.length));
  return Array.from({ length: width }, (_, c) => rows.map((row) => row[c] ?? blank));
}
