/**
 * Ohio State University Extension, weekly pasture growth, lb of dry matter per acre a day, mean of the fields measured
 * in 2010 (ohioforages.blogspot.com/2010/06, read). REGROWTH_DAYS takes months; the weeks of May 2010 averaged over the
 * month are its rate for May. No table of a whole year was found.
 */
import { describe, expect, it } from 'vitest';
import { cell, numberOf } from '../cell';

/** Means as printed. */
const WEEKS = [
  { from: '2010-05-02', mean: 97.7 },
  { from: '2010-05-09', mean: 77.8 },
  { from: '2010-05-16', mean: 67.4 },
  { from: '2010-05-23', mean: 84.0 },
] as const;

const monthsWith = (may: number, june: number): number[][] => [[0, 0, 0, 0, may, june, 0, 0, 0, 0, 0, 0]];

describe('Ohio growth weeks of May and June 2010', () => {
  it.each(WEEKS)('week of $from: seven days at $mean grow seven times as much', ({ from, mean }) => {
    expect(numberOf('REGROWTH_DAYS', from, monthsWith(mean, 0), 7 * mean)).toBeCloseTo(7, 10);
  });

  it('four weeks of May at their mean grow what the weeks add up to, in 28 days', () => {
    const sum = WEEKS.reduce((total, { mean }) => total + 7 * mean, 0);
    const may = sum / 28;
    expect(numberOf('REGROWTH_DAYS', '2010-05-02', monthsWith(may, 0), sum)).toBeCloseTo(28, 10);
  });

  // Walking the printed weeks one after the other is the exact answer; months smooth it. 1,200 lb from 2 May.
  it('1,200 lb from 2 May: months come within a day and a half of the printed weeks', () => {
    let [missing, days] = [1200, 0];
    for (const { mean } of WEEKS) {
      const grown = Math.min(missing, 7 * mean);
      days += grown / mean;
      missing -= grown;
    }
    expect(missing).toBe(0);
    const may = WEEKS.reduce((total, { mean }) => total + mean, 0) / WEEKS.length;
    expect(Math.abs(numberOf('REGROWTH_DAYS', '2010-05-02', monthsWith(may, 0), 1200) - days)).toBeLessThan(
      1.5,
    );
  });

  // 30 May starts a week that lies in both months: 2 days of May and 5 of June.
  it('passes from May into June at the first of the month', () => {
    expect(numberOf('REGROWTH_DAYS', '2010-05-30', monthsWith(64.6, 48.1), 2 * 64.6 + 5 * 48.1)).toBeCloseTo(
      7,
      10,
    );
  });

  it('refuses growth that does not come', () => {
    expect(() => cell('REGROWTH_DAYS', '2010-05-02', monthsWith(0, 0), 1)).toThrow(
      'REGROWTH_DAYS: growth_needed must be grown within 730 days, got 1, of which 1 would still be missing',
    );
  });
});
