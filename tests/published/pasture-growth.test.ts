/**
 * Growth and rest: GrassCheck NI 2021 (read), 36.5, 66.6 and 77.9 kg of dry matter a hectare a day in April, May and
 * June; V. Shelton, NRCS, Hay & Forage Grower, 14 May 2019 (read), all grazing stock: rest of 14 days in fast growth, 30
 * days when growth slows. Farm and Dairy (read): stays of 3 days and 30 days of rest take 11 paddocks.
 */
import { describe, expect, it } from 'vitest';
import { cell, numberOf } from '../cell';

const GROWTH = [[0, 0, 0, 36.5, 66.6, 77.9, 0, 0, 0, 0, 0, 0]];

describe('growth and rest', () => {
  // Two sources: what Shelton's 14 days grow in June by GrassCheck takes his 30 days at half the speed, in April.
  it('what 14 days grow in June takes 30 days in April, to the nearest day', () => {
    const inFastGrowth = 14 * 77.9;
    expect(numberOf('REGROWTH_DAYS', '2021-06-01', GROWTH, inFastGrowth)).toBeCloseTo(14, 9);
    expect(Math.round(numberOf('REGROWTH_DAYS', '2021-04-01', GROWTH, inFastGrowth))).toBe(30);
  });

  // Worked out from the printed rates: 30 × 36.5 + 31 × 66.6 + 30 × 77.9.
  it('April to June 2021 grow 5,496.6 kg in 91 days, and no more', () => {
    expect(numberOf('REGROWTH_DAYS', '2021-04-01', GROWTH, 5496.6)).toBeCloseTo(91, 9);
    // The next growth is that of the next April, 365 − 91 days later.
    expect(numberOf('REGROWTH_DAYS', '2021-04-01', GROWTH, 5496.6 + 36.5)).toBeCloseTo(366, 9);
  });

  it('Farm and Dairy: 11 paddocks', () => {
    expect(cell('PADDOCKS_NEEDED', 30, 3)).toBe(11);
  });
});
