import { walkSentence, walksOf } from '../../../../shared/tasks/bite/walk-log';
import { READING_LABELS, WALK_TASK } from '../../../../shared/tasks/bite/walk-task';
import { WALK_CAUTION } from '../../../../shared/tasks/bite/words';
import { dayWords } from '../../parts/day-words';
import { SentencesNotice } from '../../parts/notice';
import { SettingsFields, TextField } from '../../parts/task-fields';
import { settingsWords, TaskScreen } from '../../parts/task-screen';
import type { Book } from '../../parts/use-book';
import { useTask } from '../../parts/use-task';
import { WRITTEN_WITH_LOG } from '../../parts/words';
import { VoltTrend } from './volt-trend';
import * as words from './words';

export function WalkSteps({ book }: { book: Book }) {
  const state = useTask(WALK_TASK, book);
  const { log, typed, readingProblem, settings } = state.form;
  const walks = walksOf(log?.readings ?? []);
  const last = walks[walks.length - 1];
  const level = settings.values.level ?? 0;
  const onDone = (): void => {
    state.answer(READING_LABELS.volts, undefined);
    state.answer(READING_LABELS.found, undefined);
  };
  return (
    <TaskScreen
      task={WALK_TASK}
      state={state}
      book={book}
      onDone={onDone}
      before={<SentencesNotice kind="warning" lead={words.NOT_COUNTED} sentences={log?.problems ?? []} />}
      answer={
        <div class="answer">
          {last && (
            <p>
              <span class="big">{last.lowest} V</span> at the lowest on {dayWords(last.day)}.
            </p>
          )}
          <VoltTrend walks={walks} level={level} />
          <p>{walkSentence(walks, level, dayWords)}</p>
        </div>
      }
      cautions={[WALK_CAUTION]}
      rests={[
        {
          title: 'A reading to add',
          words: typed.volts.trim() === '' ? 'none' : `${typed.volts} V on ${typed.day}`,
          isAsked: readingProblem !== undefined,
          fields: (
            <>
              <TextField type="date" label={READING_LABELS.day} value={typed.day} state={state} />
              <TextField
                label={READING_LABELS.place}
                hint={words.WHERE_EXAMPLE}
                value={typed.place}
                state={state}
              />
              <TextField
                label={READING_LABELS.volts}
                problem={readingProblem}
                value={typed.volts}
                state={state}
              />
              <TextField label={READING_LABELS.found} value={typed.found} state={state} />
              <p class="hint">{WRITTEN_WITH_LOG}</p>
            </>
          ),
        },
        {
          title: 'Your level',
          words: settingsWords(settings),
          isAsked: !settings.ok,
          fields: <SettingsFields form={settings} state={state} />,
        },
      ]}
    />
  );
}
