/**
 * W. Edwards, Iowa State University Extension, "Estimated costs for livestock fencing", 2012 edition, woven wire over
 * 1,320 ft, as printed at agriculture.com, 29 February 2012 (second hand). Line posts stand 12 ft apart (read).
 * Only the quantities are checked; prices are old.
 */
import { describe, expect, it } from 'vitest';
import { cell, numberOf } from '../cell';

describe('Iowa State, 1,320 ft of woven wire', () => {
  it('line posts: 55 of wood and 55 of steel are the 110 gaps of 12 ft', () => {
    expect(cell('SIDE_POSTS', 1320, 12, false)).toBe(55 + 55 + 1);
  });

  // 57 four-inch posts of which 2 are cross-braces, 4 eight-inch posts of which 2 stand at each end, 55 of steel.
  it('114 posts are bought, 3 to spare over a post at both ends and every 12 ft', () => {
    const bought = 4 + (57 - 2) + 55;
    expect(bought).toBe(114);
    expect(bought - numberOf('SIDE_POSTS', 1320, 12, false)).toBe(3);
  });

  it('barbed and woven wire: 1,320 ft each, one roll of a quarter mile', () => {
    expect(cell('ROLL_COUNT', 1320, 1320)).toBe(1);
    expect(cell('ROLL_COUNT', 1320, 330)).toBe(4);
  });

  // High-tensile, 8 wires, 20 ft apart, in the same publication.
  it('high-tensile at 20 ft takes 67 posts', () => {
    expect(cell('SIDE_POSTS', 1320, 20, false)).toBe(1320 / 20 + 1);
  });

  // The same place, counted round: a quarter quarter-section of 40 acres has sides of 1,320 ft.
  it('round 40 acres at 40 ft (NRCS counting convention, worked out): 132 posts, 4 of them corners', () => {
    expect(cell('POST_COUNT', 1320, 1320, 40)).toBe(4 * 32 + 4);
  });
});
