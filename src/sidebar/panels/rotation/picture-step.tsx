import { useState } from 'preact/hooks';
import { type Written, writeTask } from '../../../../shared/tasks/run-task';
import { pictureTask } from '../../../../shared/tasks/season/picture-task';
import type { Sources } from '../../../../shared/tasks/task';
import { Button } from '../../parts/button';
import { Notice } from '../../parts/notice';
import type { Book } from '../../parts/use-book';
import { useWork } from '../../parts/use-work';
import { WrittenNotices } from '../../parts/written-notices';
import { ask } from '../../server';
import * as words from './words';

/** Writes the paddock × week picture of the season into the sheet, on a tab of its own. */
interface Props {
  readonly input: Parameters<typeof pictureTask>[0];
  /** What the plan rests on. */
  readonly sources: Sources;
  readonly book: Book;
}

export function PictureStep({ input, sources, book }: Props) {
  const work = useWork();
  const [done, setDone] = useState<Written>();
  const write = (): void =>
    work.start(async () => {
      setDone(undefined);
      const task = pictureTask(input, sources);
      setDone(await writeTask(ask, task, book, task.read(book, {}), {}));
    });
  return (
    <>
      <p class="hint">{words.DRAWN_ANEW}</p>
      <Button disabled={work.busy} onPress={write}>
        {work.busy ? 'Writing…' : 'Write the season as a picture in cells'}
      </Button>
      {work.problem && <Notice kind="problem">{work.problem}</Notice>}
      {done && <WrittenNotices {...done} />}
    </>
  );
}
