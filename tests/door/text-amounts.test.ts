/** Numbers kept as text, with their unit, in the cells that functions are given. Factors: definitions of 1959. */
import { describe, expect, it } from 'vitest';
import { cell } from '../cell';

/** 12 pigs of 60 lb for 30 days at 1.5 lb a day, outdoor factor 1, against the same with the texts. */
const feed = (weight: unknown, gain: unknown, days: unknown = 30, units = 'US') =>
  cell('FEED_NEEDED', 12, weight, days, gain, 1, units) as number;

describe('a number with its unit as text', () => {
  it.each([
    ['60 lb', '1.5 lb/day', 30],
    ['60 lbs', 1.5, '30 days'],
    ['60#', '1,5', '30'],
    // 60 lb × 0.45359237 kg
    ['27.2155422 kg', 1.5, 30],
  ])('%s, %s, %s are read as meant', (weight, gain, days) => {
    expect(feed(weight, gain, days)).toBeCloseTo(feed(60, 1.5), 9);
  });

  it('a unit goes before the system of the function', () => {
    expect(feed('60 lb', '1.5 lb/day', 30, 'metric')).toBeCloseTo(
      feed(27.2155422, 0.680388555, 30, 'metric'),
      9,
    );
  });

  it.each([
    ['60 ft', 'FEED_NEEDED: start_weight must be a number, got "60 ft"'],
    ['3,322', 'FEED_NEEDED: start_weight must be a number, got "3,322"'],
    ['-60 lb', 'FEED_NEEDED: start_weight must be more than 0 lb, got -60 lb'],
  ])('%s is refused by name', (weight, sentence) => {
    expect(() => feed(weight, 1.5)).toThrow(sentence);
  });

  it('one without a unit of its own takes none', () => {
    expect(() => cell('FENCE_LENGTH', '12 ft', 1)).toThrow(
      'FENCE_LENGTH: width must be a number, got "12 ft"',
    );
    expect(cell('FENCE_LENGTH', '1 200', 300)).toBe(cell('FENCE_LENGTH', 1200, 300));
  });
});
