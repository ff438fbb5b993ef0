/** Numbers, drawing and list of a map, and the way into the sheet. */
import { useMemo, useState } from 'preact/hooks';
import { MAP_BLOCK } from '../../../../shared/block/own-words';
import { startUnits } from '../../../../shared/lists/start-units';
import { decimalComma } from '../../../../shared/locale/decimal-comma';
import { composeMapBlock } from '../../../../shared/tasks/map/compose-map-block';
import { NEIGHBOUR_TOLERANCE_METERS } from '../../../../shared/tasks/map/find-neighbours';
import { MAP_SETTINGS } from '../../../../shared/tasks/map/map-block';
import { type KeptInMap, keptInMap } from '../../../../shared/tasks/map/map-from-block';
import type { FarmMap, Role } from '../../../../shared/tasks/map/map-model';
import { type MeasuredMap, measureMap } from '../../../../shared/tasks/map/measure-map';
import { insideSettings, readSettings, readUnits, type SettingSpec } from '../../../../shared/tasks/settings';
import { standingBlock } from '../../../../shared/tasks/standing-block';
import type { UnitSystem } from '../../../../shared/units/units';
import { Notice } from '../../parts/notice';
import { SettingsFields } from '../../parts/settings-fields';
import { useSettings } from '../../parts/settings-state';
import { UnitsChoice } from '../../parts/units-choice';
import type { Book } from '../../parts/use-book';
import { type Compose, WriteBlock } from '../../parts/write-block';
import { MapDrawing } from './map-drawing';
import { MapNumbers } from './map-numbers';
import { MapWarnings } from './map-warnings';
import { SetbackNote } from './setback-note';

interface Props {
  readonly book: Book;
  readonly map: FarmMap;
  readonly roles: readonly Role[];
  readonly onReread: () => void;
}

type Key = 'postSpacing' | 'tolerance';

const SPECS: readonly SettingSpec<Key>[] = [
  ...MAP_SETTINGS,
  {
    key: 'tolerance',
    label: 'Neighbours within',
    quantity: 'length',
    start: { US: 10, metric: NEIGHBOUR_TOLERANCE_METERS },
    note: 'Paddocks adjoin where their sides run along one another no farther apart than this, for at least 10 ft (3 m). Judgement: lines walked with a hand-held receiver seldom fall together better.',
    min: 0,
    max: 30,
  },
];

export function MapResult({ book, map, roles, onReread }: Props) {
  const standing = standingBlock(book, MAP_BLOCK);
  const standingUnits = standing && readUnits(standing);
  const [chosenUnits, setUnits] = useState<UnitSystem>(() => startUnits(book));
  const units = standingUnits ?? chosenUnits;
  const on = { units, comma: decimalComma(book.overview.locale) };
  const settings = useSettings<Key>(SPECS, standing ? readSettings(standing, MAP_SETTINGS).values : {}, on);
  const { read, typed } = settings;
  const { postSpacing: spacing = 8, tolerance = 0 } = insideSettings(SPECS, read.values, units);
  const measured = useMemo(() => {
    if (!read.ok) return undefined;
    const shapes = map.shapes.map((shape, i) => ({ ...shape, role: roles[i] ?? 'other' }));
    return measureMap(shapes, spacing, tolerance);
  }, [map, roles, read.ok, spacing, tolerance]);
  const compose: Compose = (origin, old) => {
    if (!measured) throw new Error('Correct the numbers above first.');
    // A spacing that was changed in the sheet since the page read it counts, unless one was typed here.
    const stood = old && readSettings(old, MAP_SETTINGS).values.postSpacing;
    const postSpacing = typed.postSpacing === undefined && stood ? stood : read.values.postSpacing;
    return composeMapBlock({
      map: measured,
      settings: { postSpacing },
      units,
      origin,
      kept: old && keptInMap(old, units),
    });
  };
  return (
    <>
      {!standingUnits && <UnitsChoice units={units} onChange={setUnits} />}
      <SettingsFields specs={SPECS} {...settings} {...on} onChange={settings.setTyped} />
      {measured && measured.paddocks.length === 0 && (
        <Notice kind="warning">None of the shapes is a paddock. Say above which areas are.</Notice>
      )}
      {measured && measured.paddocks.length > 0 && (
        <>
          <h2>3. The drawing</h2>
          <MapWarnings map={measured} units={units} spacingMeters={spacing} />
          <MapDrawing map={measured} units={units} />
          <MapNumbers map={measured} units={units} />
          <SetbackNote map={measured} units={units} />
          <h2>4. Into the sheet</h2>
          <p class="hint">
            A paddock list with live formulas and the corners below it. Planning the moves can use it as your
            paddock list.
          </p>
          {keepsDistances(measured, standing && keptInMap(standing, units)) && (
            <Notice kind="note">
              Distances to water and wells that stand in the table stay as they are, for this map has no water
              or no well in it. Where a fence has moved, read the map file with the water once more.
            </Notice>
          )}
          <WriteBlock
            name={MAP_BLOCK}
            what="the map table"
            tabName="Map"
            book={book}
            compose={compose}
            onDone={onReread}
          />
        </>
      )}
    </>
  );
}

/** The new map says nothing of water or wells, and the table that stands does. */
function keepsDistances({ marks }: MeasuredMap, kept: KeptInMap | undefined): boolean {
  const isDrawn = (kind: Role): boolean => marks.some(({ role }) => role === kind);
  return (
    kept !== undefined &&
    ((kept.toWater.size > 0 && !isDrawn('water')) || (kept.toWell.size > 0 && !isDrawn('well')))
  );
}
