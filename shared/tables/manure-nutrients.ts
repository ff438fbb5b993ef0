/**
 * Nutrients dropped by growing and finishing pigs, per day and per 1000 of liveweight (lb per 1000 lb, kg per
 * 1000 kg), elemental. Source: awmfh (from memory; the remembered figures per pig, weight and days of the
 * standard behind it give the same to rounding).
 */
export const DROPPED_PER_1000_A_DAY = { nitrogen: 0.54, phosphorus: 0.09, potassium: 0.24 } as const;
