/** The numbers of a task as fields: typed text on the page, checked numbers for the block. */

import { readAmount } from '../../../shared/locale/read-amount';
import {
  type SettingSpec,
  type SettingValues,
  settingProblems,
  settingUnit,
} from '../../../shared/tasks/settings';
import type { UnitSystem } from '../../../shared/units/units';
import { InputField } from './field';

export type TypedSettings<Key extends string> = Readonly<Partial<Record<Key, string>>>;

export interface ReadSettings<Key extends string> {
  /** In cell units. */
  readonly values: SettingValues<Key>;
  readonly problems: Readonly<Partial<Record<Key, string>>>;
  readonly ok: boolean;
}

/** What was typed wins over the values that stand (start values or those read from the block). */
export function readTypedSettings<Key extends string>(
  specs: readonly SettingSpec<Key>[],
  typed: TypedSettings<Key>,
  standing: SettingValues<Key>,
  { units, comma }: { units: UnitSystem; comma: boolean },
): ReadSettings<Key> {
  const problems: Partial<Record<Key, string>> = {};
  const values: Record<Key, number | undefined> = { ...standing };
  for (const { key, label, unit } of specs) {
    const text = typed[key];
    if (text === undefined) continue;
    const read = readAmount(text, comma, unit);
    if ('value' in read) values[key] = read.value;
    else problems[key] = read.problem.startsWith('be ') ? `${label} must ${read.problem}` : read.problem;
  }
  for (const { key, sentence } of settingProblems(specs, values, units)) problems[key] ??= sentence;
  return { values, problems, ok: Object.keys(problems).length === 0 };
}

interface Props<Key extends string> {
  readonly specs: readonly SettingSpec<Key>[];
  readonly typed: TypedSettings<Key>;
  readonly read: ReadSettings<Key>;
  readonly units: UnitSystem;
  readonly comma: boolean;
  readonly onChange: (typed: TypedSettings<Key>) => void;
}

export function SettingsFields<Key extends string>({
  specs,
  typed,
  read,
  units,
  comma,
  onChange,
}: Props<Key>) {
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
          hint={spec.note}
          problem={read.problems[spec.key]}
          value={typed[spec.key] ?? shown(read.values[spec.key], comma)}
          onChange={(text) => onChange({ ...typed, [spec.key]: text })}
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
