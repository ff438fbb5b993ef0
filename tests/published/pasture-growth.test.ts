/**
 * Growth and rest: GrassCheck NI 2021 (read), 36.5, 66.6 and 77.9 kg of dry matter a hectare a day in April, May and
 * June; V. Shelton, NRCS, Hay & Forage Grower, 14 May 2019 (read), all grazing stock: rest of 14 days in fast growth, 30
 * days when growth slows. Farm and Dairy (read): stays of 3 days and 30 days of rest take 11 paddocks. Department of
 * Primary Industries, Western Australia, "Annual pasture quality and quantity", Table 2 (read): a whole year, by month.
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

describe('a year of Katanning, where nothing grows from December to March', () => {
  const KATANNING = [[0, 0, 0, 1, 11, 15, 16, 28, 51, 45, 15, 0]];

  // Worked out from the printed rates: 30 + 341 + 450 + 496 + 868 + 1530 + 1395 + 450 from April to November.
  it('April to November grow 5,560 kg in 244 days', () => {
    expect(numberOf('REGROWTH_DAYS', '2026-04-01', KATANNING, 5560)).toBeCloseTo(244, 9);
  });

  // Left on 1 November: its 30 days grow 450 kg; the next 30 come in April, after 31 + 31 + 28 + 31 days of nothing.
  it('480 kg from 1 November take until the end of April', () => {
    expect(numberOf('REGROWTH_DAYS', '2026-11-01', KATANNING, 480)).toBeCloseTo(
      30 + 31 + 31 + 28 + 31 + 30,
      9,
    );
    expect(numberOf('REGROWTH_DAYS', '2026-11-01', KATANNING, 450)).toBeCloseTo(30, 9);
  });
});
