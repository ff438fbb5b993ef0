import { useState } from 'preact/hooks';
import type { BlockContent } from '../../../../shared/block/read-block';
import { startUnits } from '../../../../shared/lists/start-units';
import { standingOf } from '../../../../shared/tasks/standing';
import { letLogDecide } from '../../../../shared/tasks/training/let-log-decide';
import { LOG_BLOCK } from '../../../../shared/tasks/training/log-block';
import { useLists } from '../../lists/use-lists';
import { usePage } from '../../page';
import { Button } from '../../parts/button';
import { Notice, SentencesNotice } from '../../parts/notice';
import { type Book, readBook } from '../../parts/use-book';
import { useWork } from '../../parts/use-work';
import { ask } from '../../server';
import * as words from './words';

interface Props {
  readonly book: Book;
  readonly log: BlockContent;
  /** The formula for a name in A6. */
  readonly lookup: string;
  readonly onDone: () => void;
}

/** Lets the rotation wait for the log: its day goes into the group list's own column. */
export function LogDecides({ book, log, lookup, onDone }: Props) {
  const lists = useLists(book, startUnits(book));
  const work = useWork();
  const { say } = usePage();
  const [done, setDone] = useState<string>();
  const source = lists.sources.groups;
  const decides = source && letLogDecide(log, source, lists.groups);
  const fill = (): void =>
    work.start(async () => {
      setDone(undefined);
      const now = standingOf(await readBook(), LOG_BLOCK)?.reading;
      if (!decides || !now || JSON.stringify(now.info) !== JSON.stringify(log.info)) {
        throw new Error(words.LOG_MOVED);
      }
      await ask('changeCells', { cells: [...decides.cells] });
      const done = words.follows(decides.tab);
      setDone(done);
      say(done);
      onDone();
    });
  return (
    <>
      <h2>Let the rotation wait for it</h2>
      <p>{words.CAN_WAIT}</p>
      <SentencesNotice kind="note" sentences={decides?.told ?? []} />
      {decides && decides.cells.length > 0 && (
        <Button disabled={work.busy} onPress={fill}>
          {work.busy ? 'Writing…' : 'Let the log decide when they may go out'}
        </Button>
      )}
      {work.problem && <Notice kind="problem">{work.problem}</Notice>}
      {done && (
        <Notice kind="done" takeFocus>
          {done}
        </Notice>
      )}
      <details class="rests">
        <summary>By hand</summary>
        <p>
          {words.TYPE_THIS}
          <code class="wrap">{lookup}</code>
        </p>
      </details>
    </>
  );
}
