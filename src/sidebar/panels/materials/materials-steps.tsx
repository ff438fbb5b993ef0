import { MATERIALS_CAUTIONS } from '../../../../shared/tasks/materials/materials-block';
import { MATERIALS_TASK } from '../../../../shared/tasks/materials/materials-task';
import { strandsForWeight } from '../../../../shared/tasks/materials/strands-for-weight';
import { toInside } from '../../../../shared/units/units';
import { ChoiceField, SettingsFields, unitsRest } from '../../parts/task-fields';
import { settingsWords, TaskScreen } from '../../parts/task-screen';
import type { Book } from '../../parts/use-book';
import { useTask } from '../../parts/use-task';
import { LayoutSection } from './layout-section';
import { MaterialsNeeded, MaterialsResult } from './materials-result';

/** Settings that every farm sets; the others wait behind "More settings". */
const MAIN_KEYS = ['pigWeight', 'strands', 'postSpacing', 'publicSide', 'standing'];

export function MaterialsSteps({ book, onReread }: { book: Book; onReread: () => void }) {
  const state = useTask(MATERIALS_TASK, book);
  const { plan, layout, at, together, settings, comparison, units } = state.form;
  const main = settings.specs.filter(({ key }) => MAIN_KEYS.includes(key));
  const more = settings.specs.filter(({ key }) => !MAIN_KEYS.includes(key));
  const strands = strandsForWeight(toInside(settings.values.pigWeight ?? 0, 'mass', units));
  return (
    <TaskScreen
      task={MATERIALS_TASK}
      state={state}
      book={book}
      onDone={onReread}
      answer={plan && <MaterialsResult plan={plan} />}
      more={plan && <MaterialsNeeded plan={plan} />}
      cautions={MATERIALS_CAUTIONS}
      rests={[
        {
          title: 'What is fenced',
          words: layout.kind.options[layout.kind.value],
          isAsked: plan === undefined && settings.ok && comparison.ok,
          fields: (
            <>
              <LayoutSection layout={layout} state={state} units={units} onReread={onReread} />
              <ChoiceField choice={at} state={state} />
              {together && <SettingsFields form={together} state={state} />}
            </>
          ),
        },
        {
          title: 'How it is built',
          words: settingsWords({ ...settings, specs: main }),
          isAsked: !settings.ok,
          fields: (
            <>
              <SettingsFields form={{ ...settings, specs: main }} state={state} />
              {settings.values.strands !== strands && (
                <p class="hint">
                  For pigs of that weight {strands} strands are the usual start (two: extension, second hand;
                  three for the smallest: judgement).
                </p>
              )}
            </>
          ),
        },
        {
          title: 'More settings',
          isAsked: more.some(({ key }) => settings.problems[key] !== undefined),
          fields: <SettingsFields form={{ ...settings, specs: more }} state={state} />,
        },
        {
          title: 'Comparison with fixed fence',
          isAsked: !comparison.ok,
          fields: <SettingsFields form={comparison} state={state} />,
        },
        ...unitsRest(state),
      ]}
    />
  );
}
