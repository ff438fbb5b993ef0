import type { TabContent, WireCell } from '../contract';
import { TOTAL_OF_WORDS, TOTAL_WORDS } from './headings';

const TOTAL = new RegExp(`^(${TOTAL_WORDS.join('|')})([\\s-]+(${TOTAL_OF_WORDS.join('|')}))?[\\s:=.]*$`, 'i');
const ADDS_UP = /\b(SUM|SUBTOTAL|AVERAGE|COUNTA?)\s*\(/i;
const REMARK = /^\s*(\*|†|‡|note\b|notes\b|nb\b|source\b|remark)/i;
const LONGEST_NAME_OF_A_REMARK = 30;

/** What a row below the headings is. */
export type RowKind = 'item' | 'blank' | 'total';

/**
 * Tells an item from a blank row and from a row that adds up the others: its name says so, or it has no name
 * but a total's label or a sum beside it.
 */
export function rowKind(
  tab: TabContent,
  row: number,
  columns: readonly number[],
  nameColumn: number,
): RowKind {
  const cells = tab.values[row - 1] ?? [];
  const name = cells[nameColumn - 1] ?? '';
  if (isTotalWord(name)) return 'total';
  const used = columns.filter((column) => !isBlankCell(cells[column - 1]));
  if (used.length === 0) return 'blank';
  if (!isBlankCell(name)) return 'item';
  const left = Math.max(1, Math.min(...columns) - 1);
  const labels = cells.slice(left - 1, Math.max(...columns));
  const sums = used.some((column) => ADDS_UP.test(tab.formulas[row - 1]?.[column - 1] ?? ''));
  return sums || labels.some(isTotalWord) ? 'total' : 'item';
}

function isTotalWord(cell: WireCell | undefined): boolean {
  return typeof cell === 'string' && TOTAL.test(cell.trim());
}

/** Blank: nothing, or only white space. */
export function isBlankCell(cell: WireCell | undefined): boolean {
  return cell === undefined || (typeof cell === 'string' && cell.trim() === '');
}

/**
 * The rows of a list: from below its headings to its last item or total before `stop` (the next list's headings).
 * Titles of the next list and remarks under this one, a lone text after a gap, are left out.
 */
export function listRows(
  tab: TabContent,
  headingRow: number,
  columns: readonly number[],
  nameColumn: number,
  stop: number,
): { firstRow: number; lastRow: number; items: number } {
  const end = Math.min(stop - 1, tab.values.length);
  const kinds = new Map<number, RowKind>();
  for (let row = headingRow + 1; row <= end; row++) kinds.set(row, rowKind(tab, row, columns, nameColumn));
  const isNextTitle = stop <= tab.values.length;
  let lastRow = end;
  while (lastRow > headingRow) {
    const kind = kinds.get(lastRow);
    const afterGap = kinds.get(lastRow - 1) !== 'item';
    const lone = kind === 'item' && isLone(tab, lastRow, columns);
    const title = lone && afterGap && (isNextTitle || isRemark(tab.values[lastRow - 1]?.[nameColumn - 1]));
    if (kind === 'total' || (kind === 'item' && !title)) break;
    lastRow -= 1;
  }
  const items = [...kinds].filter(([row, kind]) => row <= lastRow && kind === 'item').length;
  return { firstRow: headingRow + 1, lastRow, items };
}

function isLone(tab: TabContent, row: number, columns: readonly number[]): boolean {
  return columns.filter((column) => !isBlankCell(tab.values[row - 1]?.[column - 1])).length === 1;
}

function isRemark(cell: WireCell | undefined): boolean {
  return typeof cell === 'string' && (REMARK.test(cell) || cell.length > LONGEST_NAME_OF_A_REMARK);
}
