/** Strings, quoted tab names with their reference, plain tab names with theirs, function names, references. */
const PARTS =
  /"(?:[^"]|"")*"|'(?:[^']|'')*'!\$?[A-Za-z]{1,3}\$?\d+(?::\$?[A-Za-z]{1,3}\$?\d+)?|[\p{L}_][\p{L}\p{N}_.]*!\$?[A-Za-z]{1,3}\$?\d+(?::\$?[A-Za-z]{1,3}\$?\d+)?|[\p{L}_][\p{L}\p{N}_.]*\(|(?<![\p{L}\p{N}_.])(\$?[A-Za-z]{1,3})(\$?)(\d+)(?![\p{L}\p{N}_.(])/gu;

/**
 * Moves a formula down by some rows as copying it there would: relative rows on its own tab shift, `$` rows,
 * other tabs, text and function names stay.
 */
export function shiftFormula(formula: string, rows: number): string {
  if (rows === 0) return formula;
  return formula.replace(PARTS, (part, column?: string, fixed?: string, row?: string) => {
    if (column === undefined || row === undefined || fixed === '$') return part;
    const moved = Number(row) + rows;
    return moved > 0 ? `${column}${moved}` : part;
  });
}
