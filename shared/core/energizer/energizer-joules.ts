import { MILE_METERS } from '../../units/units';

/** Output joules per mile of fence line, any number of strands. Source: gerrishFencing. */
const JOULES_PER_MILE = 1;

/**
 * Output joules for a fence line.
 *
 *   joules = 1 J per mile × length × loadFactor
 *
 * Source: gerrishFencing for the rule; load factors of 2 to 3 for heavy growth are common practice, no source.
 */
export function energizerJoules(lengthMeters: number, loadFactor: number): number {
  return (lengthMeters / MILE_METERS) * JOULES_PER_MILE * loadFactor;
}
