import type { WireCell } from '../contract';

/** Row, from 0, that holds all of some headings, in any order and among others; -1 where there is none. */
export function headingRow(values: readonly (readonly WireCell[])[], headings: readonly string[]): number {
  return values.findIndex((row) => headings.every((heading) => row.includes(heading)));
}
