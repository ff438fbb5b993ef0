/** Where a task's block goes and the button that writes it: a first time, or over the one that stands. */
import { useMemo, useState } from 'preact/hooks';
import { placeOf } from '../../../shared/tasks/place';
import { type How, ifWritten, type Written, writeTask } from '../../../shared/tasks/run-task';
import type { Standing } from '../../../shared/tasks/standing';
import type { Task } from '../../../shared/tasks/task';
import { usePage } from '../page';
import { ask } from '../server';
import { Button } from './button';
import { KeptNotice } from './kept-notice';
import { Notice } from './notice';
import { PlaceChoice } from './place-choice';
import { Sentence } from './sentence';
import { type Book, useReread } from './use-book';
import type { TaskState } from './use-task';
import { useWork } from './use-work';
import * as words from './words';
import { AstrayNotice, BesideNotice, TakenNotice, WrittenNotices } from './written-notices';

interface Props {
  readonly task: Task;
  readonly state: TaskState;
  readonly book: Book;
  /** What else is to happen once it is written. */
  readonly onDone?: (() => void) | undefined;
  /** Why nothing can be written yet. */
  readonly missing?: string;
}

export function WriteBlock({ task, state, book, onDone, missing = words.STILL_MISSING }: Props) {
  const { form, answers, answer } = state;
  const { standing, record, changes = [], warnings = [] } = form;
  const { what } = task;
  const place = placeOf(task, book.overview.tabs, answers);
  const [done, setDone] = useState<Written>();
  const work = useWork();
  const { say } = usePage();
  const reread = useReread();
  const outlook = useMemo(() => ifWritten(task, form, book), [task, form, book]);
  const isReady = form.plan !== undefined && (standing !== undefined || place.problem === undefined);
  const write = (how: How): void =>
    work.start(async () => {
      setDone(undefined);
      say(`Writing ${what}…`);
      const written = await writeTask(ask, task, book, form, answers, how);
      setDone(written);
      say(`Done: ${what} on ${written.block.tab}, ${written.a1}.`);
      onDone?.();
      reread(written.after);
    });
  return (
    <>
      <NotPart apart={standing?.apart} />
      {record && <Notice kind="note">{record}</Notice>}
      {standing ? (
        <p>{words.standsOn(standing.block.info.tab, takenIn(standing))}</p>
      ) : (
        form.plan !== undefined && <PlaceChoice of={task} place={place} answer={answer} />
      )}
      {form.plan === undefined && (
        <p>
          <Sentence text={missing} />
        </p>
      )}
      {changes.length > 0 && (
        <>
          <h3>What changes</h3>
          <ul>
            {changes.map((change) => (
              <li key={change}>
                <Sentence text={change} />
              </li>
            ))}
          </ul>
        </>
      )}
      {outlook && (
        <>
          <KeptNotice kept={outlook.kept} busy={work.busy} onPutBack={() => write({ putBack: true })} />
          <TakenNotice taken={outlook.taken} />
          <BesideNotice beside={outlook.beside} />
          <AstrayNotice astray={outlook.astray} />
        </>
      )}
      {warnings.length > 0 && <Notice kind="warning">{warnings.join(' ')}</Notice>}
      <Button kind="main" disabled={work.busy || !isReady} onPress={() => write({})}>
        {work.busy ? 'Writing…' : standing ? `Write ${what} anew` : `Write ${what}`}
      </Button>
      {work.problem && <Notice kind="problem">{work.problem}</Notice>}
      {done && <WrittenNotices {...done} next={task.next} />}
    </>
  );
}

function takenIn({ adoptRows, adoptColumns }: Standing): string {
  if (adoptColumns > 0) return words.COLUMNS_JOIN;
  if (adoptRows === 0) return '';
  return adoptRows === 1 ? words.ROW_JOINS : words.rowsJoin(adoptRows);
}

/** A cell below a table to type into that looks like a row of it and is none. */
function NotPart({ apart }: { apart: string | undefined }) {
  if (apart === undefined) return null;
  return <Notice kind="warning">{words.apart(apart)}</Notice>;
}
