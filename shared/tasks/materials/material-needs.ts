import { energizerJoules } from '../../core/energizer/energizer-joules';
import { groundRods } from '../../core/energizer/ground-rods';
import { gapsOnSide } from '../../core/fence/gaps-on-side';
import { rollCount } from '../../core/fence/roll-count';
import { ceilForgiving } from '../../units/ceil-forgiving';
import { type FenceKind, fenceType } from './fence-types';
import type { FenceCount, LayoutFence } from './layout';
import type { MaterialsSettings } from './materials-settings';

/** What is fenced at a time: all paddocks, or as many as stand together and leapfrog. */
export type AtATime = { readonly kind: 'all' } | { readonly kind: 'set'; readonly paddocks: number };

export interface MaterialNeeds {
  /** Line to put up, all groups together. */
  readonly lineMeters: number;
  /** One for each fence that stands apart. */
  readonly energizers: number;
  /** Line that each of them must bring under voltage, and what that takes. */
  readonly liveMeters: number;
  readonly joules: number;
  readonly wireMeters: number;
  /** Whole things; the cable in metres, not rounded. */
  readonly need: Readonly<Record<MaterialItem, number>>;
}

export const MATERIAL_ITEMS = [
  'nets',
  'linePosts',
  'cornerPosts',
  'guys',
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
 *   cable of an energizer = energizer to fence + energizer to first rod + (rods of it − 1) × rod gap
 *
 * Of another kind of fence nothing is needed. Joules and rods as in energizerJoules and groundRods. Source: counting; the sources of the settings stand beside
 * them.
 */
export function materialNeeds(
  fence: LayoutFence,
  atATime: AtATime,
  kind: FenceKind,
  settings: MaterialsSettings,
): MaterialNeeds {
  const set = (key: keyof MaterialsSettings): number => settings[key] ?? 0;
  const { items, loads } = fenceType(kind);
  const energizers = atATime.kind === 'all' ? 1 : set('groups');
  const line = fenceToPutUp(atATime.kind === 'all' ? fence.all : fence.set, energizers, settings);
  const liveMeters = (line.meters + set('standing')) / energizers;
  const load = loads.reduce((product, key) => product * set(key), 1);
  const joules = energizerJoules(liveMeters, load);
  const rods = groundRods(settings.energizerJoules ?? joules, set('rodLength'));
  const wireMeters = line.meters * set('strands') * (1 + set('allowance') / 100);
  const spare = 1 + set('spares') / 100;
  const linePosts = line.posts - line.corners;
  const insulators = set('strands') * (line.corners + linePosts * set('lineInsulators'));
  const needs: Readonly<Record<MaterialItem, number>> = {
    nets: line.nets,
    linePosts: ceilForgiving(linePosts * spare),
    cornerPosts: line.corners,
    guys: line.corners,
    rolls: rollCount(wireMeters, set('rollLength'), 0),
    reels: rollCount(wireMeters, set('reelLength'), 0),
    insulators: ceilForgiving(insulators * spare),
    gateHandles: energizers * set('gates') * set('strands'),
    signs: set('publicSide') > 0 ? gapsOnSide(set('publicSide'), set('signSpacing')) + 1 : 0,
    energizer: energizers,
    rods: rods * energizers,
    clamps: rods * energizers,
    cable: energizers * (set('leadOut') + set('earthLead') + (rods - 1) * set('rodGap')),
    tester: 1,
  };
  const of = (item: MaterialItem): [MaterialItem, number] => [item, items.includes(item) ? needs[item] : 0];
  return {
    lineMeters: line.meters,
    energizers,
    liveMeters,
    joules,
    wireMeters,
    need: Object.fromEntries(MATERIAL_ITEMS.map(of)) as Record<MaterialItem, number>,
  };
}

/** The line that has to be bought or moved, `times` over, after what stands already. */
function fenceToPutUp(fence: FenceCount, times: number, settings: MaterialsSettings): FenceCount {
  const standing = settings.standing ?? 0;
  const piecesThere = (length: number | undefined): number => Math.floor(standing / (length ?? 1) + 1e-9);
  const corners = fence.corners * times;
  return {
    meters: Math.max(0, fence.meters * times - standing),
    posts: Math.max(corners, fence.posts * times - piecesThere(settings.postSpacing)),
    nets: Math.max(0, fence.nets * times - piecesThere(settings.netLength)),
    corners,
  };
}
