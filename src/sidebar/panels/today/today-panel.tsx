/** "See today at a glance": a page in the sheet for the phone, out of the rotation table. */

import { ROTATION_NAME } from '../../../../shared/block/own-words';
import { herdSource } from '../../../../shared/tasks/herd/herd-log';
import { standingBlock } from '../../../../shared/tasks/standing-block';
import { boundTable } from '../../../../shared/tasks/today/bound-table';
import { TODAY_BLOCK } from '../../../../shared/tasks/today/tick-words';
import { todayBlock } from '../../../../shared/tasks/today/today-block';
import { Notice } from '../../parts/notice';
import type { Book } from '../../parts/use-book';
import { WithBook } from '../../parts/with-book';
import { WriteBlock } from '../../parts/write-block';

export function TodayPanel() {
  return <WithBook>{(book, reread) => <TodaySteps book={book} onReread={reread} />}</WithBook>;
}

function TodaySteps({ book, onReread }: { book: Book; onReread: () => void }) {
  const table = tableOf(book);
  return (
    <>
      <p>
        A tab of its own that is read on the phone: where each group stands, what is next and when, what is
        late, water and feed of the day, what to carry. It follows the rotation table by itself, also without
        this page.
      </p>
      <p>
        Each group has a box <b>Moved</b>. Tick it on the day the group has moved: the day goes into Moved in
        of its next move, and the tick goes. Where it cannot be said which move is meant, a sentence stands
        beside the box and nothing is written.
      </p>
      {'problem' in table ? (
        <Notice kind="note">{table.problem}</Notice>
      ) : (
        <WriteBlock
          name={TODAY_BLOCK}
          what="today’s page"
          tabName="Today"
          before={firstTabOfOurs(book)}
          book={book}
          compose={(corner, _, now) => {
            const bound = tableOf(now);
            if ('problem' in bound) throw new Error(`${bound.problem} Nothing was written.`);
            return todayBlock(bound, corner, herdSource(now));
          }}
          onDone={onReread}
        />
      )}
    </>
  );
}

function tableOf(book: Book): ReturnType<typeof boundTable> {
  const block = standingBlock(book, ROTATION_NAME);
  return block
    ? boundTable(block)
    : { problem: 'There is no rotation table yet. Choose “Plan the moves” first: today’s page reads it.' };
}

/** Our tabs stand together; this one is the first of them. */
function firstTabOfOurs({ overview }: Book): string | undefined {
  const begin = (tab: string): boolean =>
    overview.blocks.some((block) => block.tab === tab && block.row === 1 && block.column === 1);
  return overview.tabs.find(({ name }) => begin(name))?.name;
}
