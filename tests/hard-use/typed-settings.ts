/** Settings that a grower has changed, and cells that a grower has filled. */
import type { BlockContent } from '../../shared/block/read-block';
import {
  type SettingSpec,
  type SettingValues,
  settingProblems,
  startSettings,
} from '../../shared/tasks/settings';
import type { UnitSystem } from '../../shared/units/units';
import type { Composed } from './typed-cells';

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
