import { useState } from 'preact/hooks';
import type { WriteDone } from '../../../../shared/contract';
import { liveMoves } from '../../../../shared/table/frozen-rotation';
import type { RotationBlockInput } from '../../../../shared/table/model';
import { usePage } from '../../page';
import { readBook } from '../../parts/use-book';
import { useWork, type Work } from '../../parts/use-work';
import { freezeTable } from './freeze-table';
import { boundInput } from './table-input';
import { type Place, writeTable } from './write-table';

export interface Writer extends Work {
  /** Where the table was written last. */
  readonly done: WriteDone | undefined;
  readonly write: (input: Omit<RotationBlockInput, 'corner'>, place: Place) => void;
}

/** Writes the table. Afterwards, and also where it failed because the sheet has changed, the file is read again. */
export function useWrite(onReread: () => void): Writer {
  const work = useWork();
  const [done, setDone] = useState<WriteDone>();
  const { say } = usePage();
  const write: Writer['write'] = (input, place) =>
    work.start(async () => {
      setDone(undefined);
      say('Writing the table…');
      try {
        // Before anything is written, last season's figures among it.
        const bound = boundInput(input, await readBook());
        const before = place.at === 'own' ? undefined : place.replaces;
        if (before && liveMoves(before.rotation) > 0) await freezeTable(before, input.problem);
        const written = await writeTable(bound, place);
        setDone(written);
        say(`The table stands on ${written.block.tab}, ${written.a1}.`);
      } finally {
        onReread();
      }
    });
  return { ...work, done, write };
}
