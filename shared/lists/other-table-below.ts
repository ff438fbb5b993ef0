import { cellOnTab } from '../block/cell-on-tab';
import type { TabContent, WireCell } from '../contract';
import { isAfterGap, mayBeHeading } from './below-a-list';
import { isDate } from './column-content';
import { isBlankCell, rowKind, type UnderHeadings } from './list-rows';
import type { GrowerList } from './model';
import { ERRORS } from './read-list-cell';
import * as words from './words';

/** Fields of which every item holds a number or a date. */
const FIGURES = ['area', 'width', 'length', 'head', 'weight', 'weighedOn', 'dailyGain'];
const FEWEST_HEADINGS = 3;

/**
 * Row of the headings of another table below a list, such as a ledger of feed: after a gap, words that differ from one
 * another where the list has figures, and something below them. Undefined where there is none.
 */
export function otherTableBelow(list: UnderHeadings): number | undefined {
  const { tab, row: headingRow } = list;
  let hasItem = false;
  for (let row = headingRow + 2; row < tab.values.length; row++) {
    // What stands first below the headings, after a gap too, belongs to them.
    hasItem ||= rowKind(list, row - 1) === 'item';
    if (hasItem && isHeadings(list, row) && isAfterGapOrTitle(list, row) && rowKind(list, row + 1) === 'item')
      return row;
  }
  return undefined;
}

function isHeadings(list: UnderHeadings, row: number): boolean {
  const { tab, columns } = list;
  const { cells } = besides(list, row);
  const figures = FIGURES.flatMap((field) => columns[field] ?? [])
    .map((column) => tab.values[row - 1]?.[column - 1])
    .filter((cell) => !isBlankCell(cell));
  const areWords = cells.every(isWord) && new Set(cells).size === cells.length;
  const first = tab.values[row]?.[(columns.name ?? 1) - 1] ?? '';
  const isAmple = cells.length >= FEWEST_HEADINGS || (cells.length > 1 && isDate(first));
  return areWords && isAmple && figures.length > 0 && rowKind(list, row) === 'item';
}

/** What stands in a row side by side with the list's own columns: lists beside it have rows of their own there. */
function besides({ tab, columns }: UnderHeadings, row: number): { first: number; cells: WireCell[] } {
  const cells = tab.values[row - 1] ?? [];
  const own = Object.values(columns).filter((column) => column !== undefined);
  let [first, end] = [Math.min(...own) - 1, Math.max(...own)];
  while (!isBlankCell(cells[first - 1])) first -= 1;
  while (!isBlankCell(cells[end])) end += 1;
  while (first < end && isBlankCell(cells[first])) first += 1;
  return { first: first + 1, cells: cells.slice(first, end).filter((cell) => !isBlankCell(cell)) };
}

function isWord(cell: WireCell | undefined): boolean {
  return mayBeHeading(cell) && /[\p{L}\p{Sc}#%]/u.test(String(cell)) && !ERRORS.test(String(cell));
}

/** Below a blank row or a total; a title may stand between. */
function isAfterGapOrTitle(list: UnderHeadings, row: number): boolean {
  const isTitle = besides(list, row - 1).cells.length === 1;
  return isAfterGap(row, list) || (isTitle && isAfterGap(row - 1, list));
}

/** Says where a list ends because another table begins. */
export function otherTableNotes(tab: TabContent, list: GrowerList): readonly string[] {
  const row = otherTableBelow({ tab, row: list.headingRow, columns: list.columns });
  if (row === undefined || row <= list.lastRow) return [];
  const { first: column } = besides({ tab, row: list.headingRow, columns: list.columns }, row);
  const cell = `${cellOnTab(tab.name, row, column)} (“${tab.values[row - 1]?.[column - 1]}”)`;
  return [words.otherTable(list.kind, cell)];
}
