/** The headings of a row as they are meant: in two rows, with units in the row below, or none above the names. */
import type { TabContent, WireCell } from '../contract';
import { unitOfText } from '../units/unit-words';
import { mayBeHeading } from './below-a-list';
import { isBlankCell } from './list-rows';
import { matchHeading } from './match-heading';
import { isErrorWire } from './read-list-cell';
import { yearIn } from './year-in';

export interface Heading {
  readonly column: number;
  readonly text: string;
}

/** What stands for the heading of a column of names that has none. */
export const NO_HEADING = '(no heading)';

export function headingsAt(tab: TabContent, row: number): readonly Heading[] {
  const cells = tab.values[row - 1] ?? [];
  const above = tab.values[row - 2] ?? [];
  const units = isUnitRow(tab, row + 1) ? (tab.values[row] ?? []) : [];
  const isInTwo = areWords(cells) && areWords(above);
  const headings = cells.flatMap((_, c): Heading[] => {
    const text = isInTwo ? withAbove(cells, above, c) : wordsOf(cells[c]);
    const unit = wordsOf(units[c]);
    if (text === '') return [];
    return [{ column: c + 1, text: unit === '' ? text : `${text} (${unit.replace(/[()[\]]/g, '')})` }];
  });
  const first = headings[0]?.column ?? 1;
  const isNamed = first === 1 || !isBlankCell(cells[first - 2]) || headings.length < FEWEST_HEADINGS;
  const below = isNamed
    ? []
    : tab.values.slice(row, row + ROWS_OF_NAMES).map((one) => wordsOf(one[first - 2]));
  const names = below.filter((name) => name !== '');
  const areNames = names.length >= FEWEST_NAMES && new Set(names).size === names.length;
  return areNames ? [{ column: first - 1, text: NO_HEADING }, ...headings] : headings;
}

const FEWEST_HEADINGS = 2;
const ROWS_OF_NAMES = 6;
const FEWEST_NAMES = 2;

/** The headings that stand side by side with that of a column. */
export function joined(headings: readonly Heading[], column: number): readonly Heading[] {
  const own = headings.findIndex((heading) => heading.column === column);
  if (own < 0) return [];
  const follows = (i: number): boolean => headings[i]?.column === (headings[i - 1]?.column ?? 0) + 1;
  let [first, last] = [own, own];
  while (first > 0 && follows(first)) first -= 1;
  while (last + 1 < headings.length && follows(last + 1)) last += 1;
  return headings.slice(first, last + 1);
}

/** Whether a row holds the units of the headings above it, and nothing else. */
export function isUnitRow(tab: TabContent, row: number): boolean {
  const cells = (tab.values[row - 1] ?? []).filter((cell) => !isBlankCell(cell));
  return (
    cells.length > 0 &&
    cells.every(
      (cell) => typeof cell === 'string' && unitOfText(cell.replace(/[()[\]]/g, ''), true) !== undefined,
    )
  );
}

/**
 * A heading with that of the row above it, where this says nothing by itself ("Size" over "acres"), where both together
 * say something else ("Last used" over "to"), or where it is one of a season ("2026" over "Out").
 */
function withAbove(cells: readonly WireCell[], above: readonly WireCell[], c: number): string {
  const own = wordsOf(cells[c]);
  const filled = above.slice(0, c + 1).filter((cell) => !isBlankCell(cell));
  const over = wordsOf(filled[filled.length - 1]);
  if (own === '') return matchHeading(wordsOf(above[c])).length > 0 ? wordsOf(above[c]) : '';
  const both = `${over} ${own}`;
  if (over === '') return own;
  const known = matchHeading(own);
  // The title of a list above is not part of its headings' words.
  const together = matchHeading(both).filter(({ field }) => field !== 'name');
  if (known.length === 0) return together.length > 0 && !isBlankCell(above[c]) ? both : own;
  if (yearIn(over) > 0 && known.every(({ field }) => field !== 'name')) return `${own} (${over})`;
  const isOther = together.some(({ field }) => known.every((one) => one.field !== field));
  const areDays = [...known, ...together].every(({ field }) => DAYS.has(field));
  return isOther && areDays ? both : own;
}

const DAYS: ReadonlySet<string> = new Set([
  'openFrom',
  'openUntil',
  'shutFrom',
  'shutUntil',
  'lastUsed',
  'weighedOn',
  'from',
  'until',
  'since',
]);

function areWords(row: readonly WireCell[]): boolean {
  return (
    row.every((cell) => mayBeHeading(cell) && !isErrorWire(cell)) &&
    row.filter((cell) => !isBlankCell(cell)).length >= FEWEST_HEADINGS
  );
}

/** "#NAME?" is no name. */
function wordsOf(cell: WireCell | undefined): string {
  return typeof cell === 'string' && !isErrorWire(cell) ? cell.trim() : '';
}
