import { MATERIALS_CAUTIONS } from '../../../../shared/tasks/materials/materials-block';
import { MATERIALS_TASK } from '../../../../shared/tasks/materials/materials-task';
import { strandsForWeight } from '../../../../shared/tasks/materials/strands-for-weight';
import { toInside } from '../../../../shared/units/units';
import { Cautions } from '../../parts/cautions';
import { ChoiceField, SettingsFields, SheetProblems, UnitsField } from '../../parts/task-fields';
import type { Book } from '../../parts/use-book';
import { useTask } from '../../parts/use-task';
import { WriteBlock } from '../../parts/write-block';
import { LayoutSection } from './layout-section';
import { MaterialsResult } from './materials-result';

/** Settings that every farm sets; the others wait behind "More settings". */
const MAIN_KEYS = ['pigWeight', 'strands', 'postSpacing', 'publicSide', 'standing'];

export function MaterialsSteps({ book, onReread }: { book: Book; onReread: () => void }) {
  const state = useTask(MATERIALS_TASK, book);
  const { plan, layout, at, together, settings, comparison, units } = state.form;
  const main = settings.specs.filter(({ key }) => MAIN_KEYS.includes(key));
  const more = settings.specs.filter(({ key }) => !MAIN_KEYS.includes(key));
  const strands = strandsForWeight(toInside(settings.values.pigWeight ?? 0, 'mass', units));
  return (
    <>
      <UnitsField state={state} />
      <h2>1. What is fenced</h2>
      <LayoutSection layout={layout} state={state} units={units} onReread={onReread} />
      <ChoiceField choice={at} state={state} />
      {together && <SettingsFields form={together} state={state} />}
      <h2>2. How it is built</h2>
      <SettingsFields form={{ ...settings, specs: main }} state={state} />
      {settings.values.strands !== strands && (
        <p class="hint">
          For pigs of that weight {strands} strands are the usual start (two: extension, second hand; three
          for the smallest: judgement).
        </p>
      )}
      <details open={more.some(({ key }) => settings.problems[key] !== undefined)}>
        <summary>More settings</summary>
        <SettingsFields form={{ ...settings, specs: more }} state={state} />
      </details>
      <details open={!comparison.ok}>
        <summary>Comparison with fixed fence</summary>
        <SettingsFields form={comparison} state={state} />
      </details>
      <SheetProblems state={state} />
      <h2>3. What it takes</h2>
      {plan ? <MaterialsResult plan={plan} /> : <p class="hint">Fill in what is missing above.</p>}
      <Cautions sentences={MATERIALS_CAUTIONS} />
      <h2>4. Into the sheet</h2>
      <p class="hint">
        There you type what you have and what things cost; what to buy and its cost follow, and the comparison
        with woven wire and panels.
      </p>
      <WriteBlock task={MATERIALS_TASK} state={state} book={book} onDone={onReread} />
    </>
  );
}
