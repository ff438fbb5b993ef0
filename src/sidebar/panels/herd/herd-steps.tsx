import { type Day, dayFromIso } from '../../../../shared/core/calendar/day';
import type { ReadGroup } from '../../../../shared/lists/model';
import { groupWeightOn } from '../../../../shared/plan/group-weights';
import { herdOn } from '../../../../shared/plan/herd-on';
import { CHANGE_LABELS, HERD_TASK } from '../../../../shared/tasks/herd/herd-task';
import { fromInside, symbolOf, type UnitSystem } from '../../../../shared/units/units';
import { dayWords } from '../../parts/day-words';
import { SelectField } from '../../parts/field';
import { Notice } from '../../parts/notice';
import { TextField, UnitsField } from '../../parts/task-fields';
import type { Book } from '../../parts/use-book';
import { useTask } from '../../parts/use-task';
import { WriteBlock } from '../../parts/write-block';

export function HerdSteps({ book, onReread }: { book: Book; onReread: () => void }) {
  const state = useTask(HERD_TASK, book);
  const { typed, problem, units, groups, notes, standing } = state.form;
  const onDone = (): void => {
    for (const label of [CHANGE_LABELS.head, CHANGE_LABELS.weight, CHANGE_LABELS.note]) {
      state.answer(label, undefined);
    }
    onReread();
  };
  return (
    <>
      <UnitsField state={state} />
      <h2>Now</h2>
      <ul>
        {groups.map((one) => (
          <li key={one.name}>{nowWords(one, dayFromIso(book.overview.today) ?? 0, units)}</li>
        ))}
      </ul>
      {notes.length > 0 && (
        <Notice kind="warning">
          <ul>
            {notes.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </Notice>
      )}
      <h2>What has changed</h2>
      <SelectField
        label={CHANGE_LABELS.group}
        value={typed.group}
        options={groups.map(({ name }) => ({ value: name, text: name }))}
        onChange={(name) => state.answer(CHANGE_LABELS.group, name)}
      />
      <TextField type="date" label={CHANGE_LABELS.day} value={typed.day} state={state} />
      <TextField
        label={CHANGE_LABELS.head}
        hint="Sold, died, joined: how many there are now. 0 when the last has gone."
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
      <p class="hint">
        Leave head and weight empty to write the log without a new row, and type into the sheet. A group that
        is not in it yet gets a first row from your list: from then on the log counts, and what you change in
        the list changes nothing that is past. Split: put the new group into your list, in from that day, and
        say here what is left of the old one. Joined: let one leave in the list on that day, and say here how
        many the other is.
      </p>
      <WriteBlock task={HERD_TASK} state={state} book={book} onDone={onDone} />
      {standing && (
        <p class="hint">
          Write the rotation table anew (“Plan the moves”), so that its moves to come read the log, and
          today’s page after it.
        </p>
      )}
    </>
  );
}

function nowWords(group: ReadGroup, today: Day, units: UnitSystem): string {
  const { head, weighedOn } = herdOn(group, today);
  const weight = Math.round(fromInside(groupWeightOn(group, today), 'mass', units));
  return `${group.name}: ${head} head, about ${weight} ${symbolOf('mass', units)} each; weighed last on ${dayWords(weighedOn)}.`;
}
