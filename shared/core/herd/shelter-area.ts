/** Body area grows with weight to this power. Source: petherickBaxter1981, second hand. */
const AREA_EXPONENT = 0.67;

/**
 * Bedded floor for a group, in m².
 *
 *   head × k × W^0.67, W in kg; k = 0.047 lets every pig lie flat
 *
 * Source: petherickBaxter1981, second hand.
 */
export function shelterArea(head: number, weightKg: number, k: number): number {
  return head * k * weightKg ** AREA_EXPONENT;
}
