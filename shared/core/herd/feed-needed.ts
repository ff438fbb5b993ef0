import { DIET_ME_KCAL_PER_KG, FEED_EATEN_FRACTION } from '../../tables/nrc-intake';
import { energyOverStretch } from './energy-intake';
import { growthStretches } from './growth-stretches';

/**
 * Feed for a stay, in kg, 5 % waste included.
 *
 *   head × outdoorFactor × ∫ ME(W(t)) dt ÷ 3300 kcal/kg ÷ 0.95
 *
 * Holds for growing pigs on full feed; 5 to 135 kg without dailyGainKg. Sows on a ration eat less.
 * Source: nrc2012 and nrc2012Table, from memory; edwards2003 for the outdoor factor.
 */
export function feedNeeded(
  head: number,
  startKg: number,
  days: number,
  dailyGainKg: number | undefined,
  outdoorFactor: number,
): number {
  const kcal = growthStretches(startKg, days, dailyGainKg).reduce(
    (sum, stretch) => sum + energyOverStretch(stretch),
    0,
  );
  return (head * outdoorFactor * kcal) / DIET_ME_KCAL_PER_KG / FEED_EATEN_FRACTION;
}
