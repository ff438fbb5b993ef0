/** The line right below a table that is typed into: where more rows come from, and whether rows below it count. */

import { cellA1 } from '../block/a1';
import { BLANK, formula } from '../block/cells';
import { headingRow } from '../block/heading-row';
import type { BlockContent } from '../block/read-block';
import type { BlockCell } from '../contract';
import { dayIn } from '../lists/read-list-cell';
import { shiftFormula } from '../table/shift-formula';
import type { Draft } from './draft-block';
import { keptCell } from './kept-cell';
import * as words from './words';

/**
 * A formula for "something was typed in the row right below `endRow`", the first column left aside. The range begins
 * in the end line itself, so that rows deleted below it leave the formula whole.
 */
export function isFilledBelow(draft: Draft, endRow: number, lastColumn: number): string {
  return `COUNTA(${draft.fixed(endRow, 1)}:${draft.fixed(endRow + 1, lastColumn)})>0`;
}

/** Adds the line; columns up to `lastColumn` (from 0) are typed into. */
export function addEndLine(draft: Draft, lastColumn: number): void {
  const isFilled = isFilledBelow(draft, draft.next(), lastColumn);
  draft.add([formula(`=IF(${isFilled};"${words.NOT_COUNTED_YET}";"${words.FOR_MORE_ROWS}")`)], 'muted');
}

export interface TypedRows {
  /** Headings as they stand, with '' where there is none. Empty: there is no such table. */
  readonly headings: readonly string[];
  /** Every row under the headings, blank ones too, without the end line: cells by column, to be written back. */
  readonly rows: readonly (readonly BlockCell[])[];
  /** Row in the sheet of each. */
  readonly sheetRows: readonly number[];
  /** Lines that the table takes under its headings, the end line among them. */
  readonly lines: number;
}

/** The table under `headings`, to the end of the block. Rows found below the end line move up to the others. */
export function typedRows(block: BlockContent, headings: readonly string[]): TypedRows {
  const at = headingRow(block.values, headings);
  if (at < 0) return { headings: [], rows: [], sheetRows: [], lines: 0 };
  const all = block.values.map((_, r) => r).slice(at + 1);
  const kept = all.filter((r) => !isEndLine(block, r));
  return {
    headings: (block.values[at] ?? []).map((cell) => (typeof cell === 'string' ? cell : '')),
    rows: kept.map((r, i) =>
      (block.values[r] ?? []).map((value, c) =>
        keptCell(value, shiftFormula(block.formulas[r]?.[c] ?? '', at + 1 + i - r)),
      ),
    ),
    sheetRows: kept.map((r) => block.info.row + r),
    lines: all.length,
  };
}

/** The cells under some of the headings, row by row, to be counted and to be written back. */
export interface TypedTable<Row> {
  readonly typed: readonly Row[];
  /** Whether anything stands in a row. */
  readonly filled: readonly boolean[];
  /** Down to the last that is filled: blank rows between filled ones stay where they are. */
  readonly rows: readonly Row[];
  /** "Log!C7": the cell of a row, by its place in it. */
  readonly cellOf: (row: number, place: number) => string;
  readonly lines: number;
}

/** The same of a table whose first headings are typed into, `Row` a tuple of as many cells. */
export function typedTable<Row extends readonly BlockCell[]>(
  block: BlockContent,
  headings: readonly string[],
  count: Row['length'],
): TypedTable<Row> {
  const { headings: standing, rows, sheetRows, lines } = typedRows(block, headings);
  const columns = headings.slice(0, count).map((heading) => standing.indexOf(heading));
  const typed = rows.map((row) => columns.map((c) => row[c] ?? BLANK) as unknown as Row);
  const filled = typed.map((row) => row.some(({ k }) => k !== 'blank'));
  const { tab, column } = block.info;
  return {
    typed,
    filled,
    rows: typed.slice(0, filled.lastIndexOf(true) + 1),
    cellOf: (row, place) => `${tab}!${cellA1(sheetRows[row]!, column + columns[place]!)}`,
    lines,
  };
}

/** The day in a kept cell, also where it was typed as text. */
export function dayOf(cell: BlockCell): number | undefined {
  if (cell.k === 'd') return dayIn({ d: cell.v });
  return cell.k === 't' ? dayIn(cell.v) : undefined;
}

/** Row of the end line from 0 within the block; -1 where there is none. */
export function endLineRow(block: BlockContent): number {
  return block.values.findIndex((_, r) => isEndLine(block, r));
}

/** By its words too: a program may have left the text alone, without the formula. */
function isEndLine({ values, formulas }: BlockContent, r: number): boolean {
  const value = values[r]?.[0];
  return (
    value === words.FOR_MORE_ROWS ||
    value === words.NOT_COUNTED_YET ||
    (formulas[r]?.[0] ?? '').includes(words.FOR_MORE_ROWS)
  );
}
