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
} from '../../../../shared/tasks/bite/bite-settings';
import { Choices } from '../../parts/choices';
import { InputField } from '../../parts/field';
import { SettingsFields } from '../../parts/task-fields';
import type { TaskState } from '../../parts/use-task';

/** Ohms and a pig's resistance: few know theirs. */
const TECHNICAL: readonly BiteKey[] = ['ohms', 'weeds', 'pig'];
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
      <LoadedVolts form={form} state={state} />
      <Choices
        legend="Growth on the line"
        value={growth}
        options={growth === AS_TYPED ? [...options, { value: AS_TYPED, text: 'As typed below' }] : options}
        onChange={(chosen) =>
          chosen !== AS_TYPED &&
          state.answer(labelOf('weeds'), String(growthSetting(chosen as Growth, units)))
        }
      />
      <p class="hint">What growth takes is an illustration: no published figure was found. Measure.</p>
      <details class="rests">
        <summary>More: ohms</summary>
        <SettingsFields form={part(true)} state={state} />
      </details>
    </>
  );
}

/** The inner resistance from what labels do say. */
function LoadedVolts({ form: { values, comma }, state }: Props) {
  const [typed, setTyped] = useState('');
  const read = readAmount(typed, comma);
  const loaded = 'value' in read ? read.value : undefined;
  const ohms = loaded === undefined ? undefined : innerOhms(values.volts ?? 0, loaded);
  const type = (text: string): void => {
    setTyped(text);
    const now = readAmount(text, comma);
    const inner = 'value' in now && now.value !== undefined && innerOhms(values.volts ?? 0, now.value);
    if (inner) state.answer(labelOf('ohms'), String(inner));
  };
  return (
    <InputField
      label={
        <>
          Its volts with 500 Ω on it, if the label says <span class="unit">(V)</span>
        </>
      }
      hint={ohms === undefined ? undefined : `That is ${ohms} Ω inside.`}
      problem={
        typed !== '' && ohms === undefined
          ? `Must be a number up to the volts without load (${values.volts ?? 0}), got ${typed}.`
          : undefined
      }
      value={typed}
      onChange={type}
    />
  );
}

function labelOf(key: BiteKey): string {
  return BITE_SETTINGS.find((spec) => spec.key === key)!.label;
}
