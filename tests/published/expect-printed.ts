import { expect } from 'vitest';
import { halfDigit } from './read-table';

/** Expects a number to be what a document prints, to half a unit of its last digit. */
export function expectPrinted(got: number, printed: string): void {
  const tolerance = halfDigit(printed) * (1 + 1e-9);
  expect(Math.abs(got - Number(printed)), `${got} against printed ${printed}`).toBeLessThanOrEqual(tolerance);
}
