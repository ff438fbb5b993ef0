/** 3 ft of ground rod per joule: nrcsVirginia382 and gerrishFencing, published. */
export const ROD_METERS_PER_JOULE = 3 * 0.3048;

/** Rod in all whatever the energizer: three rods of 1 m, threeRods, published. */
export const LEAST_ROD_METERS = 3;
