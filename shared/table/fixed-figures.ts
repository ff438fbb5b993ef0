import { cellOnTab } from '../block/cell-on-tab';
import { firstFew } from '../block/first-few';
import type { GroupField, GrowerList, ListKind, ListSource, PaddockField } from '../lists/model';
import { OPEN_DAYS } from '../plan/open-days';
import type { UnitSystem } from '../units/units';
import { listLookup } from './list-lookup';
import * as words from './words';

/** What tables look up in the lists. */
const FOLLOWED: Readonly<Record<ListKind, readonly (PaddockField | GroupField)[]>> = {
  paddocks: ['area', ...OPEN_DAYS, 'lastUsed'],
  groups: ['head', 'weight', 'weighedOn', 'dailyGain'],
};

/** Tells which figures of a list reach the tables as fixed values, so that a change there is not seen at once. */
export function fixedFiguresNotes(source: ListSource<GrowerList>, system: UnitSystem): readonly string[] {
  const cells = fixedFigures(source, system);
  if (cells.length === 0) return [];
  return [words.fixedFigures(firstFew(cells))];
}

function fixedFigures(source: ListSource<GrowerList>, system: UnitSystem): readonly string[] {
  const { tab, list } = source;
  const columns: Partial<Record<string, number>> = list.columns;
  const nameColumn = list.columns.name ?? 1;
  const fields = FOLLOWED[list.kind].flatMap((field) =>
    columns[field] === undefined ? [] : [{ field, column: columns[field] }],
  );
  return tab.values.slice(list.firstRow - 1, list.lastRow).flatMap((cells, i) => {
    const name = String(cells[nameColumn - 1] ?? '');
    return fields.flatMap(({ field, column }) => {
      const isFilled = name.trim() !== '' && (cells[column - 1] ?? '') !== '';
      const isFixed = isFilled && listLookup(source, field, name, 'A1', system, true) === undefined;
      return isFixed ? [cellOnTab(list.tab, list.firstRow + i, column)] : [];
    });
  });
}
