/** The fields of a task's form: what was answered stands in them, else what the sheet says. */
import { type ChoiceForm, type SettingsForm, UNITS_LEGEND, UNITS_OPTIONS } from '../../../shared/tasks/ask';
import { settingNote, settingUnit } from '../../../shared/tasks/settings';
import { Choices } from './choices';
import { InputField, type InputProps } from './field';
import { Notice } from './notice';
import type { TaskState } from './use-task';

interface SettingsProps<Key extends string> {
  readonly form: SettingsForm<Key>;
  readonly state: TaskState;
}

export function SettingsFields<Key extends string>({ form, state }: SettingsProps<Key>) {
  const { specs, values, problems, units, comma } = form;
  return (
    <>
      {specs.map((spec) => (
        <InputField
          key={spec.key}
          label={
            <>
              {spec.label} <span class="unit">({settingUnit(spec, units)})</span>
            </>
          }
          hint={settingNote(spec, units)}
          problem={problems[spec.key]}
          value={(state.answers[spec.label] as string | undefined) ?? shown(values[spec.key], comma)}
          onChange={(text) => state.answer(spec.label, text)}
        />
      ))}
    </>
  );
}

function shown(value: number | undefined, comma: boolean): string {
  if (value === undefined || Number.isNaN(value)) return '';
  const text = String(Math.round(value * 1000) / 1000);
  return comma ? text.replace('.', ',') : text;
}

export function ChoiceField({ choice, state }: { choice: ChoiceForm; state: TaskState }) {
  return (
    <Choices
      legend={choice.legend}
      value={choice.value}
      options={Object.entries(choice.options).map(([value, text]) => ({ value, text }))}
      onChange={(key) => state.answer(choice.legend, choice.options[key])}
    />
  );
}

export function TextField({
  state,
  ...props
}: Omit<InputProps, 'onChange' | 'label'> & { label: string; state: TaskState }) {
  return <InputField {...props} onChange={(text) => state.answer(props.label, text)} />;
}

/** Asked until a table stands that is in some. */
export function UnitsField({ state }: { state: TaskState }) {
  const { labels, taken } = state.form;
  if (!labels.includes(UNITS_LEGEND)) return null;
  const value = taken[UNITS_LEGEND] === UNITS_OPTIONS.US ? 'US' : 'metric';
  return <ChoiceField choice={{ legend: UNITS_LEGEND, options: UNITS_OPTIONS, value }} state={state} />;
}

/** The units as something that the answer rests on. */
export function unitsRest(state: TaskState) {
  const { labels, taken } = state.form;
  if (!labels.includes(UNITS_LEGEND)) return [];
  return [{ title: UNITS_LEGEND, words: String(taken[UNITS_LEGEND]), fields: <UnitsField state={state} /> }];
}

/** What stands wrong in cells of the table. */
export function SheetProblems({ state }: { state: TaskState }) {
  return (
    <>
      {state.form.sheetProblems.map((problem) => (
        <Notice key={problem} kind="problem">
          {problem}
        </Notice>
      ))}
    </>
  );
}
