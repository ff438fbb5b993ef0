import type { UnitSystem } from '../units/units';

/** Locales whose people measure land in feet and acres; everyone else is offered metric first. Judgement. */
const US_LOCALES = ['en_US', 'en_LR'];

export function unitsOfLocale(locale: string): UnitSystem {
  return US_LOCALES.includes(locale) ? 'US' : 'metric';
}
