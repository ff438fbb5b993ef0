import { NOSE_HEIGHT_METERS } from '../../tables/strand-heights';

/**
 * Height in metres at which a walking pig carries its nose, for its weight in kg.
 *
 *   height = 0.095 × ∛weight
 *
 * Source: judgement; see NOSE_HEIGHT_METERS.
 */
export function noseHeight(weightKg: number): number {
  return NOSE_HEIGHT_METERS * Math.cbrt(weightKg);
}
