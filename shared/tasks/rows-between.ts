import { headingRow } from '../block/heading-row';
import type { BlockContent } from '../block/read-block';
import type { BlockCell, WireCell } from '../contract';
import { keptCell } from './kept-cell';

/** One row of a table in a block that stands already. */
export interface KeptRow {
  /** Row in the sheet, for messages. */
  readonly sheetRow: number;
  readonly value: (heading: string) => WireCell;
  /** The cell as it stands, to be written back. */
  readonly kept: (heading: string) => BlockCell;
  /** Whether nothing was typed under any of the headings. */
  readonly emptyUnder: (headings: readonly string[]) => boolean;
}

/**
 * Rows of the table under `headings`, blank rows among them, down to the first row that begins with one of `ends`, or
 * to the end of the block. Free rows that a grower leaves blank between filled ones are no end.
 */
export function rowsBetween(
  block: BlockContent,
  headings: readonly string[],
  ...ends: readonly string[]
): readonly KeptRow[] {
  const at = headingRow(block.values, headings);
  const head = block.values[at];
  if (!head) return [];
  const stop = block.values.findIndex((row, r) => r > at && ends.includes(String(row[0])));
  const last = stop < 0 ? block.values.length : stop;
  return block.values.slice(at + 1, last).map((row, i) => {
    const value = (heading: string): WireCell => row[head.indexOf(heading)] ?? '';
    const kept = (heading: string): BlockCell =>
      keptCell(value(heading), block.formulas[at + 1 + i]?.[head.indexOf(heading)] ?? '');
    return {
      sheetRow: block.info.row + at + 1 + i,
      value,
      kept,
      emptyUnder: (wanted) => wanted.every((heading) => kept(heading).k === 'blank'),
    };
  });
}

/** Text in a kept cell, '' where it holds something else. */
export function textOf(cell: BlockCell): string {
  return cell.k === 't' ? cell.v : '';
}
