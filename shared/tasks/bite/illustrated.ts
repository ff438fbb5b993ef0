import type { UnitSystem } from '../../units/units';
import { type SettingSpec, startSettings } from '../settings';
import { BITE_SETTINGS, type BiteKey, type BiteSettings } from './bite-settings';

/** Settings whose start values are illustrations, not figures of the grower's own fence, in plain words. */
const WORDS: Partial<Record<BiteKey, string>> = {
  volts: 'energizer’s volts',
  ohms: 'joules and ground',
  weeds: 'growth on the line',
};

/** Said in place of "enough" while the volts rest on an illustration. */
export const ENOUGH_SO_FAR = 'measure first, enough only with example values';

export interface Illustration {
  readonly spec: SettingSpec<BiteKey>;
  readonly start: number;
}

/** Every setting that starts as an illustration, with its start value in cell units. */
export function illustrations(units: UnitSystem): readonly Illustration[] {
  const start = startSettings(BITE_SETTINGS, units);
  return BITE_SETTINGS.filter(({ key }) => key in WORDS).map((spec) => ({
    spec,
    start: start[spec.key] ?? 0,
  }));
}

/** The settings that still hold their illustration, in plain words. */
export function illustratedWords(settings: BiteSettings, units: UnitSystem): readonly string[] {
  return illustrations(units)
    .filter(({ spec, start }) => settings[spec.key] === start)
    .map(({ spec }) => WORDS[spec.key] ?? spec.label);
}
