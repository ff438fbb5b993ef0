/** "Draw the paddocks": corners in, what is what, the drawing, the list into the sheet. */
import { useEffect, useRef, useState } from 'preact/hooks';
import { drawnIn } from '../../../../shared/tasks/map/map-from-block';
import type { FarmMap } from '../../../../shared/tasks/map/map-model';
import { CORNERS_LABEL, MAP_TASK, ROLES_LABEL } from '../../../../shared/tasks/map/map-task';
import { Notice } from '../../parts/notice';
import type { Book } from '../../parts/use-book';
import { useReset } from '../../parts/use-reset';
import { useTask } from '../../parts/use-task';
import { WithBook } from '../../parts/with-book';
import { CornersSection } from './corners-section';
import { MapResult } from './map-result';
import { ShapesSection } from './shapes-section';

export function MapPanel() {
  return <WithBook>{(book, reread) => <MapSteps book={book} onReread={reread} />}</WithBook>;
}

function MapSteps({ book, onReread }: { book: Book; onReread: () => void }) {
  const state = useTask(MAP_TASK, book);
  const { map, roles, standing } = state.form;
  const [isOutdated, setOutdated] = useState(false);
  const justWritten = useRef(false);
  useReset(standing && drawnIn(standing.reading), () => {
    if (!map || justWritten.current) return;
    take(undefined);
    setOutdated(true);
  });
  useEffect(() => {
    justWritten.current = false;
  }, [book]);
  const take = (taken: FarmMap | undefined): void => {
    state.answer(CORNERS_LABEL, taken);
    state.answer(ROLES_LABEL, undefined);
    setOutdated(false);
  };
  return (
    <>
      <h2>1. The corners</h2>
      <CornersSection file={book.overview} onMap={take} />
      {isOutdated && (
        <Notice kind="warning">
          Names or corners in the map table were changed in the sheet. Choose “The map table that stands in
          this file” to go on with them, or read your map once more to replace them.
        </Notice>
      )}
      {map && (
        <>
          <h2>2. What is what</h2>
          <ShapesSection map={map} roles={roles} state={state} />
          <MapResult
            book={book}
            state={state}
            onReread={() => {
              justWritten.current = true;
              onReread();
            }}
          />
        </>
      )}
    </>
  );
}
