import type { Reading } from './read-rotation';

/** Rows between the headings and the end of the moves, from 0 within the block. */
export function rowsUnderHeadings({ headingRow, endRow }: Reading): readonly number[] {
  return Array.from({ length: endRow - headingRow - 1 }, (_, i) => headingRow + 1 + i);
}
