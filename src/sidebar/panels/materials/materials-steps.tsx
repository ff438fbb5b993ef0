import { buyList } from '../../../../shared/tasks/materials/buy-list';
import { otherSettings } from '../../../../shared/tasks/materials/fence-types';
import { materialsCautions } from '../../../../shared/tasks/materials/materials-block';
import { MATERIALS_TASK } from '../../../../shared/tasks/materials/materials-task';
import { ChoiceField, SettingsFields, unitsRest } from '../../parts/task-fields';
import { settingsWords, TaskScreen } from '../../parts/task-screen';
import type { Book } from '../../parts/use-book';
import { useTask } from '../../parts/use-task';
import { LayoutSection } from './layout-section';
import { MaterialsLengths, MaterialsResult } from './materials-result';

/** Settings that every farm sets; the others wait behind "More settings". */
const MAIN_KEYS = [
  'groups',
  'netLength',
  'strands',
  'postSpacing',
  'pigWeight',
  'publicSide',
  'standing',
  'energizerJoules',
];

export function MaterialsSteps({ book, onReread }: { book: Book; onReread: () => void }) {
  const state = useTask(MATERIALS_TASK, book);
  const { plan, kind, layout, at, together, settings, comparison, onHand, stock, units } = state.form;
  const list = plan && buyList(plan, plan.typed);
  const specs = settings.specs.filter(({ key }) => !otherSettings(kind.value).includes(key));
  const main = specs.filter(({ key }) => MAIN_KEYS.includes(key));
  const more = specs.filter(({ key }) => !MAIN_KEYS.includes(key));
  return (
    <TaskScreen
      task={MATERIALS_TASK}
      state={state}
      book={book}
      answer={plan && list && <MaterialsResult plan={plan} list={list} />}
      more={plan && list && <MaterialsLengths plan={plan} list={list} />}
      cautions={materialsCautions(kind.value)}
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
          title: 'What it is made of',
          words: `${kind.options[kind.value]}; ${settingsWords({ ...settings, specs: main })}`,
          isAsked: !settings.ok,
          fields: (
            <>
              <ChoiceField choice={kind} state={state} />
              <SettingsFields form={{ ...settings, specs: main }} state={state} />
            </>
          ),
        },
        {
          title: 'What you have, what things cost',
          words: stock && `from “${stock.tab}”`,
          isAsked: !onHand.ok,
          fields: (
            <>
              {stock?.notes.map((note) => (
                <p key={note} class="hint">
                  {note}
                </p>
              ))}
              <SettingsFields form={onHand} state={state} />
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
