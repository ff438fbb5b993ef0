/**
 * University of Wisconsin Extension, "Livestock lessons: a fencing primer", 8 July 2014: a square acre takes about
 * 835 ft of fence (read). Math Central, University of Regina: 209 ft a side, 836 ft round (second hand). Questions
 * and answers: 1.25 acres, 933.38 ft; half an acre, 590.3 ft square or 626.1 ft as a 1:2 strip (read). A farm blog
 * that calls 300 × 1,200 ft nine acres and 750 × 750 ft fourteen is wrong, and serves as a counter-check.
 */
import { describe, expect, it } from 'vitest';
import { numberOf } from '../cell';
import { expectPrinted } from './expect-printed';

const SQUARE_FEET_PER_ACRE = 43_560;
const squareSide = (acres: number): number => Math.sqrt(acres * SQUARE_FEET_PER_ACRE);

describe('fence round an acre', () => {
  it.each([
    [1, '835'],
    [1.25, '933.38'],
    [0.5, '590.3'],
  ])('%d acres square take %s ft', (acres, printed) => {
    const side = squareSide(acres);
    expectPrinted(numberOf('FENCE_LENGTH', side, side), printed);
  });

  it('209 ft a side make 836 ft', () => {
    expect(numberOf('FENCE_LENGTH', 209, 209)).toBe(836);
  });

  it('half an acre as a 1:2 strip takes 626.1 ft', () => {
    const short = Math.sqrt((0.5 * SQUARE_FEET_PER_ACRE) / 2);
    expectPrinted(numberOf('FENCE_LENGTH', short, 2 * short), '626.1');
  });

  it.each([
    [300, 1200, 9, '8.26'],
    [750, 750, 14, '12.91'],
  ])('%d × %d ft are not %d acres', (width, length, claimed, acres) => {
    expectPrinted((width * length) / SQUARE_FEET_PER_ACRE, acres);
    // So many pigs an acre are more than the claim would have it.
    expect(numberOf('STOCKING_DENSITY', 90, (width * length) / SQUARE_FEET_PER_ACRE)).toBeGreaterThan(
      90 / claimed + 0.5,
    );
  });
});
