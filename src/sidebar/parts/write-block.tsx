/** Where a task's block goes and the button that writes it: a first time, or over the one that stands. */
import { useMemo, useState } from 'preact/hooks';
import { areaA1 } from '../../../shared/block/a1';
import { placeOf } from '../../../shared/tasks/place';
import { type How, keptIfWritten, type Written, writeTask } from '../../../shared/tasks/run-task';
import type { Task } from '../../../shared/tasks/task';
import { usePage } from '../page';
import { ask } from '../server';
import { Button } from './button';
import { KeptNotice } from './kept-notice';
import { Notice } from './notice';
import { PlaceChoice } from './place-choice';
import type { Book } from './use-book';
import type { TaskState } from './use-task';
import { useWork } from './use-work';
import { WrittenNotices } from './written-notices';

interface Props {
  readonly task: Task;
  readonly state: TaskState;
  readonly book: Book;
  readonly onDone: () => void;
}

export function WriteBlock({ task, state, book, onDone }: Props) {
  const { form, answers, answer } = state;
  const { what } = task;
  const tabs = book.overview.tabs.map(({ name }) => name);
  const place = placeOf(task, tabs, answers);
  const [done, setDone] = useState<Written>();
  const work = useWork();
  const { say } = usePage();
  const kept = useMemo(() => keptIfWritten(task, form), [task, form]);
  const standing = form.standing?.block.info;
  const isReady = form.plan !== undefined && (standing !== undefined || place.problem === undefined);
  const write = (how: How): void =>
    work.start(async () => {
      setDone(undefined);
      say(`Writing ${what}…`);
      const written = await writeTask(ask, task, form, answers, how);
      setDone(written);
      say(`Done: ${what} on ${written.block.tab}, ${written.a1}.`);
      onDone();
    });
  return (
    <>
      <NotPart apart={form.standing?.apart} />
      {form.record && <Notice kind="note">{form.record}</Notice>}
      {standing ? (
        <p>
          A table of this kind stands on “{standing.tab}”, {areaA1(standing)}. It is written anew there; what
          you typed in it is kept, or you are told. {rowsTaken(form.standing?.adoptRows ?? 0)}
        </p>
      ) : (
        <PlaceChoice of={task} place={place} answer={answer} />
      )}
      {form.plan === undefined && <p class="hint">Something above is still missing or wrong.</p>}
      {kept && <KeptNotice kept={kept} busy={work.busy} onPutBack={() => write({ putBack: true })} />}
      <Button kind="main" disabled={work.busy || !isReady} onPress={() => write({})}>
        {work.busy ? 'Writing…' : standing ? `Write ${what} anew` : `Write ${what}`}
      </Button>
      {work.problem && <Notice kind="problem">{work.problem}</Notice>}
      {done && <WrittenNotices {...done} />}
    </>
  );
}

function rowsTaken(rows: number): string {
  if (rows === 0) return '';
  return rows === 1
    ? 'The filled row right below it becomes part of it.'
    : `The ${rows} filled rows right below it become part of it.`;
}

/** A cell below a table to type into that looks like a row of it and is none. */
function NotPart({ apart }: { apart: string | undefined }) {
  if (apart === undefined) return null;
  return (
    <Notice kind="warning">
      What stands from {apart} on is not part of this table and does not count. Rows that belong to it stand
      right below its last row, without a blank row or a line of words between.
    </Notice>
  );
}
