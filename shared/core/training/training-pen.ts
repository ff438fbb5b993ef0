import { ceilForgiving } from '../../units/ceil-forgiving';
import { fenceLength } from '../fence/fence-length';
import { postCount } from '../fence/post-count';
import { strandHeights } from '../fence/strand-heights';
import type { ListLine } from '../list-line';

/** Clips that hold a panel to a post. Common practice, no source. */
const CLIPS_PER_POST = 3;

/**
 * What a square training pen takes: whole rigid panels, one live wire all round inside them.
 *
 *   panels a side = ⌈√(head × areaPerHead) ÷ panelLength⌉, at least 1
 *   posts as a closed line at postSpacing, a post at every corner; 3 clips and 1 offset insulator a post
 *   live wire = 4 × inside side, at the height of a single strand for that weight
 *
 * All in SI. Source: common practice, no source, or judgement; nothing published was found.
 */
export function trainingPen(
  head: number,
  weightKg: number,
  panelMeters: number,
  postSpacingMeters: number,
  areaPerHeadSquareMeters: number,
): readonly ListLine[] {
  const panelsPerSide = Math.max(1, ceilForgiving(Math.sqrt(head * areaPerHeadSquareMeters) / panelMeters));
  const sideMeters = panelsPerSide * panelMeters;
  const [singleWire = 0] = strandHeights(weightKg, 1);
  const posts = postCount(sideMeters, sideMeters, postSpacingMeters);
  return [
    { item: 'panels', amount: fenceLength(panelsPerSide, panelsPerSide, 1), unit: 'panels' },
    { item: 'inside length of a side', amount: sideMeters, quantity: 'length' },
    { item: 'posts', amount: posts, unit: 'posts' },
    { item: 'clips', amount: CLIPS_PER_POST * posts, unit: 'clips' },
    { item: 'offset insulators', amount: posts, unit: 'insulators' },
    { item: 'live wire', amount: fenceLength(sideMeters, sideMeters, 1), quantity: 'length' },
    { item: 'height of a single wire', amount: singleWire, quantity: 'height' },
  ];
}
