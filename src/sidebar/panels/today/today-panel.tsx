/** "See today at a glance": a page in the sheet for the phone, out of the rotation table. */
import { farmNow } from '../../../../shared/tasks/happened/farm-now';
import { TODAY_TASK } from '../../../../shared/tasks/today/today-task';
import { dayWords } from '../../parts/day-words';
import { Notice } from '../../parts/notice';
import { TaskScreen } from '../../parts/task-screen';
import type { Book } from '../../parts/use-book';
import { useTask } from '../../parts/use-task';
import { WithBook } from '../../parts/with-book';
import { nextWords, standsWords } from '../happened/words';
import * as words from './words';

export function TodayPanel() {
  return <WithBook>{(book) => <TodaySteps book={book} />}</WithBook>;
}

function TodaySteps({ book }: { book: Book }) {
  const state = useTask(TODAY_TASK, book);
  return (
    <TaskScreen
      task={TODAY_TASK}
      state={state}
      book={book}
      missing={state.form.questions.join(' ')}
      answer={<TodayCard book={book} />}
      more={
        <>
          <p>{words.TAB_FOR_PHONE}</p>
          <details class="rests">
            <summary>What stands on it, and its boxes</summary>
            <p>{words.WHAT_STANDS}</p>
            <p>{words.BOXES}</p>
          </details>
        </>
      }
    />
  );
}

/** As the page in the sheet will say it; nothing where there is no table to read. */
function TodayCard({ book }: { book: Book }) {
  const farm = farmNow(book);
  if ('missing' in farm) return null;
  return (
    <div class="answer">
      <p class="big">{dayWords(farm.today)}</p>
      <ul>
        {farm.cards.map((card) => (
          <li key={card.group}>
            <strong>{card.group}:</strong> {standsWords(card)} {card.next && nextWords(card, farm.today)}
            {card.training && <Notice kind="warning">{card.training}.</Notice>}
          </li>
        ))}
      </ul>
    </div>
  );
}
