import { gapsOnSide } from './gaps-on-side';

/**
 * Posts along any number of sides, a post at every corner.
 *
 *   closed line  Σ ⌈side ÷ spacing⌉
 *   open run     Σ ⌈side ÷ spacing⌉ + 1, for the post at the other end
 *
 * All in the same unit. Source: counting.
 */
export function sidePosts(sides: readonly number[], spacing: number, closed: boolean): number {
  const gaps = sides.reduce((sum, side) => sum + gapsOnSide(side, spacing), 0);
  return closed ? gaps : gaps + 1;
}
