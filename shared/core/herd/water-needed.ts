import { DIET_ME_KCAL_PER_KG, OUTDOOR_FACTOR } from '../../tables/nrc-intake';
import {
  COOL_LITERS_PER_KG,
  COOL_UP_TO_CELSIUS,
  HOT_FROM_CELSIUS,
  HOT_LITERS_PER_KG,
  SPILL_FACTOR,
} from '../../tables/water-per-feed';
import { energyIntake } from './energy-intake';
import { refuseUnlessGrowing } from './growing-weights';

const INSTEAD =
  'sows and boars need far more, 12 to 15 L (3 to 4 gal) a day dry, 24 to 45 L (6 to 12 gal) with a litter';

/**
 * Water to have there for a group, drinking and spilling, in litres a day.
 *
 *   head × 1.15 × 1.25 × ME(W) ÷ 3300 × ratio; ratio 2.7 up to 22 °C, straight up to 5.0 at 33 °C, 5.0 above
 *
 * Holds for growing pigs of 5 to 160 kg; refuses others. Source: mount1971 for the ratios, nrc2012 (from memory) for
 * the feed, edwards2003 for 1.15 outdoors; 1.25 for spill is judgement.
 */
export function waterNeeded(head: number, weightKg: number, airCelsius: number): number {
  refuseUnlessGrowing('weight', weightKg, INSTEAD);
  const feedKg = (OUTDOOR_FACTOR * energyIntake(weightKg)) / DIET_ME_KCAL_PER_KG;
  return head * SPILL_FACTOR * feedKg * litersPerKg(airCelsius);
}

function litersPerKg(airCelsius: number): number {
  const warmth = (airCelsius - COOL_UP_TO_CELSIUS) / (HOT_FROM_CELSIUS - COOL_UP_TO_CELSIUS);
  const part = Math.min(1, Math.max(0, warmth));
  return COOL_LITERS_PER_KG + part * (HOT_LITERS_PER_KG - COOL_LITERS_PER_KG);
}
