/** Stands for "never" and "no limit" among days; far from the largest 32-bit number, so that sums fit. */
export const NEVER = 1_000_000;
