import type { WireCell } from '../contract';

interface Cells {
  readonly values: readonly (readonly WireCell[])[];
  readonly formulas: readonly (readonly string[])[];
}

/** Whether a cell, by row and column from 0, holds a value or a formula, also one that shows nothing. */
export function isFilled({ values, formulas }: Cells, row: number, column: number): boolean {
  return (values[row]?.[column] ?? '') !== '' || (formulas[row]?.[column] ?? '') !== '';
}
