/** What fixed fence takes: quantities as formula bodies, to be typed over where the grower knows better. */
import { fromInside, symbolOf, type UnitSystem } from '../../units/units';
import { roundUp } from '../formula-parts';
import type { ComparisonKey } from './comparison-model';
import * as words from './words';

/** Staples and hours of Iowa State's example for a quarter mile of woven wire (second hand). */
const EXAMPLE_METERS = 1320 * 0.3048;
const EXAMPLE_STAPLES_LB = 10;
const EXAMPLE_HOURS = 42;
/** Minutes a metre for panels: "less than 5" (Lavelle and others 2011, published). */
const PANEL_MINUTES_PER_METER = 5;

export interface FixedItem {
  readonly item: string;
  readonly quantity: string;
  readonly unit: string;
  readonly note: string;
}

/** Formula bodies of the length of fixed fence and its corners. */
interface FixedOn {
  readonly lengths: { readonly fixed: string; readonly corners: string };
  readonly units: UnitSystem;
}

export function wovenItems(
  { lengths, units }: FixedOn,
  set: Readonly<Record<ComparisonKey, string>>,
): FixedItem[] {
  const posts = roundUp(`${lengths.fixed}/${set.wovenPosts}`);
  const example = Math.round(fromInside(EXAMPLE_METERS, 'length', units));
  const unit = symbolOf('length', units);
  const staples = units === 'US' ? `${EXAMPLE_STAPLES_LB}` : `${EXAMPLE_STAPLES_LB}*453592/10^6`;
  return [
    {
      item: 'Corner and brace posts',
      quantity: `3*${lengths.corners}`,
      unit: 'posts',
      note: words.BRACES_NOTE,
    },
    { item: 'Line posts, wood', quantity: `ROUNDUP(${posts}/2;0)`, unit: 'posts', note: 'Every other post.' },
    {
      item: 'Line posts, steel',
      quantity: `ROUNDDOWN(${posts}/2;0)`,
      unit: 'posts',
      note: 'Every other post.',
    },
    {
      item: 'Staples and clips',
      quantity: `${lengths.fixed}*${staples}/${example}`,
      unit: symbolOf('mass', units),
      note: words.STAPLE_WEIGHT_NOTE,
    },
    { item: 'Barbed wire, one strand', quantity: lengths.fixed, unit, note: 'Never under voltage.' },
    { item: 'Woven wire', quantity: lengths.fixed, unit, note: '' },
    {
      item: 'Hours to build',
      quantity: `${lengths.fixed}*${EXAMPLE_HOURS}/${example}`,
      unit: 'hours',
      note: words.BUILD_HOURS_NOTE,
    },
  ];
}

export function panelItems(
  { lengths, units }: FixedOn,
  set: Readonly<Record<ComparisonKey, string>>,
): FixedItem[] {
  const panels = roundUp(`${lengths.fixed}/${set.panelLength}`);
  const meters = units === 'US' ? `${lengths.fixed}*3048/10000` : lengths.fixed;
  return [
    { item: 'Panels', quantity: panels, unit: 'panels', note: '' },
    {
      item: 'Posts',
      quantity: `2*${panels}`,
      unit: 'posts',
      note: words.PANEL_POSTS_NOTE,
    },
    {
      item: 'Clips',
      quantity: `6*${panels}`,
      unit: 'each',
      note: words.STAPLES_NOTE,
    },
    {
      item: 'Hours to build',
      quantity: `${meters}*${PANEL_MINUTES_PER_METER}/60`,
      unit: 'hours',
      note: words.DRIVE_NOTE,
    },
  ];
}
