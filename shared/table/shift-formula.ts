import { columnLetters } from '../block/a1';
import { columnNumber } from '../block/column-number';

/**
 * Strings, quoted tab names with their reference, plain tab names with theirs, function names, references; other words
 * and numbers, whole, as in block/references.ts.
 */
const PARTS =
  /"(?:[^"]|"")*"|'(?:[^']|'')*'!\$?[A-Za-z]{1,3}\$?\d+(?::\$?[A-Za-z]{1,3}\$?\d+)?|[\p{L}_][\p{L}\p{N}_.]*!\$?[A-Za-z]{1,3}\$?\d+(?::\$?[A-Za-z]{1,3}\$?\d+)?|[\p{L}_][\p{L}\p{N}_.]*\(|(\$?)([A-Za-z]{1,3})(\$?)(\d+)(?![\p{L}\p{N}_.(])|[\p{L}\p{N}_.]+/gu;

/**
 * Moves a formula down by some rows as copying it there would: relative rows on its own tab shift, `$` rows,
 * other tabs, text and function names stay.
 */
export function shiftFormula(formula: string, rows: number): string {
  if (rows === 0) return formula;
  return formula.replace(PARTS, (part, ...[fixedColumn, column, fixedRow, row]: (string | undefined)[]) => {
    if (column === undefined || row === undefined || fixedRow === '$') return part;
    const moved = Number(row) + rows;
    return moved > 0 ? `${fixedColumn}${column}${moved}` : part;
  });
}

/** A formula whose references on its own tab follow columns that have changed places. Columns count from 1. */
export function moveColumns(formula: string, placeOf: (column: number) => number): string {
  return formula.replace(PARTS, (part, ...[fixedColumn, column, fixedRow, row]: (string | undefined)[]) =>
    column === undefined
      ? part
      : `${fixedColumn}${columnLetters(placeOf(columnNumber(column)))}${fixedRow}${row}`,
  );
}
