import type { TabContent } from '../contract';
import { oncePer } from './once-per';
import { pointsInto, referencesIn } from './references';

/** Built-ins that cell functions may not depend on (Google's guide to custom functions; RANDARRAY from memory). */
const NEW_EACH_TIME = /\b(NOW|RAND|RANDBETWEEN|RANDARRAY)\s*\(/i;

/**
 * Whether a cell, by row and column from 1, is worked out with NOW or RAND, or with a cell of its own tab that is: it
 * may be another at every look, and Google gives it to no cell function. Whole columns (K:K), names and other tabs are
 * not followed.
 */
export function isChanging(tab: TabContent, row: number, column: number): boolean {
  return changingCells(tab).some((cell) => cell.row === row && cell.column === column);
}

interface Formula {
  readonly row: number;
  readonly column: number;
  readonly text: string;
}

const changingCells = oncePer(({ name, formulas }: TabContent): readonly Formula[] => {
  const all = formulas.flatMap((line, r) =>
    line.flatMap((text, c) => (text === '' ? [] : [{ row: r + 1, column: c + 1, text }])),
  );
  const found = all.filter(({ text }) => NEW_EACH_TIME.test(text));
  // Each that is found may make others of those that point at it.
  for (const { row, column } of found) {
    const cell = { tab: name, row, column, rows: 1, columns: 1 };
    const isOfIt = ({ text }: Formula): boolean =>
      referencesIn(text).some((reference) => pointsInto(reference, name, cell));
    found.push(...all.filter((other) => !found.includes(other) && isOfIt(other)));
  }
  return found;
});
