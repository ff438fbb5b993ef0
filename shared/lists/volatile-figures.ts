import { cellOnTab } from '../block/cell-on-tab';
import { firstFew } from '../block/first-few';
import type { GrowerList, ListSource } from './model';
import * as words from './words';

/** Built-ins that cell functions may not depend on (Google's guide to custom functions; RANDARRAY from memory). */
export const NEW_EACH_TIME = /\b(NOW|RAND|RANDBETWEEN|RANDARRAY)\s*\(/i;

/** Tells which cells of a list hold such a formula. What they point at is not followed. */
export function volatileFiguresNotes({ tab, list }: ListSource<GrowerList>): readonly string[] {
  const columns = Object.values(list.columns).filter((column) => column !== undefined);
  const cells = tab.formulas
    .slice(list.firstRow - 1, list.lastRow)
    .flatMap((row, i) =>
      columns
        .filter((column) => NEW_EACH_TIME.test(row[column - 1] ?? ''))
        .map((column) => cellOnTab(list.tab, list.firstRow + i, column)),
    );
  if (cells.length === 0) return [];
  return [words.volatile(firstFew(cells))];
}
