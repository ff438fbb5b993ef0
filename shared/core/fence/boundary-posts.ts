import { checkedOutline } from './checked-outline';
import type { Corner } from './corner';
import { sidePosts } from './side-posts';
import { outlineSides } from './wgs84';

/**
 * Posts round the closed line through the corners, a post at every corner, each side divided evenly with gaps
 * of at most spacingMeters.
 *
 * Source: karney2013 for the sides; counting. Errors: those of checkedOutline.
 */
export function boundaryPosts(corners: readonly Corner[], spacingMeters: number): number {
  return sidePosts(outlineSides(checkedOutline(corners)), spacingMeters, true);
}
