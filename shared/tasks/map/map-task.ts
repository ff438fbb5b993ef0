import { MAP_BLOCK } from '../../block/own-words';
import type { BlockContent } from '../../block/read-block';
import type { UnitSystem } from '../../units/units';
import { asking } from '../ask';
import { insideSettings, readSettings, type SettingSpec, type SettingValues } from '../settings';
import type { Task } from '../task';
import { composeMapBlock } from './compose-map-block';
import { NEIGHBOUR_TOLERANCE_METERS } from './find-neighbours';
import { guessRole } from './guess-role';
import { MAP_SETTINGS } from './map-block';
import { drawnIn, type KeptInMap, keptInMap, mapFromBlock } from './map-from-block';
import type { FarmMap, Role } from './map-model';
import { MapTrouble } from './map-trouble';
import { type MeasuredMap, measureMap } from './measure-map';
import * as words from './words';

export const CORNERS_LABEL = 'Corners from';
/** Where no other map was read, the table itself. */
export const CORNERS_OF_TABLE = 'The map table that stands in this file';
export const ROLES_LABEL = 'Change what is what';

type Key = 'postSpacing' | 'tolerance';

const SPECS: readonly SettingSpec<Key>[] = [
  ...MAP_SETTINGS,
  {
    key: 'tolerance',
    label: 'Neighbours within',
    quantity: 'length',
    start: { US: 10, metric: NEIGHBOUR_TOLERANCE_METERS },
    note: words.ADJOIN_NOTE,
    min: 0,
    max: 30,
  },
];

interface MapPlan {
  readonly map: MeasuredMap;
  readonly settings: SettingValues<'postSpacing'>;
  readonly units: UnitSystem;
  readonly kept: KeptInMap | undefined;
}

/** Paddocks from corners on a map, measured. */
export const MAP_TASK = {
  name: MAP_BLOCK,
  what: 'the map table',
  tabName: 'Map',
  read: (book, answers) => {
    const ask = asking(book, answers, MAP_BLOCK);
    const { block } = ask;
    const units = ask.units();
    const settings = ask.settings<Key>(
      SPECS,
      { values: block ? readSettings(block, MAP_SETTINGS).values : {} },
      units,
    );
    const answer = ask.other<FarmMap | string>(CORNERS_LABEL, block && drawnIn(block)) ?? CORNERS_OF_TABLE;
    const ofTable = answer === CORNERS_OF_TABLE && block ? mapThatStands(block) : undefined;
    if (ofTable && 'trouble' in ofTable) ask.wrongInSheet([ofTable.trouble]);
    const map = typeof answer !== 'string' ? answer : ofTable && 'shapes' in ofTable ? ofTable : undefined;
    const chosen = ask.other<Readonly<Record<string, Role>>>(ROLES_LABEL) ?? {};
    const roles = map?.shapes.map((shape) => chosen[shape.name] ?? guessRole(shape)) ?? [];
    const { postSpacing = 8, tolerance = 0 } = insideSettings(SPECS, settings.values, units);
    const shapes = map?.shapes.map((shape, i) => ({ ...shape, role: roles[i] ?? 'other' }));
    const measured = shapes && settings.ok ? measureMap(shapes, postSpacing, tolerance) : undefined;
    if (!map) ask.wrong([words.READ_A_MAP]);
    if (measured?.paddocks.length === 0) ask.wrong([words.NO_PADDOCK]);
    const kept = block && keptInMap(block, units);
    return ask.form(
      () => ({ map: measured!, settings: { postSpacing: settings.values.postSpacing }, units, kept }),
      {
        units,
        settings,
        map,
        roles,
        measured,
        spacingMeters: postSpacing,
        keepsDistances: measured !== undefined && keepsDistances(measured, kept),
      },
    );
  },
  compose: (plan, origin) => composeMapBlock({ ...plan, origin }),
} satisfies Task<MapPlan>;

function mapThatStands(block: BlockContent): FarmMap | { readonly trouble: string } {
  try {
    return mapFromBlock(block);
  } catch (error) {
    if (error instanceof MapTrouble) return { trouble: error.message };
    throw error;
  }
}

function keepsDistances({ marks }: MeasuredMap, kept: KeptInMap | undefined): boolean {
  const isDrawn = (kind: Role): boolean => marks.some(({ role }) => role === kind);
  return (
    kept !== undefined &&
    ((kept.toWater.size > 0 && !isDrawn('water')) || (kept.toWell.size > 0 && !isDrawn('well')))
  );
}
