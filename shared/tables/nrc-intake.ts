/**
 * Daily energy intake of growing pigs on full feed, mixed sexes.
 *
 *   ME = 10563 × (1 − e^(−e^(−4.04) × W)) kcal a day, W in kg
 *
 * Source: nrc2012, from memory; the book's pages were not seen. What supports it: at every weight from 20 to
 * 135 kg it equals the mean of the remembered barrow and gilt equations within 2 kcal.
 */
export const ME_CEILING_KCAL_PER_DAY = 10563;
export const ME_RISE_PER_KG = Math.exp(-4.04);

/** Energy of the diet: nrc2012 Table 16-1, growing bands from 25 kg, from memory. */
export const DIET_ME_KCAL_PER_KG = 3300;

/** Part of the feed that is eaten, 5 % being wasted: nrc2012 Table 16-1, from memory. */
export const FEED_EATEN_FRACTION = 0.95;

/** Feed and water outdoors for each one indoors: edwards2003, published, "about 15 % more energy". */
export const OUTDOOR_FACTOR = 1.15;
