import { WALK_CAUTION } from '../../../../shared/tasks/bite/walk-block';
import { walkSentence, walksOf } from '../../../../shared/tasks/bite/walk-log';
import { READING_LABELS, WALK_TASK } from '../../../../shared/tasks/bite/walk-task';
import { Cautions } from '../../parts/cautions';
import { dayWords } from '../../parts/day-words';
import { Notice } from '../../parts/notice';
import { SettingsFields, TextField } from '../../parts/task-fields';
import type { Book } from '../../parts/use-book';
import { useTask } from '../../parts/use-task';
import { WriteBlock } from '../../parts/write-block';
import { VoltTrend } from './volt-trend';

export function WalkSteps({ book, onReread }: { book: Book; onReread: () => void }) {
  const state = useTask(WALK_TASK, book);
  const { log, typed, readingProblem, settings } = state.form;
  const walks = walksOf(log?.readings ?? []);
  const level = settings.values.level ?? 0;
  const onDone = (): void => {
    state.answer(READING_LABELS.volts, undefined);
    state.answer(READING_LABELS.found, undefined);
    onReread();
  };
  return (
    <>
      {log && (
        <>
          <h2>So far</h2>
          <VoltTrend walks={walks} level={level} />
          <p>{walkSentence(walks, level, dayWords)}</p>
        </>
      )}
      {log && log.problems.length > 0 && (
        <Notice kind="warning">
          Rows that cannot be counted (they are kept):
          <ul>
            {log.problems.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </Notice>
      )}
      <h2>A reading</h2>
      <TextField type="date" label={READING_LABELS.day} value={typed.day} state={state} />
      <TextField
        label={READING_LABELS.place}
        hint="For example “far corner, Lane 3”."
        value={typed.place}
        state={state}
      />
      <TextField label={READING_LABELS.volts} problem={readingProblem} value={typed.volts} state={state} />
      <TextField label={READING_LABELS.found} value={typed.found} state={state} />
      <SettingsFields form={settings} state={state} />
      <Cautions sentences={[WALK_CAUTION]} />
      <p class="hint">
        Leave the volts empty to write the log without a new reading, and type into the sheet.
      </p>
      <WriteBlock task={WALK_TASK} state={state} book={book} onDone={onDone} />
    </>
  );
}
