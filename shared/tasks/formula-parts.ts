/** Pieces of plain formulas that every locale reads: no decimal and no array literals. */
import type { UnitSystem } from '../units/units';

/** ⌈quotient⌉ of 0 or more, forgiving 1e-9 of floating error as ceilForgiving does. ROUNDUP would make −1e-9 a −1. */
export function roundUp(quotient: string): string {
  return `ROUNDUP(MAX(0;${quotient}-1/10^9);0)`;
}

/** "(A5+A6)" or "0". */
export function plus(parts: readonly string[]): string {
  return parts.length === 0 ? '0' : parts.join('+');
}

/** A figure in brackets, to 15 digits: "(3048/10^4)". */
export function figure(value: number): string {
  const [whole = '', decimals = ''] = String(Number(value.toPrecision(15))).split('.');
  if (/e/.test(whole + decimals)) throw new RangeError(`a figure must be of common size, got ${value}`);
  return decimals === '' ? whole : `(${Number(whole + decimals)}/10^${decimals.length})`;
}

/** Whole feet, or tenths of a metre: as fence is measured. */
export function lengthFormat(units: UnitSystem): string {
  return units === 'US' ? '#,##0' : '#,##0.0';
}
