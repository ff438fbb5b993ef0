/**
 * A formula that moves with its row: references to the row it stood in follow, all others stay as they are.
 * References to other tabs and text in quotes are left alone.
 */
export function ownRowFormula(formula: string, fromRow: number, toRow: number): string {
  if (fromRow === toRow) return formula;
  const parts =
    /("(?:[^"]|"")*"|'(?:[^']|'')*'![$A-Za-z0-9:]+|[A-Za-z_][\w.]*![$A-Za-z0-9:]+)|(?<![\w.$])(\$?[A-Za-z]{1,3})(\d+)(?![\w.(])/g;
  return formula.replace(parts, (all, kept: string | undefined, column: string | undefined, row: string) =>
    kept === undefined && column !== undefined && Number(row) === fromRow ? `${column}${toRow}` : all,
  );
}
