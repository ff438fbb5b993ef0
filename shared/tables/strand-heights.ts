/** Heights of live strands for pigs, lowest first, and how high a pig carries its nose. Metres and kilograms. */
const INCH_METERS = 0.0254;
const POUND_KG = 0.45359237;

const inches = (...heights: readonly number[]): readonly number[] => heights.map((h) => h * INCH_METERS);

/** Lightest growing pig: judgement, after the class limit of a water table (extensionWater). Below it the young pigs' heights hold. */
export const GROWING_FROM_KG = 45 * POUND_KG;

/** Two for growing and finishing pigs and sows: extensionHogFence, second hand, within the ranges of fibl2019, published. */
export const GROWN_TWO_METERS = inches(10, 18);

/**
 * Three for growing pigs and sows: judgement, after a trade chart that could not be read clearly (8 to 10 in steps, top
 * 20 to 24 in). The top is that of boarFenceTrial, published.
 */
export const GROWN_THREE_METERS = inches(8, 16, 24);

/**
 * Three for young pigs; two are the lower ones. The lowest: extensionHogFence, second hand ("with nursing pigs about 6
 * in"). The second is that of boarFenceTrial, published; the third is common practice, no source, from memory.
 */
export const YOUNG_METERS = inches(6, 12, 18);

/** A single strand is never set higher than the upper one of the published pair. Judgement. */
export const HIGHEST_SINGLE_METERS = Math.max(...GROWN_TWO_METERS);

/**
 * Nose height = this × ∛weight. The form for body measures is petherick1983's; its coefficients were not seen, so
 * the number is judgement, set so that it reaches the published 8 in of a wire for weaners at 10 kg and the
 * published 10 in of a lowest wire at 45 lb.
 */
export const NOSE_HEIGHT_METERS = 0.095;
