import type { BlockInfo } from '../contract';
import { columnNumber } from './column-number';

/** First and last, counted from 1; the last is Infinity where the reference has no end, as in G5:G. */
type Span = readonly [first: number, last: number];

/** A cell or range that a formula refers to. */
export interface Reference {
  /** The tab that is named in front of it, if one is. */
  readonly tab: string | undefined;
  readonly rows: Span;
  readonly columns: Span;
}

/**
 * Texts; cells and ranges, with their tab or without one; quoted tab names in front of anything else; other words and
 * numbers, whole, so that no reference is seen in the middle of one (a look behind is unknown to Safari before 16.4).
 */
const PARTS =
  /"(?:[^"]|"")*"|(?:'((?:[^']|'')+)'!|([\p{L}_][\p{L}\p{N}_.]*)!)?\$?([A-Za-z]{1,3})\$?(\d+)(?:\s*:\s*(?=[$A-Za-z\d])\$?([A-Za-z]{0,3})\$?(\d*))?(?![\p{L}\p{N}_.(!])|'(?:[^']|'')*'!|[\p{L}\p{N}_.]+/gu;

/** What a formula refers to by a cell. Whole columns (K:K) and whole rows (5:7) are left out. */
export function referencesIn(formula: string): readonly Reference[] {
  return [...formula.matchAll(PARTS)].flatMap(([, quoted, plain, column, row, lastColumn, lastRow]) => {
    if (column === undefined || row === undefined) return [];
    return [
      {
        tab: quoted?.replace(/''/g, "'") ?? plain,
        rows: span(row, lastRow, Number),
        columns: span(column, lastColumn, columnNumber),
      },
    ];
  });
}

/**
 * Whether a reference is to any cell of an area. `standsOn` is the formula's own tab. Names of tabs do not differ by capitals
 * alone.
 */
export function pointsInto(
  { tab, rows, columns }: Reference,
  standsOn: string,
  area: Omit<BlockInfo, 'name'>,
): boolean {
  return (
    (tab ?? standsOn).toLowerCase() === area.tab.toLowerCase() &&
    rows[0] < area.row + area.rows &&
    rows[1] >= area.row &&
    columns[0] < area.column + area.columns &&
    columns[1] >= area.column
  );
}

/** `last` is undefined for a single cell and '' where the range has no end that way. */
function span(first: string, last: string | undefined, numberOf: (text: string) => number): Span {
  const a = numberOf(first);
  if (last === undefined) return [a, a];
  const b = last === '' ? Number.POSITIVE_INFINITY : numberOf(last);
  return [Math.min(a, b), Math.max(a, b)];
}
