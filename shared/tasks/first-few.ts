const MOST_NAMED = 8;

/** Cells for a sentence: the first few, and how many more. */
export function firstFew(cells: readonly string[]): string {
  const more = cells.length > MOST_NAMED ? ` and ${cells.length - MOST_NAMED} more` : '';
  return cells.slice(0, MOST_NAMED).join(', ') + more;
}
