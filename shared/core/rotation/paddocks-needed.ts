import { ceilForgiving } from '../../units/ceil-forgiving';

/**
 * Paddocks that give the rest.
 *
 *   ⌈groups × (restDays ÷ daysOn + 1)⌉
 *
 * Source: pennState; several groups share the paddocks evenly.
 */
export function paddocksNeeded(restDays: number, daysOn: number, groups: number): number {
  return ceilForgiving(groups * (restDays / daysOn + 1));
}
