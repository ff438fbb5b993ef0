/** "Keep the herd log": head and weights that change, a row each. */
import { useMemo } from 'preact/hooks';
import { type Day, dayFromIso } from '../../../../shared/core/calendar/day';
import type { ReadGroup } from '../../../../shared/lists/model';
import { groupWeightOn } from '../../../../shared/plan/group-weights';
import { herdOn } from '../../../../shared/plan/herd-on';
import { CHANGE_LABELS, HERD_TASK } from '../../../../shared/tasks/herd/herd-task';
import { logUnread } from '../../../../shared/tasks/herd/log-unread';
import { FIRST_ROW } from '../../../../shared/tasks/herd/words';
import { fromInside, symbolOf, type UnitSystem } from '../../../../shared/units/units';
import { count, dayWords } from '../../parts/day-words';
import { SelectField } from '../../parts/field';
import { SentencesNotice } from '../../parts/notice';
import { Hints } from '../../parts/sentence';
import { ChoiceField, TextField, unitsRest } from '../../parts/task-fields';
import { TaskScreen } from '../../parts/task-screen';
import type { Book } from '../../parts/use-book';
import { type TaskState, useTask } from '../../parts/use-task';
import { WithBook } from '../../parts/with-book';
import { WRITTEN_WITH_LOG } from '../../parts/words';
import * as words from './words';

type HerdForm = ReturnType<(typeof HERD_TASK)['read']>;

export function HerdPanel() {
  return <WithBook>{(book) => <HerdSteps book={book} />}</WithBook>;
}

function HerdSteps({ book }: { book: Book }) {
  const state = useTask(HERD_TASK, book);
  const { typed, problem, units, groups, wrong, notes, questions, renaming } = state.form;
  const unread = useMemo(() => logUnread(book), [book]);
  const warnings = [...wrong, ...(unread ? [unread] : [])];
  const onDone = (): void => {
    for (const label of [CHANGE_LABELS.head, CHANGE_LABELS.weight, CHANGE_LABELS.note]) {
      state.answer(label, undefined);
    }
  };
  const changed = [typed.head, typed.weight].some((text) => text.trim() !== '');
  return (
    <TaskScreen
      task={HERD_TASK}
      state={state}
      book={book}
      onDone={onDone}
      missing={questions.join(' ')}
      before={<SentencesNotice kind="warning" sentences={warnings} />}
      answer={
        <>
          {groups.length > 0 && <HerdNow groups={groups} book={book} units={units} />}
          {renaming && <ChoiceField choice={renaming} state={state} />}
        </>
      }
      rests={[
        {
          title: 'A change to add',
          words: changed ? `${typed.group}, from ${typed.day} on` : 'none; “What happened” records one too',
          isAsked: problem !== undefined,
          fields: <ChangeFields state={state} />,
        },
        ...(notes.length > 0 ? [{ title: words.HOW_READ, fields: <Hints sentences={notes} /> }] : []),
        ...unitsRest(state),
      ]}
    />
  );
}

function HerdNow({ groups, book, units }: Pick<HerdForm, 'groups' | 'units'> & { book: Book }) {
  const today = dayFromIso(book.overview.today) ?? 0;
  const all = groups.reduce((sum, group) => sum + herdOn(group, today).head, 0);
  return (
    <div class="answer">
      <p>
        <span class="big">{count(all, 'pig')}</span> in {count(groups.length, 'group')} today.
      </p>
      <ul>
        {groups.map((group) => (
          <li key={group.name}>{nowWords(group, today, units)}</li>
        ))}
      </ul>
    </div>
  );
}

function ChangeFields({ state }: { state: TaskState<HerdForm> }) {
  const { typed, problem, units, groups } = state.form;
  return (
    <>
      <SelectField
        label={CHANGE_LABELS.group}
        value={typed.group}
        options={groups.map(({ name }) => ({ value: name, text: name }))}
        onChange={(name) => state.answer(CHANGE_LABELS.group, name)}
      />
      <TextField type="date" label={CHANGE_LABELS.day} value={typed.day} state={state} />
      <TextField
        label={CHANGE_LABELS.head}
        hint={words.HEAD_NOTE}
        problem={problem}
        value={typed.head}
        state={state}
      />
      <TextField
        label={CHANGE_LABELS.weight}
        hint={`In ${symbolOf('mass', units)}.`}
        value={typed.weight}
        state={state}
      />
      <TextField label={CHANGE_LABELS.note} value={typed.note} state={state} />
      <p class="hint">{WRITTEN_WITH_LOG}</p>
      <details class="rests">
        <summary>{words.SPLIT_TITLE}</summary>
        <p>{FIRST_ROW}</p>
        <p>{words.SPLIT_OR_JOINED}</p>
      </details>
    </>
  );
}

function nowWords(group: ReadGroup, today: Day, units: UnitSystem): string {
  const { head, weighedOn } = herdOn(group, today);
  const weight = Math.round(fromInside(groupWeightOn(group, today), 'mass', units));
  return words.nowIs(group.name, head, weight, symbolOf('mass', units), dayWords(weighedOn));
}
