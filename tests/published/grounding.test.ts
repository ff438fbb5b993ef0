/**
 * Grounding: USDA-NRCS Virginia, Job Sheet 382(c), June 2009, at least 3 ft of rod per joule (read); J. Gerrish in
 * Beef Magazine, about 2008, worked example (read). The further cases are worked out from the printed rule.
 */
import { describe, expect, it } from 'vitest';
import { cell } from '../cell';

describe('3 ft of ground rod per joule', () => {
  it('Gerrish: 6 joules take 18 ft, three 6 ft rods', () => {
    expect(cell('GROUND_RODS', 6, 6)).toBe(3);
    expect(cell('GROUND_RODS', 6)).toBe(3);
  });

  it('Gerrish: 6 miles of fence want at least 6 joules, any number of strands', () => {
    expect(cell('ENERGIZER_JOULES', 6 * 5280)).toBeCloseTo(6, 12);
    expect(cell('ENERGIZER_JOULES', 6 * 1609.344, 1, 'metric')).toBeCloseTo(6, 12);
  });

  it.each([
    [6, 8, 3],
    [1, 6, 2],
    [15, 8, 6],
    [7, 21, 1],
  ])('%d J with %d ft rods: %d', (joules, rod, rods) => {
    expect(cell('GROUND_RODS', joules, rod)).toBe(rods);
  });

  // In metres the rule stays 3 ft (0.9144 m) a joule: 6 J take 5.49 m, three rods of 2 m but four of 1.8 m.
  it('in metres', () => {
    expect(cell('GROUND_RODS', 6, 2, 'metric')).toBe(3);
    expect(cell('GROUND_RODS', 6, undefined, 'metric')).toBe(4);
  });

  // Cloverland Electric Cooperative: three 8 ft rods for 5 J, 4.8 ft a joule, and double for double. More than the rule.
  it('the rule asks for less than the 4.8 ft per joule of one power cooperative, as the help warns', () => {
    expect(Number(cell('GROUND_RODS', 5, 8))).toBeLessThan(3);
  });

  // die grüne, 2023, and F. Launay in La France Agricole (both read): three rods of 1 m whatever the energizer.
  it('never less than three rods of 1 m', () => {
    for (const joules of [0.1, 1, 2, 3]) expect(cell('GROUND_RODS', joules, 1, 'metric')).toBe(3);
  });
});
