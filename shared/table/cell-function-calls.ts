import type { ColumnKey } from './columns';

/** Cell functions that fill a column from the row under the headings. */
export const CALLS: Partial<Record<ColumnKey, RegExp>> = {
  weightIn: /^=\s*PIG_WEIGHT\(/i,
  weightOut: /^=\s*PIG_WEIGHT\(/i,
  feed: /^=\s*FEED_NEEDED\(/i,
  water: /^=\s*WATER_NEEDED\(/i,
};
