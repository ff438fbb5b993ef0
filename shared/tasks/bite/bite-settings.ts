import type { UnitSystem } from '../../units/units';
import type { SettingSpec, SettingValues } from '../settings';
import * as words from './words';

export type BiteKey = 'volts' | 'ohms' | 'weeds' | 'pig' | 'onFence' | 'delivered';

/** 10,000 Ω·km in the unit of the sheet: Ω × 1000 ft or Ω × km. An illustration, not a measured figure. */
const WEEDS_OHM_METERS = 10_000_000;
const METERS_IN_THOUSAND = { US: 1000 * 0.3048, metric: 1000 } as const;

/** An illustration, until the grower types the label's or measures. */
export const VOLTS_WITHOUT_LOAD = 8000;

export const BITE_SETTINGS: readonly SettingSpec<BiteKey>[] = [
  {
    key: 'volts',
    label: 'Energizer, volts without load',
    unit: 'V',
    start: VOLTS_WITHOUT_LOAD,
    above: 0,
    note: words.VOLTS_NOTE,
  },
  {
    key: 'ohms',
    label: 'Energizer and ground, inner resistance',
    unit: 'Ω',
    start: 300,
    min: 0,
    note: words.OHMS_NOTE,
  },
  {
    key: 'weeds',
    label: 'Leak to earth in weeds',
    unit: 'Ω × 1000 ft or Ω × km',
    start: {
      US: Math.round(WEEDS_OHM_METERS / METERS_IN_THOUSAND.US),
      metric: WEEDS_OHM_METERS / METERS_IN_THOUSAND.metric,
    },
    above: 0,
    note: words.WEEDS_NOTE,
  },
  {
    key: 'pig',
    label: 'A pig that touches',
    unit: 'Ω',
    start: 500,
    above: 0,
    note: words.PIG_NOTE,
  },
  {
    key: 'onFence',
    label: 'Volts you want on the fence, at least',
    unit: 'V',
    start: 3000,
    above: 0,
    note: words.ON_FENCE_NOTE,
  },
  {
    key: 'delivered',
    label: 'Volts the pig should get, at least',
    unit: 'V',
    start: 2000,
    above: 0,
    note: words.DELIVERED_NOTE,
  },
];

export type BiteSettings = SettingValues<BiteKey>;

/** Growth on the line in words, Ω·m each. Illustrations, one step a factor of ten or so: no published figure was found. */
export const GROWTH = {
  clean: { words: 'None: mown, nothing touches', ohmMeters: 100 * WEEDS_OHM_METERS },
  some: { words: 'Some touches', ohmMeters: WEEDS_OHM_METERS },
  heavy: { words: 'Heavy and wet', ohmMeters: WEEDS_OHM_METERS / 10 },
} as const;
export type Growth = keyof typeof GROWTH;

/** What the grower would type for it. */
export function growthSetting(growth: Growth, units: UnitSystem): number {
  return Math.round(GROWTH[growth].ohmMeters / METERS_IN_THOUSAND[units]);
}

/** Inner resistance of an energizer, Ω, from its volts without load and with 500 Ω on it; undefined where not less. */
export function innerOhms(volts: number, loadedVolts: number): number | undefined {
  return loadedVolts > 0 && loadedVolts <= volts
    ? Math.round(TEST_LOAD_OHMS * (volts / loadedVolts - 1))
    : undefined;
}
/** The load of the IEC test (second hand). */
const TEST_LOAD_OHMS = 500;

/** Taken on the long side, so that the volts come out low rather than high. Judgement. */
const PULSE_SECONDS = 1e-4;

/**
 * Volts into 500 Ω of an energizer with so many joules of output on its label, as an even pulse of 0.1 ms.
 *
 *   E = V² × t ÷ R; valid for joules above 0. Source: definition of energy; the pulse: judgement.
 */
export function labelVolts(joules: number): number {
  return Math.sqrt((joules * TEST_LOAD_OHMS) / PULSE_SECONDS);
}

/** Ω × 1000 ft or Ω × km to Ω·m. */
export function weedsOhmMeters(setting: number, units: UnitSystem): number {
  return setting * METERS_IN_THOUSAND[units];
}
