import { amount, least, most, Refusal } from '../../refusals';
import { GROWING_HEAVIEST_KG, GROWING_LIGHTEST_KG } from '../../tables/growing-weights';

/** Weights come from other units and from growth added up: a hair over the limit is on it. */
const ROUNDING = 1e-9;

export function isGrowing(weightKg: number): boolean {
  return weightKg >= GROWING_LIGHTEST_KG * (1 - ROUNDING) && weightKg <= GROWING_HEAVIEST_KG * (1 + ROUNDING);
}

/**
 * Refuses a weight for which the figures of growing pigs do not hold: below 5 or above 160 kg. `instead` says what
 * to use there.
 */
export function refuseUnlessGrowing(argument: string, weightKg: number, instead: string): void {
  if (isGrowing(weightKg)) return;
  throw new Refusal(
    argument,
    [
      'be from ',
      least(GROWING_LIGHTEST_KG, 'mass'),
      ' to ',
      most(GROWING_HEAVIEST_KG, 'mass'),
      `: ${instead}`,
    ],
    amount(weightKg, 'mass'),
  );
}
