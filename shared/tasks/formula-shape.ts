/** Texts, references with or without a tab, and numbers: what differs between two formulas of one kind. */
const VALUES =
  /"(?:[^"]|"")*"|(?:'(?:[^']|'')*'!|[\p{L}_][\p{L}\p{N}_.]*!)?\$?[A-Za-z]{1,3}\$?\d+(?::\$?[A-Za-z]{1,3}\$?\d+)?(?![\p{L}\p{N}_.(])/gu;
const NAMES_AND_SIGNS = /[\p{L}_][\p{L}\p{N}_.]*|[-+*/^&<>=]+/gu;

/**
 * The functions and signs that a formula uses, each once, in order of the alphabet. Formulas of one builder have the
 * same shape whatever rows and lists they point to and however many terms they add up.
 */
export function formulaShape(formula: string): string {
  const bare = formula.replace(/^=/, '').replace(VALUES, '');
  const parts = bare.toUpperCase().match(NAMES_AND_SIGNS) ?? [];
  return [...new Set(parts)].sort().join(' ');
}
