import { ME_CEILING_KCAL_PER_DAY, ME_RISE_PER_KG } from '../../tables/nrc-intake';
import type { GrowthStretch } from './growth-stretches';

/**
 * Metabolizable energy that a growing pig on full feed takes in a day, in kcal.
 *
 *   ME(W) = 10563 × (1 − e^(−c × W)), c = e^(−4.04), W in kg
 *
 * Made for 20 to 135 kg. Source: nrc2012, from memory.
 */
export function energyIntake(weightKg: number): number {
  return -ME_CEILING_KCAL_PER_DAY * Math.expm1(-ME_RISE_PER_KG * weightKg);
}

/**
 * The same added up over a stretch of even growth, in kcal: ∫ ME(W + g t) dt.
 *
 *   = 10563 × (days − e^(−c W) × days × (1 − e^(−z)) ÷ z), z = c × g × days
 */
export function energyOverStretch({ fromKg, days, gainKgPerDay }: GrowthStretch): number {
  const z = ME_RISE_PER_KG * gainKgPerDay * days;
  const meanFall = z === 0 ? 1 : -Math.expm1(-z) / z;
  return ME_CEILING_KCAL_PER_DAY * days * (1 - Math.exp(-ME_RISE_PER_KG * fromKg) * meanFall);
}
