/**
 * Weights between which feed, water and nutrients of growing pigs are answered. Judgement: the intake equation
 * was made for 20 to 135 kg; below weaning and above slaughter weight pigs are kept on other rations.
 */
export const GROWING_LIGHTEST_KG = 5;
export const GROWING_HEAVIEST_KG = 160;
