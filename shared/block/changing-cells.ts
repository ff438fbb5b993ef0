import type { TabContent } from '../contract';
import { oncePer } from './once-per';
import { type Reference, referencesIn, type Span } from './references';

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
  for (const cell of found) {
    const isAt = ({ tab = name, rows, columns }: Reference): boolean =>
      tab.toLowerCase() === name.toLowerCase() && isIn(cell.row, rows) && isIn(cell.column, columns);
    found.push(...all.filter((other) => !found.includes(other) && referencesIn(other.text).some(isAt)));
  }
  return found;
});

function isIn(place: number, [first, last]: Span): boolean {
  return place >= first && place <= last;
}
