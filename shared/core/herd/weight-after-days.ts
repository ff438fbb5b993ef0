import { growthStretches } from './growth-stretches';

/**
 * Weight of a pig after some days, in kg.
 *
 *   with dailyGainKg     start + gain × days
 *   without dailyGainKg  the mean daily gain of each weight band, walked band by band
 *
 * Holds for: 5 to 135 kg without dailyGainKg; outside that it refuses and asks for daily_gain.
 * Source: nrc2012, from memory.
 */
export function weightAfterDays(startKg: number, days: number, dailyGainKg: number | undefined): number {
  if (dailyGainKg !== undefined) return startKg + dailyGainKg * days;
  const last = growthStretches(startKg, days, undefined).slice(-1)[0];
  return last ? last.fromKg + last.days * last.gainKgPerDay : startKg;
}
