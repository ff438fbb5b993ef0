/** Reads what stands in one of our blocks, so that a rebuild can keep what was typed there. */

import type { BlockInfo, TabContent, WireCell } from '../contract';
import { headingRow } from './heading-row';

export interface BlockContent {
  readonly info: BlockInfo;
  readonly values: readonly (readonly WireCell[])[];
  readonly formulas: readonly (readonly string[])[];
}

/** The block's own rectangle out of its tab; cells past the used part of the tab are blank. */
export function cutBlock(tab: TabContent, info: BlockInfo): BlockContent {
  const rows = Array.from({ length: info.rows }, (_, r) => r + info.row - 1);
  const columns = Array.from({ length: info.columns }, (_, c) => c + info.column - 1);
  return {
    info,
    values: rows.map((r) => columns.map((c) => tab.values[r]?.[c] ?? '')),
    formulas: rows.map((r) => columns.map((c) => tab.formulas[r]?.[c] ?? '')),
  };
}

/** One row of a table inside a block, by its headings. */
export interface TableRow {
  /** Row in the sheet, for messages. */
  readonly sheetRow: number;
  readonly value: (heading: string) => WireCell;
  readonly formula: (heading: string) => string;
}

/**
 * Rows of the table whose heading row holds all of `headings` (any order, extra columns allowed), down to the
 * first row that is blank under every heading. Undefined where there is no such heading row.
 */
export function tableRows(block: BlockContent, headings: readonly string[]): readonly TableRow[] | undefined {
  const at = headingRow(block.values, headings);
  const head = block.values[at];
  if (!head) return undefined;
  const columnOf = (heading: string): number => head.indexOf(heading);
  const end = block.values.findIndex(
    (row, r) => r > at && headings.every((heading) => row[columnOf(heading)] === ''),
  );
  const last = end < 0 ? block.values.length : end;
  return block.values.slice(at + 1, last).map((row, i) => ({
    sheetRow: block.info.row + at + 1 + i,
    value: (heading) => row[columnOf(heading)] ?? '',
    formula: (heading) => block.formulas[at + 1 + i]?.[columnOf(heading)] ?? '',
  }));
}
