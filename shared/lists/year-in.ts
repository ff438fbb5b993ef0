const YEAR = /\b20\d\d\b/g;

/** The latest year in a heading or title; 0: none. */
export function yearIn(text: string): number {
  return Math.max(0, ...(text.match(YEAR) ?? []).map(Number));
}
