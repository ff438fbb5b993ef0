/** Heights of live strands for pigs, lowest first, and how high a pig carries its nose. Metres and kilograms. */
const INCH_METERS = 0.0254;
const POUND_KG = 0.45359237;

const inches = (...heights: readonly number[]): readonly number[] => heights.map((h) => h * INCH_METERS);

/** Lightest growing pig: judgement, after the class limit of a water table (extensionWater). Below it the young pigs' heights hold. */
export const GROWING_FROM_KG = 45 * POUND_KG;

/**
 * Growing and finishing pigs and sows.
 * Two: extensionHogFence, second hand, within the ranges of fibl2019, published. Three: judgement, after a trade chart that could not be read clearly
 * (8 to 10 in steps, top 20 to 24 in).
 */
export const GROWN_HEIGHTS_METERS = { two: inches(10, 18), three: inches(8, 16, 24) } as const;

/**
 * Young pigs.
 * The lowest: extensionHogFence, second hand ("with nursing pigs about 6 in"). The others: common practice, no
 * source, from memory (10 to 12 in and 18 in).
 */
export const YOUNG_HEIGHTS_METERS = { two: inches(6, 12), three: inches(6, 12, 18) } as const;

/** A single strand is never set higher than the upper one of the published pair. Judgement. */
export const HIGHEST_SINGLE_METERS = 18 * INCH_METERS;

/**
 * Nose height = this × ∛weight. The form for body measures is petherick1983's; its coefficients were not seen, so
 * the number is judgement, set so that it reaches the published 8 in of a wire for weaners at 10 kg and the
 * published 10 in of a lowest wire at 45 lb.
 */
export const NOSE_HEIGHT_METERS = 0.095;
