import { ceilForgiving } from '../../units/ceil-forgiving';

/**
 * Whole rolls still to buy, never below 0.
 *
 *   rolls = max(0, ⌈length ÷ rollLength − onHand⌉)
 *
 * Lengths in the same unit; onHand in rolls, part rolls as fractions. Source: counting.
 */
export function rollCount(length: number, rollLength: number, onHand: number): number {
  return Math.max(0, ceilForgiving(length / rollLength - onHand));
}
