import { DIET_ME_KCAL_PER_KG } from '../../tables/nrc-intake';
import {
  COOL_LITERS_PER_KG,
  COOL_UP_TO_CELSIUS,
  HOT_FROM_CELSIUS,
  HOT_LITERS_PER_KG,
} from '../../tables/water-per-feed';
import { energyIntake } from './energy-intake';

/**
 * Drinking water for a group, in litres a day.
 *
 *   head × ME(W) ÷ 3300 × ratio; ratio 2.7 up to 22 °C, straight up to 5.0 at 33 °C, 5.0 above
 *
 * Source: mount1971 for the ratios, nrc2012 (from memory) for the feed.
 */
export function waterNeeded(head: number, weightKg: number, airCelsius: number): number {
  return ((head * energyIntake(weightKg)) / DIET_ME_KCAL_PER_KG) * litersPerKg(airCelsius);
}

function litersPerKg(airCelsius: number): number {
  const warmth = (airCelsius - COOL_UP_TO_CELSIUS) / (HOT_FROM_CELSIUS - COOL_UP_TO_CELSIUS);
  const part = Math.min(1, Math.max(0, warmth));
  return COOL_LITERS_PER_KG + part * (HOT_LITERS_PER_KG - COOL_LITERS_PER_KG);
}
