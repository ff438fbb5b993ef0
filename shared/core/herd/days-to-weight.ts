import { amount, Refusal } from '../../refusals';
import { bandsBetween, refuseOutsideBands } from './growth-stretches';

/**
 * Days until a pig reaches a weight: the inverse of weightAfterDays.
 *
 *   with dailyGainKg     (target − start) ÷ gain
 *   without dailyGainKg  Σ over the weight bands of (kg in the band ÷ its mean daily gain)
 *
 * Holds for: 5 to 135 kg without dailyGainKg; target at or above start. Source: nrc2012, from memory.
 */
export function daysToWeight(startKg: number, targetKg: number, dailyGainKg: number | undefined): number {
  if (targetKg < startKg) {
    throw new Refusal(
      'target_weight',
      ['be at least start_weight (', amount(startKg, 'mass'), ')'],
      amount(targetKg, 'mass'),
    );
  }
  if (dailyGainKg !== undefined) return (targetKg - startKg) / dailyGainKg;
  refuseOutsideBands('start_weight', startKg);
  refuseOutsideBands('target_weight', targetKg);
  return bandsBetween(startKg, targetKg).reduce(
    (days, { fromKg, toKg, gainKgPerDay }) => days + (toKg - fromKg) / gainKgPerDay,
    0,
  );
}
