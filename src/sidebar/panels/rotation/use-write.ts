import { useState } from 'preact/hooks';
import type { WriteDone } from '../../../../shared/contract';
import { liveMoves } from '../../../../shared/table/frozen-rotation';
import type { RotationBlockInput } from '../../../../shared/table/model';
import { oldTable, refuseTyped } from '../../../../shared/tasks/rotation/old-table';
import { boundInput } from '../../../../shared/tasks/rotation/table-input';
import { usePage } from '../../page';
import { readBook } from '../../parts/use-book';
import { useWork, type Work } from '../../parts/use-work';
import { freezeTable } from './freeze-table';
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
        const book = await readBook();
        const bound = boundInput(input, book);
        const known = place.at === 'own' ? place.old : place.replaces;
        const now = known && oldTable(book);
        if (known) refuseTyped(known, now);
        if (place.at !== 'own' && now && liveMoves(now.rotation) > 0) await freezeTable(now, input.problem);
        const written = await writeTable(bound, place.at === 'own' && now ? { ...place, old: now } : place);
        setDone(written);
        say(`The table stands on ${written.block.tab}, ${written.a1}.`);
      } finally {
        onReread();
      }
    });
  return { ...work, done, write };
}
