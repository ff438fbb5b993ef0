/** Names as growers shorten them in their logs: "Red" for "Red mob", "07" for "07 (finishing)". */

const WORD = /[\p{L}\p{N}]+/gu;

/** The only one of the names that is this one or holds all of its words; undefined: none, or several. */
export function meantName(short: string, names: readonly string[]): string | undefined {
  if (names.includes(short)) return short;
  const words = wordsOf(short);
  const meant = names.filter((name) => words.every((word) => wordsOf(name).includes(word)));
  return words.length > 0 && meant.length === 1 ? meant[0] : undefined;
}

function wordsOf(name: string): readonly string[] {
  return name.toLowerCase().match(WORD) ?? [];
}
