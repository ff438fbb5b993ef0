import { areaA1 } from '../../../../shared/block/a1';
import { Button } from '../../parts/button';
import type { OldTable } from './old-table';

interface Props {
  readonly old: OldTable;
  /** What the new table changes, in sentences. */
  readonly changes: readonly string[];
  readonly busy: boolean;
  readonly onWrite: () => void;
}

/** A table stands already: what building it anew changes, and the button that does it. */
export function RebuildSection({ old, changes, busy, onWrite }: Props) {
  return (
    <>
      <p>
        The table on “{old.info.tab}”, {areaA1(old.info)}, is built anew in its place. Moves that really
        happened stay. Days typed under Moved in, cover, notes and your own columns stay; Days and Paddock of
        moves still to come are planned anew.
      </p>
      <h3>What changes</h3>
      <ul>
        {changes.map((change) => (
          <li key={change}>{change}</li>
        ))}
      </ul>
      <Button kind="main" disabled={busy} onPress={onWrite}>
        {busy ? 'Writing…' : 'Build the table anew'}
      </Button>
    </>
  );
}
