/** "Draw the paddocks": corners in, what is what, the drawing, the list into the sheet. */
import { useState } from 'preact/hooks';
import { guessRole } from '../../../../shared/tasks/map/guess-role';
import type { FarmMap, Role } from '../../../../shared/tasks/map/map-model';
import type { Book } from '../../parts/use-book';
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
  const take = (taken: FarmMap | undefined): void => {
    setMap(taken);
    setRoles(taken?.shapes.map(guessRole) ?? []);
  };
  return (
    <>
      <h2>1. The corners</h2>
      <CornersSection file={book.overview} onMap={take} />
      {map && (
        <>
          <h2>2. What is what</h2>
          <ShapesSection
            map={map}
            roles={roles}
            onRole={(at, role) => setRoles(roles.map((old, i) => (i === at ? role : old)))}
          />
          <MapResult book={book} map={map} roles={roles} onReread={onReread} />
        </>
      )}
    </>
  );
}
