import { headingRow } from '../block/heading-row';
import type { BlockContent } from '../block/read-block';

/** Free columns at the right of a table of ours, for the grower. Judgement. */
export const FREE_COLUMNS = 2;

/**
 * The same block with a heading over every column of the table that holds something without one, so that what a
 * grower typed there is found and kept on a rebuild. The table's heading row
 * is the first that holds all of `headings`; `rows` is how many rows belong to it.
 */
export function nameBlankHeadings(
  block: BlockContent,
  headings: readonly string[],
  rows: number,
): BlockContent {
  const at = headingRow(block.values, headings);
  const head = block.values[at];
  if (!head) return block;
  const below = block.values.slice(at + 1, at + 1 + rows);
  let count = 0;
  const named = head.map((cell, column) => {
    if (cell !== '' || !below.some((row) => row[column] !== '')) return cell;
    do count++;
    while (head.includes(ownColumn(count)));
    return ownColumn(count);
  });
  return { ...block, values: block.values.map((row, r) => (r === at ? named : row)) };
}

function ownColumn(count: number): string {
  return `Own column ${count}`;
}
