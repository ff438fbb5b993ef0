import { amount, least, most, Refusal } from '../../refusals';
import { type GainBand, NRC_GAIN_BANDS, NRC_HEAVIEST_KG, NRC_LIGHTEST_KG } from '../../tables/nrc-growth';

/** A stretch of days in which a pig gains evenly. */
export interface GrowthStretch {
  readonly fromKg: number;
  readonly days: number;
  readonly gainKgPerDay: number;
}

/**
 * How a pig grows over some days, as stretches of even gain: one stretch with dailyGainKg, else the growth
 * table walked band by band.
 *
 * Holds for: 5 to 135 kg without dailyGainKg; outside that it refuses and asks for daily_gain.
 * Source: nrc2012, from memory.
 */
export function growthStretches(
  startKg: number,
  days: number,
  dailyGainKg: number | undefined,
): readonly GrowthStretch[] {
  if (dailyGainKg !== undefined) return [{ fromKg: startKg, days, gainKgPerDay: dailyGainKg }];
  refuseOutsideBands('start_weight', startKg);
  const stretches: GrowthStretch[] = [];
  let daysLeft = days;
  for (const { fromKg, toKg, gainKgPerDay } of bandsBetween(startKg, NRC_HEAVIEST_KG)) {
    const daysInBand = Math.min(daysLeft, (toKg - fromKg) / gainKgPerDay);
    stretches.push({ fromKg, days: daysInBand, gainKgPerDay });
    daysLeft -= daysInBand;
    if (daysLeft <= 0) return stretches;
  }
  if (daysLeft > 0) {
    throw new Refusal('days', [
      'end before the pig passes ',
      most(NRC_HEAVIEST_KG, 'mass'),
      ' unless daily_gain is given',
    ]);
  }
  return stretches;
}

/** The bands of the growth table from one weight to another, the first and last cut to fit. */
export function bandsBetween(fromKg: number, toKg: number): readonly GainBand[] {
  return NRC_GAIN_BANDS.filter((band) => band.toKg > fromKg && band.fromKg < toKg).map((band) => ({
    fromKg: Math.max(band.fromKg, fromKg),
    toKg: Math.min(band.toKg, toKg),
    gainKgPerDay: band.gainKgPerDay,
  }));
}

/** The growth table speaks of 5 to 135 kg only. */
export function refuseOutsideBands(argument: string, weightKg: number): void {
  if (weightKg >= NRC_LIGHTEST_KG && weightKg <= NRC_HEAVIEST_KG) return;
  throw new Refusal(
    argument,
    [
      'be from ',
      least(NRC_LIGHTEST_KG, 'mass'),
      ' to ',
      most(NRC_HEAVIEST_KG, 'mass'),
      ' unless daily_gain is given',
    ],
    amount(weightKg, 'mass'),
  );
}
