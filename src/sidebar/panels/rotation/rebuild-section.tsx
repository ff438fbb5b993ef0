import { areaA1 } from '../../../../shared/block/a1';
import { usePage } from '../../page';
import { Button } from '../../parts/button';
import { Notice } from '../../parts/notice';
import type { Work } from '../../parts/use-work';
import type { OldTable } from './old-table';

interface Props {
  readonly old: OldTable;
  /** What the new table changes, in sentences. */
  readonly changes: readonly string[];
  readonly work: Work;
  readonly onWrite: () => void;
}

/** A table stands already: what building it anew changes, and the button that does it. */
export function RebuildSection({ old, changes, work, onWrite }: Props) {
  const { say } = usePage();
  return (
    <>
      <p>
        The table on “{old.info.tab}”, {areaA1(old.info)}, is built anew in its place. Moves that really
        happened, typed days, cover, notes and your own columns stay.
      </p>
      <h3>What changes</h3>
      <ul>
        {changes.map((change) => (
          <li key={change}>{change}</li>
        ))}
      </ul>
      <Button
        kind="main"
        disabled={work.busy}
        onPress={() => {
          say('Writing the table…');
          onWrite();
        }}
      >
        {work.busy ? 'Writing…' : 'Build the table anew'}
      </Button>
      {work.problem && <Notice kind="problem">{work.problem}</Notice>}
    </>
  );
}
