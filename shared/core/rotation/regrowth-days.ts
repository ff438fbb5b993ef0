import { plainNumber, Refusal } from '../../refusals';
import type { Day } from '../calendar/day';
import { growBack, LONGEST_REGROWTH_DAYS } from './grow-back';

/**
 * Days until growth adds up to what is needed, the start day counted, the last day as a fraction.
 *
 * Formula and shapes as in growBack, which the rotation planner walks too. Refuses where two years are not enough.
 * Source: definition.
 */
export function regrowthDays(startDay: Day, monthlyGrowth: readonly number[], growthNeeded: number): number {
  const { days, missing } = growBack(startDay, monthlyGrowth, growthNeeded);
  if (missing === 0) return days;
  throw new Refusal(
    'growth_needed',
    `be grown within ${LONGEST_REGROWTH_DAYS} days`,
    `${plainNumber(growthNeeded)}, of which ${plainNumber(missing)} would still be missing`,
  );
}
