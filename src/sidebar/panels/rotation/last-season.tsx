import { liveMoves } from '../../../../shared/table/frozen-rotation';
import type { StandingRotation } from '../../../../shared/tasks/rotation/rotation-standing';
import { KEEP_FIGURES_TASK } from '../../../../shared/tasks/rotation/rotation-task';
import { writeTask } from '../../../../shared/tasks/run-task';
import { Button } from '../../parts/button';
import { Notice } from '../../parts/notice';
import { type Book, useReread } from '../../parts/use-book';
import { useWork } from '../../parts/use-work';
import { ask } from '../../server';
import * as words from './words';

interface Props {
  readonly old: StandingRotation;
  readonly book: Book;
}

/** The record of a season must not change with the lists of the next one. */
export function KeepFigures({ old, book }: Props) {
  const work = useWork();
  const reread = useReread();
  const live = liveMoves(old.rotation);
  if (live === 0) return null;
  const keep = (): void =>
    work.start(async () => {
      const form = KEEP_FIGURES_TASK.read(book, {});
      reread((await writeTask(ask, KEEP_FIGURES_TASK, book, form, {})).after);
    });
  return (
    <>
      <Notice kind="warning">{words.stillShow(live, old.block.info.tab)}</Notice>
      <Button disabled={work.busy} onPress={keep}>
        {work.busy ? 'Writing…' : 'Keep the figures of this season'}
      </Button>
      {work.problem && <Notice kind="problem">{work.problem}</Notice>}
    </>
  );
}
