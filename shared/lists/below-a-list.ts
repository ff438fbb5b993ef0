/** Tells the rows of a list from the headings of another one further down. */
import type { TabContent, WireCell } from '../contract';
import { isBlankCell, rowKind, type UnderHeadings } from './list-rows';

/** A row that reads like headings. */
export interface HeadingRow {
  readonly tab: TabContent;
  readonly row: number;
  readonly columns: Readonly<Record<string, number>>;
  /** Columns of the headings that are known words and nothing else. */
  readonly exact: readonly number[];
}

export function spanOf({ columns }: Pick<HeadingRow, 'columns'>): [number, number] {
  const numbers = Object.values(columns);
  return [Math.min(...numbers), Math.max(...numbers)];
}

export function overlap(a: HeadingRow, b: HeadingRow): boolean {
  const [left, right] = spanOf(a);
  const [otherLeft, otherRight] = spanOf(b);
  return otherLeft <= right && otherRight >= left;
}

/**
 * "North field" with the remark "wet area" is a paddock, not a row of headings: under other headings only known words
 * themselves count, and not those of a table beside them, or, after a gap, three headings that hold them.
 */
export function isRowOfList(candidate: HeadingRow, above: HeadingRow): boolean {
  if (candidate.row <= above.row || !overlap(candidate, above)) return false;
  if (rowKind(above, candidate.row) === 'blank') return true;
  const [left, right] = spanOf(above);
  if (candidate.exact.some((column) => column >= left && column <= right)) return false;
  return Object.keys(candidate.columns).length < FEWEST_UNSURE || !isAfterGap(candidate.row, above);
}

const FEWEST_UNSURE = 3;

export function isAfterGap(row: number, list: UnderHeadings): boolean {
  return row > list.row + 1 && rowKind(list, row - 1) !== 'item';
}

/**
 * Whether the headings of a list further down end this one although their known columns do not lie under it: other
 * headings of theirs do, after a gap, and everything below belongs to them. Where in doubt no: a row too many is told to
 * the grower, a row too few would be lost without a word.
 */
export function endsList(list: HeadingRow, below: HeadingRow): boolean {
  const { tab, columns } = list;
  const own = Object.values(columns);
  const cells = own.map((column) => tab.values[below.row - 1]?.[column - 1]);
  const isHeadings = cells.some((cell) => !isBlankCell(cell)) && cells.every(mayBeHeading);
  if (below.row <= list.row || !isHeadings || !isAfterGap(below.row, list)) return false;
  const rows = tab.values.slice(below.row).map((_, i) => below.row + 1 + i);
  return rows.every((row) => {
    const isItem = rowKind(list, row) === 'item';
    return !isItem || !isBlankCell(tab.values[row - 1]?.[(below.columns.name ?? 0) - 1]);
  });
}

export function mayBeHeading(cell: WireCell | undefined): boolean {
  return isBlankCell(cell) || (typeof cell === 'string' && !/^\s*[+-]?[\d.,]/.test(cell));
}
