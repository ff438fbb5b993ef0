import { useState } from 'preact/hooks';
import { readAmount } from '../../../../shared/locale/read-amount';
import type { SettingsForm } from '../../../../shared/tasks/ask';
import {
  BITE_SETTINGS,
  type BiteKey,
  GROWTH,
  type Growth,
  growthSetting,
  innerOhms,
  labelVolts,
} from '../../../../shared/tasks/bite/bite-settings';
import { Choices } from '../../parts/choices';
import { InputField } from '../../parts/field';
import { SettingsFields } from '../../parts/task-fields';
import type { TaskState } from '../../parts/use-task';
import * as words from './words';

/** Ohms and a pig's resistance: few know theirs. */
export const TECHNICAL: readonly BiteKey[] = ['ohms', 'weeds', 'pig'];
const AS_TYPED = 'typed';

interface Props {
  readonly form: SettingsForm<BiteKey>;
  readonly state: TaskState;
}

/** Volts and growth in plain words; the ohms behind them can be typed under "More". */
export function EnergizerFields({ form, state }: Props) {
  const { units, values } = form;
  const part = (isTechnical: boolean) => ({
    ...form,
    specs: form.specs.filter(({ key }) => TECHNICAL.includes(key) === isTechnical),
  });
  const growths = Object.keys(GROWTH) as Growth[];
  const growth = growths.find((one) => growthSetting(one, units) === values.weeds) ?? AS_TYPED;
  const options = growths.map((value) => ({ value: value as string, text: GROWTH[value].words }));
  return (
    <>
      <SettingsFields form={part(false)} state={state} />
      <LabelField
        label="Its output in joules, by the label"
        unit="J"
        hint={words.MEASURED_BETTER}
        voltsOf={labelVolts}
        form={form}
        state={state}
      />
      <Choices
        legend="Growth on the line"
        value={growth}
        options={growth === AS_TYPED ? [...options, { value: AS_TYPED, text: 'As typed below' }] : options}
        onChange={(chosen) =>
          chosen !== AS_TYPED &&
          state.answer(labelOf('weeds'), String(growthSetting(chosen as Growth, units)))
        }
      />
      <p class="hint">{words.GROWTH_NOTE}</p>
      <details class="rests">
        <summary>More: ohms</summary>
        <LabelField label={words.VOLTS_500} unit="V" voltsOf={(volts) => volts} form={form} state={state} />
        <SettingsFields form={part(true)} state={state} />
      </details>
    </>
  );
}

interface LabelProps extends Props {
  readonly label: string;
  readonly unit: string;
  readonly hint?: string;
  /** Volts with the test load on, from what the label says. */
  readonly voltsOf: (typed: number) => number;
}

/** What labels do say, for the inner resistance that they do not. */
function LabelField({ label, unit, hint, voltsOf, form: { values, comma }, state }: LabelProps) {
  const [typed, setTyped] = useState('');
  const ohmsOf = (text: string): number | undefined => {
    const read = readAmount(text, comma);
    const value = 'value' in read ? read.value : undefined;
    return value === undefined ? undefined : innerOhms(values.volts ?? 0, voltsOf(value));
  };
  const type = (text: string): void => {
    setTyped(text);
    const ohms = ohmsOf(text);
    if (ohms !== undefined) state.answer(labelOf('ohms'), String(ohms));
  };
  return (
    <InputField
      label={
        <>
          {label} <span class="unit">({unit})</span>
        </>
      }
      hint={hint}
      problem={
        typed !== '' && ohmsOf(typed) === undefined ? words.badVolts(values.volts ?? 0, typed) : undefined
      }
      value={typed}
      onChange={type}
    />
  );
}

function labelOf(key: BiteKey): string {
  return BITE_SETTINGS.find((spec) => spec.key === key)!.label;
}
