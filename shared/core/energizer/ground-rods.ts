import { ceilForgiving } from '../../units/ceil-forgiving';

/** 3 ft of ground rod per joule. Source: nrcsVirginia382 and gerrishFencing. */
const ROD_METERS_PER_JOULE = 3 * 0.3048;

/**
 * Ground rods for an energizer.
 *
 *   rods = ⌈3 ft per joule × joules ÷ rod length⌉, at least 1
 *
 * Source: nrcsVirginia382 for the rule, gerrishFencing for the worked example.
 */
export function groundRods(joules: number, rodMeters: number): number {
  return Math.max(1, ceilForgiving((ROD_METERS_PER_JOULE * joules) / rodMeters));
}
