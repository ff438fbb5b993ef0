import {
  GROWING_FROM_KG,
  GROWN_THREE_METERS,
  GROWN_TWO_METERS,
  HIGHEST_SINGLE_METERS,
  YOUNG_METERS,
} from '../../tables/strand-heights';
import { noseHeight } from './nose-height';
import { strandsForWeight } from './strands-for-weight';

/**
 * Heights of 1 to 3 live strands for a pig of that weight, lowest first, in metres; as many as its weight asks for
 * where none are given.
 *
 * Pigs go under rather than over: a single strand stands at nose height and never above it, and the lowest of
 * several never stands above it either. Source of each height: see the table.
 */
export function strandHeights(weightKg: number, strands = strandsForWeight(weightKg)): readonly number[] {
  const nose = noseHeight(weightKg);
  if (strands === 1) return [Math.min(nose, HIGHEST_SINGLE_METERS)];
  const grown = strands === 2 ? GROWN_TWO_METERS : GROWN_THREE_METERS;
  const heights = weightKg < GROWING_FROM_KG ? YOUNG_METERS.slice(0, strands) : grown;
  const [lowest = nose, ...others] = heights;
  return [Math.min(lowest, nose), ...others];
}
