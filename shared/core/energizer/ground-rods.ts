import { LEAST_ROD_METERS, ROD_METERS_PER_JOULE } from '../../tables/ground-rod';
import { ceilForgiving } from '../../units/ceil-forgiving';

/**
 * Ground rods for an energizer.
 *
 *   rods = ⌈rod in all ÷ rod length⌉; rod in all 3 ft per joule, never less than 3 m
 *
 * Source: nrcsVirginia382 for the rule, gerrishFencing for the worked example, threeRods for the least.
 */
export function groundRods(joules: number, rodMeters: number): number {
  return ceilForgiving(Math.max(ROD_METERS_PER_JOULE * joules, LEAST_ROD_METERS) / rodMeters);
}
