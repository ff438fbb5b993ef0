/** "See today at a glance": a page in the sheet for the phone, out of the rotation table. */
import { TODAY_TASK } from '../../../../shared/tasks/today/today-task';
import { Notice } from '../../parts/notice';
import type { Book } from '../../parts/use-book';
import { useTask } from '../../parts/use-task';
import { WithBook } from '../../parts/with-book';
import { WriteBlock } from '../../parts/write-block';

export function TodayPanel() {
  return <WithBook>{(book, reread) => <TodaySteps book={book} onReread={reread} />}</WithBook>;
}

function TodaySteps({ book, onReread }: { book: Book; onReread: () => void }) {
  const state = useTask(TODAY_TASK, book);
  const { questions } = state.form;
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
      {questions.length > 0 ? (
        <Notice kind="note">{questions.join(' ')}</Notice>
      ) : (
        <WriteBlock task={TODAY_TASK} state={state} book={book} onDone={onReread} />
      )}
    </>
  );
}
