/** "Draw the paddocks": corners in, what is what, the drawing, the list into the sheet. */
import { useState } from 'preact/hooks';
import type { Overview } from '../../../../shared/contract';
import { guessRole } from '../../../../shared/tasks/map/guess-role';
import type { FarmMap, Role } from '../../../../shared/tasks/map/map-model';
import { Button } from '../../parts/button';
import { Notice } from '../../parts/notice';
import { useFile } from '../../parts/use-file';
import { CornersSection } from './corners-section';
import { MapResult } from './map-result';
import { ShapesSection } from './shapes-section';

export function MapPanel() {
  const { file, busy, problem, read } = useFile();
  return (
    <>
      {problem && (
        <>
          <Notice kind="problem">{problem}</Notice>
          <Button onPress={read}>Read the spreadsheet again</Button>
        </>
      )}
      {busy && !file && <p aria-live="polite">Reading the spreadsheet…</p>}
      {file && <MapSteps file={file} onReread={read} />}
    </>
  );
}

function MapSteps({ file, onReread }: { file: Overview; onReread: () => void }) {
  const [map, setMap] = useState<FarmMap>();
  const [roles, setRoles] = useState<readonly Role[]>([]);
  const take = (taken: FarmMap | undefined): void => {
    setMap(taken);
    setRoles(taken?.shapes.map(guessRole) ?? []);
  };
  return (
    <>
      <h2>1. The corners</h2>
      <CornersSection file={file} onMap={take} />
      {map && (
        <>
          <h2>2. What is what</h2>
          <ShapesSection
            map={map}
            roles={roles}
            onRole={(at, role) => setRoles(roles.map((old, i) => (i === at ? role : old)))}
          />
          <MapResult file={file} map={map} roles={roles} onReread={onReread} />
        </>
      )}
    </>
  );
}
