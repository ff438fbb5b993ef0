import { GROWING_FROM_KG } from '../../tables/strand-heights';

/**
 * Strands for the weight of the lightest pig in kg: 2 for growing pigs and sows (extensionHogFence, second hand), 3
 * below the weight of a growing pig, so that there is a wire at every height of nose (judgement).
 */
export function strandsForWeight(weightKg: number): number {
  return weightKg < GROWING_FROM_KG ? 3 : 2;
}
