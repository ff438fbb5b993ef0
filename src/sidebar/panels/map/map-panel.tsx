/** "Draw the paddocks": corners in, what is what, the drawing, the list into the sheet. */
import { useEffect, useRef, useState } from 'preact/hooks';
import { MAP_BLOCK } from '../../../../shared/block/own-words';
import { guessRole } from '../../../../shared/tasks/map/guess-role';
import { drawnIn } from '../../../../shared/tasks/map/map-from-block';
import type { FarmMap, Role } from '../../../../shared/tasks/map/map-model';
import { standingBlock } from '../../../../shared/tasks/standing-block';
import { Notice } from '../../parts/notice';
import type { Book } from '../../parts/use-book';
import { useReset } from '../../parts/use-reset';
import { WithBook } from '../../parts/with-book';
import { CornersSection } from './corners-section';
import { MapResult } from './map-result';
import { ShapesSection } from './shapes-section';

export function MapPanel() {
  return <WithBook>{(book, reread) => <MapSteps book={book} onReread={reread} />}</WithBook>;
}

function MapSteps({ book, onReread }: { book: Book; onReread: () => void }) {
  const [map, setMap] = useState<FarmMap>();
  const [roles, setRoles] = useState<readonly Role[]>([]);
  const [isOutdated, setOutdated] = useState(false);
  const standing = standingBlock(book, MAP_BLOCK);
  const justWritten = useRef(false);
  useReset(standing && drawnIn(standing), () => {
    if (!map || justWritten.current) return;
    take(undefined);
    setOutdated(true);
  });
  useEffect(() => {
    justWritten.current = false;
  }, [book]);
  const take = (taken: FarmMap | undefined): void => {
    setMap(taken);
    setOutdated(false);
    setRoles(taken?.shapes.map(guessRole) ?? []);
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
          <ShapesSection
            map={map}
            roles={roles}
            onRole={(at, role) => setRoles(roles.map((old, i) => (i === at ? role : old)))}
          />
          <MapResult
            book={book}
            map={map}
            roles={roles}
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
