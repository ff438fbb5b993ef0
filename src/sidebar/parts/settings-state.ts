import { useRef, useState } from 'preact/hooks';
import { type SettingSpec, type SettingValues, startSettings } from '../../../shared/tasks/settings';
import type { UnitSystem } from '../../../shared/units/units';
import { type ReadSettings, readTypedSettings, type TypedSettings } from './settings-fields';
import { useReset } from './use-reset';

export interface SettingsState<Key extends string> {
  readonly typed: TypedSettings<Key>;
  readonly read: ReadSettings<Key>;
  readonly setTyped: (typed: TypedSettings<Key>) => void;
}

/** Numbers of a task: start values, over them what stands in the block, over them what is typed on the page. */
export function useSettings<Key extends string>(
  specs: readonly SettingSpec<Key>[],
  standing: Partial<Record<Key, number | undefined>>,
  options: { units: UnitSystem; comma: boolean },
): SettingsState<Key> {
  const [typed, setTyped] = useState<TypedSettings<Key>>({} as TypedSettings<Key>);
  const last = useRef(standing);
  useReset(standing, () => {
    setTyped((now) => withoutChanged(now, last.current, standing));
    last.current = standing;
  });
  const values = { ...startSettings(specs, options.units), ...standing } as SettingValues<Key>;
  const read = readTypedSettings(specs, typed, values, options);
  return { typed, setTyped, read: { ...read, problems: withoutUntouched(read.problems, typed, values) } };
}

/** A number that has changed in the sheet takes the place of what was typed here before. */
function withoutChanged<Key extends string>(
  typed: TypedSettings<Key>,
  before: Partial<Record<Key, number | undefined>>,
  now: Partial<Record<Key, number | undefined>>,
): TypedSettings<Key> {
  const keys = (Object.keys(typed) as Key[]).filter((key) => before[key] === now[key]);
  return Object.fromEntries(keys.map((key) => [key, typed[key]])) as TypedSettings<Key>;
}

/** A field that nobody has come to yet is not called wrong; what is missing there still holds the task back. */
function withoutUntouched<Key extends string>(
  problems: Readonly<Partial<Record<Key, string>>>,
  typed: TypedSettings<Key>,
  values: SettingValues<Key>,
): Partial<Record<Key, string>> {
  const keys = (Object.keys(problems) as Key[]).filter(
    (key) => typed[key] !== undefined || values[key] !== undefined,
  );
  return Object.fromEntries(keys.map((key) => [key, problems[key]])) as Partial<Record<Key, string>>;
}
