import { gapsOnSide } from './gaps-on-side';

/**
 * Posts round a rectangle, a post at every corner, corners counted once.
 *
 *   posts = 2 × ⌈width ÷ spacing⌉ + 2 × ⌈length ÷ spacing⌉
 *
 * All three in the same unit. Source: counting; on a closed line there are as many posts as gaps.
 */
export function postCount(width: number, length: number, spacing: number): number {
  return 2 * gapsOnSide(width, spacing) + 2 * gapsOnSide(length, spacing);
}
