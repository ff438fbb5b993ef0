import type { UnitSystem } from '../../units/units';
import { type SettingSpec, startSettings } from '../settings';
import { BITE_SETTINGS, type BiteKey, type BiteSettings } from './bite-settings';

/** Settings whose start values are illustrations, not figures of the grower's own fence. */
const KEYS: readonly BiteKey[] = ['volts', 'ohms', 'weeds'];

/** Said in place of "enough" while the volts rest on an illustration. */
export const ENOUGH_SO_FAR = 'enough, with illustrated values: type yours';

export interface Illustration {
  readonly spec: SettingSpec<BiteKey>;
  readonly start: number;
}

/** Every setting that starts as an illustration, with its start value in cell units. */
export function illustrations(units: UnitSystem): readonly Illustration[] {
  const start = startSettings(BITE_SETTINGS, units);
  return BITE_SETTINGS.filter(({ key }) => KEYS.includes(key)).map((spec) => ({
    spec,
    start: start[spec.key] ?? 0,
  }));
}

/** Labels of the settings that still hold their illustration. */
export function illustratedLabels(settings: BiteSettings, units: UnitSystem): readonly string[] {
  return illustrations(units)
    .filter(({ spec, start }) => settings[spec.key] === start)
    .map(({ spec }) => spec.label);
}
