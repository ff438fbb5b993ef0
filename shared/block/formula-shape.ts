/** Texts, references with or without a tab, and numbers: what differs between two formulas of one kind. */
const VALUES =
  /"(?:[^"]|"")*"|(?:'(?:[^']|'')*'!|[\p{L}_][\p{L}\p{N}_.]*!)?\$?[A-Za-z]{1,3}\$?\d+(?::\$?[A-Za-z]{1,3}\$?\d+)?(?![\p{L}\p{N}_.(])/gu;
const FUNCTIONS_AND_SIGNS = /[\p{L}_][\p{L}\p{N}_.]*(?=\s*\()|[-+*/^&<>=]+/gu;
/** What other programs put before newer functions in an .xlsx. */
const FILE_PREFIX = /_XLFN\.|_XLWS\./g;

/**
 * The functions and signs that a formula uses, each once, in order of the alphabet. Formulas of one builder have the
 * same shape whatever rows and lists they point to and however many terms they add up.
 */
export function formulaShape(formula: string): string {
  const bare = formula.replace(/^=/, '').replace(VALUES, '');
  const parts = bare.toUpperCase().replace(FILE_PREFIX, '').match(FUNCTIONS_AND_SIGNS) ?? [];
  return [...new Set(parts)].sort().join(' ');
}
