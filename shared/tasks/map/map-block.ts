/** What the map's block in the sheet is called and how its columns are headed. */
import { symbolOf, type UnitSystem } from '../../units/units';
import type { SettingSpec } from '../settings';
import * as words from './words';

export const CORNER_HEADINGS = ['corner of', 'corner', 'latitude', 'longitude'] as const;

/** Words that the list finder knows, so that the block serves as the farm's paddock list. */
export function listHeadings(units: UnitSystem) {
  const [ft, ac] = [symbolOf('length', units), symbolOf('area', units)];
  return {
    name: 'paddock',
    area: `area (${ac})`,
    perimeter: `perimeter (${ft})`,
    posts: 'posts',
    adjoining: 'adjoining',
    water: `to water (${ft})`,
    well: `to well (${ft})`,
    note: 'note',
  } as const;
}

export const MAP_SETTINGS: readonly SettingSpec<'postSpacing'>[] = [
  {
    key: 'postSpacing',
    label: 'post spacing',
    quantity: 'length',
    start: { US: 25, metric: 8 },
    note: words.POST_GAP_NOTE,
    above: 0.1,
    max: 100,
  },
];

/** A hole's corners stand in the corner table under this name. */
export function holeName(paddock: string, index: number): string {
  return `${paddock}, hole ${index + 1}`;
}
