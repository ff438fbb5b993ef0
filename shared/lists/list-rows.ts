import type { TabContent, WireCell } from '../contract';
import { addsUpColumn } from './adds-up';
import { TOTAL_OF_WORDS, TOTAL_WORDS } from './headings';
import { isUnitRow } from './headings-at';
import { fold } from './text-day';

const TOTAL = new RegExp(`^(${TOTAL_WORDS.join('|')})([\\s-]+(${TOTAL_OF_WORDS.join('|')}))?[\\s:=.]*$`, 'i');
/** "Total growing": of some of the groups, where nothing but a head stands beside it; a paddock may well have such a name. */
const TOTAL_OF_SOME = /^(sub[\s-]?)?(total\w{0,2}|totaal|totaux|summe|summa|gesamt)\s/;
const ADDS_UP = /\b(SUM|SUBTOTAL|AVERAGE|COUNTA?)\s*\(/i;

/** What a row below the headings is. */
export type RowKind =
  | 'item'
  | 'blank'
  | 'total'
  /** A text with nothing beside it: a heading of some rows, a remark, or a name that is not filled in. */
  | 'lone';

/** Where the headings of a list stand, and which column is which field. */
export interface UnderHeadings {
  readonly tab: TabContent;
  readonly row: number;
  readonly columns: Readonly<Partial<Record<string, number>>>;
}

/** Fields whose sums make their row a total; a mean rest or fence may well be typed for one paddock. */
const SUMMED = ['area', 'head'];

/**
 * Tells an item from a blank row and from a row that adds up the others: its name says so, or its area or head is a
 * sum of the cells above, or it has no name but a total's label or a sum beside it.
 */
export function rowKind(list: UnderHeadings, row: number): RowKind {
  const { tab } = list;
  const columns = columnsOf(list);
  const cells = tab.values[row - 1] ?? [];
  const name = cells[nameColumnOf(list) - 1] ?? '';
  if (isTotalWord(name)) return 'total';
  const used = columns.filter((column) => !isBlankCell(cells[column - 1]));
  if (used.length === 0 || isHeadingAgain(list, row)) return 'blank';
  if (isLone(list, row)) return 'lone';
  const summed = SUMMED.flatMap((field) => list.columns[field] ?? []);
  const isOnlyHead = used.every((column) => column === nameColumnOf(list) || column === list.columns.head);
  if (isOnlyHead && typeof name === 'string' && TOTAL_OF_SOME.test(fold(name.trim()))) return 'total';
  if (summed.some((column) => addsUpColumn({ tab, row, column, headingRow: list.row }))) return 'total';
  if (!isBlankCell(name)) return 'item';
  const left = Math.max(1, Math.min(...columns) - 1);
  const labels = cells.slice(left - 1, Math.max(...columns));
  const sums = used.some((column) => ADDS_UP.test(tab.formulas[row - 1]?.[column - 1] ?? ''));
  return sums || labels.some(isTotalWord) ? 'total' : 'item';
}

/** Headings written again above another part of the list. */
function isHeadingAgain(list: UnderHeadings, row: number): boolean {
  const { values } = list.tab;
  return columnsOf(list).every(
    (column) => values[row - 1]?.[column - 1] === values[list.row - 1]?.[column - 1],
  );
}

function columnsOf({ columns }: UnderHeadings): number[] {
  return Object.values(columns).filter((column) => column !== undefined);
}

function nameColumnOf({ columns }: UnderHeadings): number {
  return columns.name ?? 0;
}

function isTotalWord(cell: WireCell | undefined): boolean {
  return typeof cell === 'string' && TOTAL.test(fold(cell.trim()));
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
  list: UnderHeadings,
  stop: number,
): { firstRow: number; lastRow: number; items: number } {
  const { tab } = list;
  const headingRow = isUnitRow(tab, list.row + 1) ? list.row + 1 : list.row;
  const end = Math.min(stop - 1, tab.values.length);
  const kinds = new Map<number, RowKind>();
  for (let row = headingRow + 1; row <= end; row++) kinds.set(row, rowKind(list, row));
  let lastRow = end;
  while (lastRow > headingRow) {
    const kind = kinds.get(lastRow);
    const isTitle = kind === 'lone' && kinds.get(lastRow - 1) !== 'item';
    if (kind === 'total' || kind === 'item' || (kind === 'lone' && !isTitle)) break;
    lastRow -= 1;
  }
  const items = [...kinds].filter(([row, kind]) => row <= lastRow && kind === 'item').length;
  return { firstRow: headingRow + 1, lastRow, items };
}

/** A figure as text, or an error: no words, but an item of which the rest is missing. More words behind it are a remark. */
const FIGURE = /^\s*[-\d#]\S*(\s+\S+){0,2}\s*$/;

/** Whether words stand alone in the row, the columns between those that are read included. */
function isLone(list: UnderHeadings, row: number): boolean {
  const columns = columnsOf(list);
  const cells = list.tab.values[row - 1]?.slice(Math.min(...columns) - 1, Math.max(...columns)) ?? [];
  const [text, ...others] = cells.filter((cell) => !isBlankCell(cell));
  return (
    columns.length > 1 &&
    others.length === 0 &&
    typeof text === 'string' &&
    /\p{L}/u.test(text) &&
    !FIGURE.test(text)
  );
}
