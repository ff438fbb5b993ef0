import { amount, Refusal } from '../../refusals';
import { bandsBetween, refuseOutsideBands } from './growth-stretches';

/** A weight that was worked out in a cell has 15 digits: what they leave out makes no pig lighter. Relative, with room. */
const CELL_ERROR = 1e-12;

/**
 * Days until a pig reaches a weight: the inverse of weightAfterDays.
 *
 *   with dailyGainKg     (target − start) ÷ gain
 *   without dailyGainKg  Σ over the weight bands of (kg in the band ÷ its mean daily gain)
 *
 * Holds for: 5 to 135 kg without dailyGainKg; target at or above start. Source: nrc2012, from memory.
 */
export function daysToWeight(startKg: number, targetKg: number, dailyGainKg: number | undefined): number {
  if (targetKg < startKg * (1 - CELL_ERROR)) {
    throw new Refusal(
      'target_weight',
      ['be at least start_weight (', amount(startKg, 'mass'), ')'],
      amount(targetKg, 'mass'),
    );
  }
  if (dailyGainKg !== undefined) return Math.max(0, targetKg - startKg) / dailyGainKg;
  refuseOutsideBands('start_weight', startKg);
  refuseOutsideBands('target_weight', targetKg);
  return bandsBetween(startKg, targetKg).reduce(
    (days, { fromKg, toKg, gainKgPerDay }) => days + (toKg - fromKg) / gainKgPerDay,
    0,
  );
}
