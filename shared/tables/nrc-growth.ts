/**
 * Mean daily gain of growing pigs by weight band, mixed sexes.
 *
 * Source: nrc2012 (National Research Council 2012, Table 16-1), from memory; the book's pages were not
 * seen. What supports it: feed = ME intake / diet ME / 0.95 reproduces all seven feed figures of the same table.
 */
export interface GainBand {
  readonly fromKg: number;
  readonly toKg: number;
  readonly gainKgPerDay: number;
}

/** Lightest and heaviest weight the bands speak of. */
export const NRC_LIGHTEST_KG = 5;

/** Upper end of each band and the gain in it; a band begins where the one before ends. */
const STEPS = [
  [7, 0.21],
  [11, 0.335],
  [25, 0.585],
  [50, 0.758],
  [75, 0.9],
  [100, 0.917],
  [135, 0.867],
] as const;

export const NRC_GAIN_BANDS: readonly GainBand[] = STEPS.map(([toKg, gainKgPerDay], i) => ({
  fromKg: STEPS[i - 1]?.[0] ?? NRC_LIGHTEST_KG,
  toKg,
  gainKgPerDay,
}));

export const NRC_HEAVIEST_KG = STEPS[STEPS.length - 1]?.[0] ?? NRC_LIGHTEST_KG;
