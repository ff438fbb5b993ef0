/**
 * Weights between which feed, water and nutrients of growing pigs are answered. Judgement: the intake equation
 * was made for 20 to 135 kg; below weaning and above slaughter weight pigs are kept on other rations.
 */
export const GROWING_LIGHTEST_KG = 5;
export const GROWING_HEAVIEST_KG = 160;

/**
 * Gain a day above which a number is no gain of a pig, but days or a weight in its place. Judgement, well above the
 * 0.9 kg of the growth table (NRC 2012) and the 1.5 kg or less of fast boars (common practice, no source).
 */
export const MOST_GAIN_KG_PER_DAY = 2;
