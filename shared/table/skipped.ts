/** A move that was left out: the word under Moved in. Its paddock was not used, so its rest runs on. */
export const SKIPPED = 'skipped';

export function isSkipped(words: string): boolean {
  return words.trim().toLowerCase() === SKIPPED;
}

/** The same in the sheet, for a cell. */
export function isSkippedFormula(cell: string): string {
  return `TRIM(${cell})="${SKIPPED}"`;
}
