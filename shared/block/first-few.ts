/** As many as a sentence can name and still be read. Judgement. */
const MOST_NAMED = 8;

/** Cells or moves for a sentence: the first few, and how many more. */
export function firstFew(names: readonly string[], most = MOST_NAMED, between = ', '): string {
  const more = names.length > most ? ` and ${names.length - most} more` : '';
  return names.slice(0, most).join(between) + more;
}
