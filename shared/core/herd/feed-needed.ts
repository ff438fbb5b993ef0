import { amount, most, Refusal } from '../../refusals';
import { GROWING_HEAVIEST_KG } from '../../tables/growing-weights';
import { DIET_ME_KCAL_PER_KG, FEED_EATEN_FRACTION } from '../../tables/nrc-intake';
import { energyOverStretch } from './energy-intake';
import { isGrowing, refuseUnlessGrowing } from './growing-weights';
import { growthStretches } from './growth-stretches';
import { weightAfterDays } from './weight-after-days';

const INSTEAD = 'sows and boars go by their ration, sucklings by the sow’s';

/**
 * Feed for a stay, in kg, 5 % waste included.
 *
 *   head × outdoorFactor × ∫ ME(W(t)) dt ÷ 3300 kcal/kg ÷ 0.95
 *
 * Holds for growing pigs on full feed; refuses a weight outside 5 to 160 kg anywhere in the stay, outside 5 to
 * 135 kg without dailyGainKg. Sows on a ration eat less.
 * Source: nrc2012, from memory; edwards2003 for the outdoor factor.
 */
export function feedNeeded(
  head: number,
  startKg: number,
  days: number,
  dailyGainKg: number | undefined,
  outdoorFactor: number,
): number {
  refuseUnlessGrowing('start_weight', startKg, INSTEAD);
  const stretches = growthStretches(startKg, days, dailyGainKg);
  refuseHeavyEnd(weightAfterDays(startKg, days, dailyGainKg));
  const kcal = stretches.reduce((sum, stretch) => sum + energyOverStretch(stretch), 0);
  return (head * outdoorFactor * kcal) / DIET_ME_KCAL_PER_KG / FEED_EATEN_FRACTION;
}

function refuseHeavyEnd(endKg: number): void {
  if (isGrowing(endKg)) return;
  const must = ['end before the pig passes ', most(GROWING_HEAVIEST_KG, 'mass'), `: ${INSTEAD}`];
  throw new Refusal('days', must, [amount(endKg, 'mass'), ' on the last day']);
}
