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

/** A band begins where the one before ends. */
const EDGES_KG = [5, 7, 11, 25, 50, 75, 100, 135];
const GAINS_KG_PER_DAY = [0.21, 0.335, 0.585, 0.758, 0.9, 0.917, 0.867];
const [, ...ENDS_KG] = EDGES_KG;

export const NRC_GAIN_BANDS: readonly GainBand[] = GAINS_KG_PER_DAY.map((gainKgPerDay, at) => ({
  fromKg: EDGES_KG[at]!,
  toKg: ENDS_KG[at]!,
  gainKgPerDay,
}));

/** Lightest and heaviest weight the bands speak of. */
export const NRC_LIGHTEST_KG = Math.min(...EDGES_KG);
export const NRC_HEAVIEST_KG = Math.max(...EDGES_KG);
