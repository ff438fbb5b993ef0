import { energizerJoules } from '../../core/energizer/energizer-joules';
import { groundRods } from '../../core/energizer/ground-rods';
import { gapsOnSide } from '../../core/fence/gaps-on-side';
import { rollCount } from '../../core/fence/roll-count';
import { ceilForgiving } from '../../units/ceil-forgiving';
import type { FenceCount, LayoutFence } from './layout';
import type { MaterialsSettings } from './materials-settings';

/** What is fenced at a time: all paddocks, or as many as stand together and leapfrog. */
export type AtATime = { readonly kind: 'all' } | { readonly kind: 'set'; readonly paddocks: number };

export interface MaterialNeeds {
  /** Line to put up, and line that the energizer must bring under voltage. */
  readonly lineMeters: number;
  readonly liveMeters: number;
  readonly wireMeters: number;
  readonly joules: number;
  /** Whole things; the cable in metres, not rounded. */
  readonly need: Readonly<Record<MaterialItem, number>>;
}

export const MATERIAL_ITEMS = [
  'linePosts',
  'cornerPosts',
  'rolls',
  'reels',
  'insulators',
  'gateHandles',
  'signs',
  'energizer',
  'rods',
  'clamps',
  'cable',
  'tester',
] as const;
export type MaterialItem = (typeof MATERIAL_ITEMS)[number];

/**
 * What a fence takes. `settings` in inside units (SI).
 *
 *   wire = line × strands × (1 + allowance); rolls = ⌈wire ÷ roll⌉; reels = ⌈wire ÷ reel⌉
 *   signs = ⌈public side ÷ sign gap⌉ + 1 where the public passes, else 0
 *   cable = energizer to fence + energizer to first rod + (rods − 1) × rod gap
 *
 * Joules and rods as in energizerJoules and groundRods. Source: counting; the sources of the settings stand beside
 * them.
 */
export function materialNeeds(
  fence: LayoutFence,
  atATime: AtATime,
  settings: MaterialsSettings,
): MaterialNeeds {
  const set = (key: keyof MaterialsSettings): number => settings[key] ?? 0;
  const line = fenceToPutUp(fence, atATime, set('groups'), set('standing'), set('postSpacing'));
  const liveMeters = line.meters + set('standing');
  const joules = energizerJoules(liveMeters, set('loadFactor'));
  const rods = groundRods(settings.energizerJoules ?? joules, set('rodLength'));
  const wireMeters = line.meters * set('strands') * (1 + set('allowance') / 100);
  const spare = 1 + set('spares') / 100;
  const linePosts = line.posts - line.corners;
  const insulators = set('strands') * (line.corners + linePosts * set('lineInsulators'));
  return {
    lineMeters: line.meters,
    liveMeters,
    wireMeters,
    joules,
    need: {
      linePosts: ceilForgiving(linePosts * spare),
      cornerPosts: line.corners,
      rolls: rollCount(wireMeters, set('rollLength'), 0),
      reels: rollCount(wireMeters, set('reelLength'), 0),
      insulators: ceilForgiving(insulators * spare),
      gateHandles: set('gates') * set('strands'),
      signs: set('publicSide') > 0 ? gapsOnSide(set('publicSide'), set('signSpacing')) + 1 : 0,
      energizer: 1,
      rods,
      clamps: rods,
      cable: set('leadOut') + set('earthLead') + (rods - 1) * set('rodGap'),
      tester: 1,
    },
  };
}

/** The line that has to be bought or moved, after what stands already. */
function fenceToPutUp(
  fence: LayoutFence,
  atATime: AtATime,
  groups: number,
  standingMeters: number,
  postSpacingMeters: number,
): FenceCount {
  const whole = atATime.kind === 'all' ? fence.all : times(fence.set, groups);
  const postsThere = Math.floor(standingMeters / postSpacingMeters + 1e-9);
  return {
    meters: Math.max(0, whole.meters - standingMeters),
    posts: Math.max(whole.corners, whole.posts - postsThere),
    corners: whole.corners,
  };
}

function times(fence: FenceCount, groups: number): FenceCount {
  return { meters: fence.meters * groups, posts: fence.posts * groups, corners: fence.corners * groups };
}
