/** Texts, whole; references with or without a tab, of any kind; and everything else sign by sign. */
const PARTS =
  /"(?:[^"]|"")*"|(?:'(?:[^']|'')*'!|[\p{L}_][\p{L}\p{N}_.]*!)?\$?[A-Za-z]{1,3}\$?\d+(?::\$?[A-Za-z]{1,3}\$?\d*)?(?![\p{L}\p{N}_.(])|[^"]/gu;
/** What other programs put before newer functions in an .xlsx. */
const FILE_PREFIX = /_XLFN\.|_XLWS\./g;

/**
 * A formula without what changes by itself: where its references point, spaces, letter case, and whether `;` or `,`
 * stands between arguments. Rows inserted elsewhere, a renamed tab or another locale leave it as it was.
 */
export function writtenShape(formula: string): string {
  const parts = formula.replace(/^=/, '').match(PARTS) ?? [];
  return parts
    .map((part) => {
      if (part.startsWith('"')) return part;
      if (part.length > 1) return '@';
      return part === ',' ? ';' : part.trim().toUpperCase();
    })
    .join('')
    .replace(FILE_PREFIX, '');
}
