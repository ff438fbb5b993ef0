import { cellOnTab } from '../block/cell-on-tab';
import type { TabContent, WireCell } from '../contract';
import { isAfterGap, mayBeHeading } from './below-a-list';
import { isDate } from './column-content';
import { isBlankCell, rowKind, type UnderHeadings } from './list-rows';
import type { GrowerList } from './model';
import { ERRORS } from './read-list-cell';

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
  const cells = (tab.values[row - 1] ?? []).filter((cell) => !isBlankCell(cell));
  const figures = FIGURES.flatMap((field) => columns[field] ?? [])
    .map((column) => tab.values[row - 1]?.[column - 1])
    .filter((cell) => !isBlankCell(cell));
  const areWords = cells.every(isWord) && new Set(cells).size === cells.length;
  const first = tab.values[row]?.[(columns.name ?? 1) - 1] ?? '';
  const isAmple = cells.length >= FEWEST_HEADINGS || (cells.length > 1 && isDate(first));
  return areWords && isAmple && figures.length > 0 && rowKind(list, row) === 'item';
}

function isWord(cell: WireCell | undefined): boolean {
  return mayBeHeading(cell) && /[\p{L}\p{Sc}#%]/u.test(String(cell)) && !ERRORS.test(String(cell));
}

/** Below a blank row or a total; a title may stand between. */
function isAfterGapOrTitle(list: UnderHeadings, row: number): boolean {
  const above = list.tab.values[row - 2] ?? [];
  const isTitle = above.filter((cell) => !isBlankCell(cell)).length === 1;
  return isAfterGap(row, list) || (isTitle && isAfterGap(row - 1, list));
}

/** Says where a list ends because another table begins. */
export function otherTableNotes(tab: TabContent, list: GrowerList): readonly string[] {
  const row = otherTableBelow({ tab, row: list.headingRow, columns: list.columns });
  if (row === undefined || row <= list.lastRow) return [];
  const column = (tab.values[row - 1] ?? []).findIndex((cell) => !isBlankCell(cell)) + 1;
  const cell = `${cellOnTab(tab.name, row, column)} (“${tab.values[row - 1]?.[column - 1]}”)`;
  const what = list.kind === 'paddocks' ? 'paddocks' : 'groups';
  return [`Not read as ${what}: what stands from ${cell} on, as a table of its own.`];
}
