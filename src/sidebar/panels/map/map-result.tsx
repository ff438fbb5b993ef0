/** Numbers, drawing and list of a map, and the way into the sheet. */
import { MAP_TASK, NO_PADDOCK } from '../../../../shared/tasks/map/map-task';
import { Notice } from '../../parts/notice';
import { SettingsFields, UnitsField } from '../../parts/task-fields';
import type { Book } from '../../parts/use-book';
import type { useTask } from '../../parts/use-task';
import { WriteBlock } from '../../parts/write-block';
import { MapDrawing } from './map-drawing';
import { MapNumbers } from './map-numbers';
import { MapWarnings } from './map-warnings';
import { SetbackNote } from './setback-note';

export type MapState = ReturnType<typeof useTask<unknown, ReturnType<(typeof MAP_TASK)['read']>>>;

interface Props {
  readonly book: Book;
  readonly state: MapState;
  readonly onReread: () => void;
}

export function MapResult({ book, state, onReread }: Props) {
  const { settings, measured, units, spacingMeters, keepsDistances } = state.form;
  return (
    <>
      <UnitsField state={state} />
      <SettingsFields form={settings} state={state} />
      {measured?.paddocks.length === 0 && <Notice kind="warning">{NO_PADDOCK}</Notice>}
      {measured && measured.paddocks.length > 0 && (
        <>
          <h2>3. The drawing</h2>
          <MapWarnings map={measured} units={units} spacingMeters={spacingMeters} />
          <MapDrawing map={measured} units={units} />
          <MapNumbers map={measured} units={units} />
          <SetbackNote map={measured} units={units} />
          <h2>4. Into the sheet</h2>
          <p class="hint">
            A paddock list with live formulas and the corners below it. Planning the moves can use it as your
            paddock list.
          </p>
          {keepsDistances && (
            <Notice kind="note">
              Distances to water and wells that stand in the table stay as they are, for this map has no water
              or no well in it. Where a fence has moved, read the map file with the water once more.
            </Notice>
          )}
          <WriteBlock task={MAP_TASK} state={state} book={book} onDone={onReread} />
        </>
      )}
    </>
  );
}
