import { cellA1 } from '../block/a1';
import type { BlockContent } from '../block/read-block';
import type { BlockCell, BlockStyle } from '../contract';
import { shownCell } from './cell-value';

/** With fewer headings a row that differs in one may well be another row. */
const FEWEST_HEADINGS = 3;

/**
 * Refuses a table in which one heading of a row was typed over: what stands under it would not be found, and all of it
 * would be told as typed by hand.
 */
export function refuseOtherHeadings(
  old: BlockContent,
  {
    cells,
    styles,
  }: {
    readonly cells: readonly (readonly BlockCell[])[];
    readonly styles: readonly (readonly BlockStyle[])[];
  },
): void {
  for (const [r, row] of cells.entries()) {
    const headings = row.flatMap((cell, column) =>
      cell.k === 't' && styles[r]?.[column] === 'heading' ? [{ column, words: cell.v }] : [],
    );
    const wrong = headings.length < FEWEST_HEADINGS ? undefined : wrongHeading(old, headings);
    if (!wrong) continue;
    throw new Error(
      `${wrong.cell} must be the heading “${wrong.words}”, got ${wrong.got}. Put it back first. Nothing was written.`,
    );
  }
}

interface Heading {
  readonly column: number;
  readonly words: string;
}

function wrongHeading({ info, values }: BlockContent, headings: readonly Heading[]) {
  const others = values.map((row) => headings.filter(({ column, words }) => row[column] !== words));
  if (others.some((wrong) => wrong.length === 0)) return undefined;
  const row = others.findIndex((wrong) => wrong.length === 1);
  const [wrong] = others[row] ?? [];
  const got = wrong && (values[row]?.[wrong.column] ?? '');
  if (!wrong || got === undefined || got === '') return undefined;
  return {
    cell: cellA1(info.row + row, info.column + wrong.column),
    words: wrong.words,
    got: shownCell(got),
  };
}
