/**
 * University of Maine Cooperative Extension, pasture course: Lesson 3 (Fence System).
 * Also the Ohio State Extension example at agproud.com/articles/34651. Read; what is worked on from them says so.
 */
import { describe, expect, it } from 'vitest';
import { numberOf } from '../cell';

describe('UMaine pasture course', () => {
  // Lesson 3, electric fence design, counts wire miles: 1 mile of 4 live strands is 4 miles to energize. The rule
  // used here counts the fence line once; both are printed, and the help says so.
  it('Lesson 3: a mile of four strands is four miles of wire, where the line rule asks for 1 J', () => {
    const line = 5280;
    expect(numberOf('FENCE_LENGTH', line / 4, line / 4, 4)).toBe(4 * line);
    expect(numberOf('ENERGIZER_JOULES', line)).toBeCloseTo(1, 12);
    expect(numberOf('ENERGIZER_JOULES', numberOf('FENCE_LENGTH', line / 4, line / 4, 4))).toBeCloseTo(4, 12);
  });

  // Fencing System, Lesson 3: high-tensile wire at 1.5 cents a foot; 3 wires for a mile cost $237.60, 7 wires $554.40
  // (worked out from the printed price).
  it('Lesson 3: wire for a mile of 3 and of 7 strands at 1.5 cents a foot', () => {
    const dollars = (strands: number): number => numberOf('FENCE_LENGTH', 1320, 1320, strands) * 0.015;
    expect(dollars(3)).toBeCloseTo(237.6, 10);
    expect(dollars(7)).toBeCloseTo(554.4, 10);
  });

  // OSU Extension: a 1200 lb cow at 3.5 % eats 42 lb a day; growth of 45 lb/ac/day leaves 3 lb.
  it('OSU pasture project: growth of 45 lb a day outruns a cow of 42 lb on one acre', () => {
    expect(1200 * 0.035).toBeCloseTo(42, 12);
    expect(numberOf('GRAZING_AREA', 42, 1, 45, 1)).toBeCloseTo(1 - 3 / 45, 12);
  });
});
