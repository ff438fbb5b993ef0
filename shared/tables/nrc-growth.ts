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

export const NRC_GAIN_BANDS: readonly GainBand[] = [
  { fromKg: 5, toKg: 7, gainKgPerDay: 0.21 },
  { fromKg: 7, toKg: 11, gainKgPerDay: 0.335 },
  { fromKg: 11, toKg: 25, gainKgPerDay: 0.585 },
  { fromKg: 25, toKg: 50, gainKgPerDay: 0.758 },
  { fromKg: 50, toKg: 75, gainKgPerDay: 0.9 },
  { fromKg: 75, toKg: 100, gainKgPerDay: 0.917 },
  { fromKg: 100, toKg: 135, gainKgPerDay: 0.867 },
];

/** Lightest and heaviest weight the bands speak of. */
export const NRC_LIGHTEST_KG = 5;
export const NRC_HEAVIEST_KG = 135;
