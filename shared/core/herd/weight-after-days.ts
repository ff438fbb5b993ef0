import { amount, Refusal } from '../../refusals';
import { NRC_GAIN_BANDS, NRC_HEAVIEST_KG, NRC_LIGHTEST_KG } from '../../tables/nrc-growth';

/**
 * Weight of a pig after some days, in kg.
 *
 *   with dailyGainKg     start + gain × days
 *   without dailyGainKg  the mean daily gain of each weight band, walked band by band
 *
 * Holds for: 5 to 135 kg without dailyGainKg; outside that it refuses and asks for daily_gain.
 * Source: nrc2012Table, from memory.
 */
export function weightAfterDays(startKg: number, days: number, dailyGainKg: number | undefined): number {
  if (dailyGainKg !== undefined) return startKg + dailyGainKg * days;
  refuseOutsideBands('start_weight', startKg);
  let weightKg = startKg;
  let daysLeft = days;
  for (const band of NRC_GAIN_BANDS) {
    if (weightKg >= band.toKg) continue;
    const daysInBand = (band.toKg - weightKg) / band.gainKgPerDay;
    if (daysLeft <= daysInBand) return weightKg + daysLeft * band.gainKgPerDay;
    weightKg = band.toKg;
    daysLeft -= daysInBand;
  }
  if (daysLeft > 0) {
    throw new Refusal('days', [
      'end before the pig passes ',
      amount(NRC_HEAVIEST_KG, 'mass'),
      ' unless daily_gain is given',
    ]);
  }
  return weightKg;
}

/** The growth table speaks of 5 to 135 kg only. */
export function refuseOutsideBands(argument: string, weightKg: number): void {
  if (weightKg >= NRC_LIGHTEST_KG && weightKg <= NRC_HEAVIEST_KG) return;
  throw new Refusal(
    argument,
    [
      'be from ',
      amount(NRC_LIGHTEST_KG, 'mass'),
      ' to ',
      amount(NRC_HEAVIEST_KG, 'mass'),
      ' unless daily_gain is given',
    ],
    amount(weightKg, 'mass'),
  );
}
