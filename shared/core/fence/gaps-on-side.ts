import { ceilForgiving } from '../../units/ceil-forgiving';

/**
 * Gaps between posts on one side, the side divided evenly with gaps of at most `spacing`: ⌈side ÷ spacing⌉.
 * Both in the same unit. Source: counting; a gap is never wider than asked for.
 */
export function gapsOnSide(side: number, spacing: number): number {
  return ceilForgiving(side / spacing);
}
