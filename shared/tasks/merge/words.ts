/** The sentences of writing a table anew. */
export const unitsStay = (cell: string, got: string): string =>
  `${cell}: the units of a table that stands cannot be changed, got ${got}. Put the units back, or write the table on a new tab. Nothing was written.`;
/** Tables are read back by it, so it stays as it is. */
export const KEPT_BELOW = 'Kept from this table as it was before';
