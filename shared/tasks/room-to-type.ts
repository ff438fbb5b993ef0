/** Where a table that is typed into stands already: what it takes and what is free below it. */
export interface TableRoom {
  /** Lines under its headings, the end line among them. */
  readonly lines: number;
  /** Empty lines right below the block. */
  readonly below: number;
}

export const NEW_TABLE: TableRoom = { lines: 0, below: Number.POSITIVE_INFINITY };

/** Fewer empty rows than this are topped up. Judgement. */
const FEWEST_FREE = 5;

/**
 * Rows of a table: as many as stand while enough of them are empty; else `free` empty ones below the filled ones, or
 * as many as there is room for, so that what the grower typed below the table is no hindrance before it must be.
 */
export function roomToType(filled: number, free: number, { lines, below }: TableRoom): number {
  const standing = Math.max(0, lines - 1);
  if (standing - filled >= FEWEST_FREE) return standing;
  return Math.max(filled, Math.min(filled + free, standing + below));
}
