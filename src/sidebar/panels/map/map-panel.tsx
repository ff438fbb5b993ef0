/** "Draw the paddocks": the drawing and its list into the sheet, from corners of a file, a text or the sheet. */
import { useEffect, useRef, useState } from 'preact/hooks';
import { counted } from '../../../../shared/plan/words';
import { drawnIn } from '../../../../shared/tasks/map/map-from-block';
import type { FarmMap } from '../../../../shared/tasks/map/map-model';
import { CORNERS_LABEL, MAP_TASK, ROLES_LABEL } from '../../../../shared/tasks/map/map-task';
import type { MeasuredMap } from '../../../../shared/tasks/map/measure-map';
import { areaText } from '../../../../shared/tasks/map/sketch';
import { NO_PADDOCK } from '../../../../shared/tasks/map/words';
import type { UnitSystem } from '../../../../shared/units/units';
import { Notice } from '../../parts/notice';
import { SettingsFields, unitsRest } from '../../parts/task-fields';
import { settingsWords, TaskScreen } from '../../parts/task-screen';
import type { Book } from '../../parts/use-book';
import { useReset } from '../../parts/use-reset';
import { type TaskState, useTask } from '../../parts/use-task';
import { WithBook } from '../../parts/with-book';
import { CornersSection } from './corners-section';
import { MapButtons, MapDrawing } from './map-drawing';
import { MapNumbers } from './map-numbers';
import { MapWarnings } from './map-warnings';
import { SetbackNote } from './setback-note';
import { MapProblems, ShapesSection, shapesWords } from './shapes-section';
import * as words from './words';

export type MapState = TaskState<ReturnType<(typeof MAP_TASK)['read']>>;

export function MapPanel() {
  return <WithBook>{(book) => <MapSteps book={book} />}</WithBook>;
}

function MapSteps({ book }: { book: Book }) {
  const state = useTask(MAP_TASK, book);
  const { map, roles, standing, measured, settings, units, spacingMeters, keepsDistances } = state.form;
  const [isOutdated, setOutdated] = useState(false);
  const justWritten = useRef(false);
  const justRead = useRef(false);
  useReset(standing && drawnIn(standing.reading), () => {
    if (state.answers[CORNERS_LABEL] === undefined || justWritten.current) return;
    take(undefined);
    setOutdated(true);
  });
  useEffect(() => {
    justWritten.current = false;
  }, [book]);
  const take = (taken: FarmMap | undefined): void => {
    justRead.current = taken !== undefined;
    state.answer(CORNERS_LABEL, taken);
    state.answer(ROLES_LABEL, undefined);
    setOutdated(false);
  };
  const drawn = measured && measured.paddocks.length > 0 ? { map: measured, units } : undefined;
  return (
    <TaskScreen
      // Once there is a map it comes first, and the corners go below it.
      key={map ? 'map' : 'corners'}
      task={MAP_TASK}
      state={state}
      book={book}
      missing={state.form.questions.join(' ')}
      onDone={() => {
        justWritten.current = true;
      }}
      before={
        <>
          {isOutdated && <Notice kind="warning">{words.CHANGED_IN_SHEET}</Notice>}
          {map && <MapProblems problems={map.problems} />}
          {map && !drawn && settings.ok && <Notice kind="warning">{NO_PADDOCK}</Notice>}
        </>
      }
      answer={drawn && <MapCard {...drawn} isRead={justRead} />}
      more={
        drawn && (
          <>
            {keepsDistances && <Notice kind="note">{words.DISTANCES_STAY}</Notice>}
            <MapWarnings {...drawn} spacingMeters={spacingMeters} />
            <SetbackNote {...drawn} />
            <MapButtons {...drawn} />
            <MapNumbers {...drawn} />
          </>
        )
      }
      rests={[
        {
          title: 'The corners',
          words:
            standing && state.answers[CORNERS_LABEL] === undefined ? 'of the table that stands' : 'as read',
          isAsked: map === undefined,
          fields: <CornersSection stands={standing !== undefined} onMap={take} />,
        },
        ...(map
          ? [
              {
                title: ROLES_LABEL,
                words: shapesWords(map, roles),
                isAsked: settings.ok && !drawn,
                fields: <ShapesSection map={map} roles={roles} state={state} />,
              },
              {
                title: 'Posts and neighbours',
                words: settingsWords(settings),
                isAsked: !settings.ok,
                fields: <SettingsFields form={settings} state={state} />,
              },
              ...unitsRest(state),
            ]
          : []),
      ]}
    />
  );
}

interface CardProps {
  readonly map: MeasuredMap;
  readonly units: UnitSystem;
  /** The map was just read: whoever did that goes on here. */
  readonly isRead: { current: boolean };
}

function MapCard({ map, units, isRead }: CardProps) {
  const card = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (isRead.current) card.current?.focus();
    isRead.current = false;
  });
  const all = map.paddocks.reduce((sum, { areaSquareMeters }) => sum + areaSquareMeters, 0);
  return (
    <div class="answer" ref={card} tabIndex={-1}>
      <p>
        <span class="big">{areaText(all, units)}</span> in {counted(map.paddocks.length, 'paddock')}.
      </p>
      <MapDrawing map={map} units={units} />
    </div>
  );
}
