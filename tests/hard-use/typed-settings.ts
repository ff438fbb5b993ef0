/** Settings as the page takes them from the sheet, and settings that a grower has changed. */
import type { BlockContent } from '../../shared/block/read-block';
import {
  type SettingSpec,
  type SettingsRead,
  type SettingValues,
  settingProblems,
  startSettings,
} from '../../shared/tasks/settings';
import type { UnitSystem } from '../../shared/units/units';
import { readTypedSettings, type TypedSettings } from '../../src/sidebar/parts/settings-fields';
import type { Composed } from './typed-cells';

export interface OnPage<Key extends string> {
  readonly values: SettingValues<Key>;
  /** What is shown beside the fields or among the problems; where there is any, nothing is written. */
  readonly problems: readonly string[];
}

/** As useSettings() of the page, with nothing typed there. */
export function settingsOnPage<Key extends string>(
  specs: readonly SettingSpec<Key>[],
  read: SettingsRead<Key> | undefined,
  units: UnitSystem,
): OnPage<Key> {
  const values = { ...startSettings(specs, units), ...read?.values };
  const { problems } = readTypedSettings(specs, {} as TypedSettings<Key>, values, { units, comma: false });
  const shown = (Object.keys(problems) as Key[]).map((key) =>
    // A field that holds nothing is not called wrong; it still holds the task back.
    values[key] === undefined ? 'Something above is still missing or wrong.' : (problems[key] ?? ''),
  );
  return { values, problems: [...shown, ...(read?.problems ?? [])] };
}

/** The table with another number in every setting, each only once, as somebody has typed them. */
export function withOwnSettings<Key extends string>(
  content: BlockContent,
  specs: readonly SettingSpec<Key>[],
  units: UnitSystem,
): BlockContent {
  const start = startSettings(specs, units);
  const values = content.values.map((row) => [...row]);
  for (const [i, spec] of specs.entries()) {
    // The answers in the sheet are those of so many.
    if (spec.label === 'Live wires' || spec.label === 'Strands') continue;
    const row = values.find(([label]) => label === spec.label);
    const before = start[spec.key] ?? 3;
    const isRight = (value: number): boolean =>
      settingProblems([spec], { [spec.key]: value } as SettingValues<Key>, units).length === 0;
    const own = [before + (i + 1) / 64, before + 1, before - 1].find(isRight);
    if (row && own !== undefined) row[1] = own;
  }
  return { ...content, values };
}

/** The table with a number typed into every free cell of its named rows. */
export function withOwnInputs(content: BlockContent, { styles }: Composed): BlockContent {
  let next = 3000;
  const values = content.values.map((row, r) =>
    row.map((value, c) => {
      const isFree = value === '' && content.formulas[r]![c] === '' && styles[r]?.[c] === 'input';
      return isFree && row[0] !== '' ? next++ : value;
    }),
  );
  return { ...content, values };
}
