/** Pieces of plain formulas that every locale reads: no decimal and no array literals. */

/** ⌈quotient⌉ that forgives 1e-9 of floating error, as ceilForgiving does. */
export function roundUp(quotient: string): string {
  return `ROUNDUP(${quotient}-1/10^9;0)`;
}

/** "(A5+A6)" or "0". */
export function plus(parts: readonly string[]): string {
  return parts.length === 0 ? '0' : parts.join('+');
}
