import { Refusal } from '../../refusals';

/**
 * The farm's own ground limit from its own records, in the unit of the liveweight-days.
 *
 *   fit cover = e^(−k × x) by least squares of ln(cover) through the origin: k = −Σ x ln(cover) ÷ Σ x²
 *   limit = −ln(target) ÷ k
 *
 * Refuses a fit that does not fall. Source: the shape of the curve is judgement; groundCover2020 for the aim of
 * at least 75 % cover.
 */
export function groundLimit(
  liveweightDays: readonly number[],
  coverLeft: readonly number[],
  targetCover: number,
): number {
  // Scaled by the largest record, so that squares neither overflow nor vanish.
  const largest = liveweightDays.reduce((most, load) => Math.max(most, load), 0);
  let products = 0;
  let squares = 0;
  liveweightDays.forEach((load, i) => {
    const x = load / largest;
    products += x * Math.log(coverLeft[i] ?? 1);
    squares += x * x;
  });
  const fall = -products / squares;
  if (!(fall > 0)) {
    throw new Refusal('cover_left', 'fall as liveweight_days rise', 'a fit that does not fall');
  }
  return (-Math.log(targetCover) / fall) * largest;
}
