/**
 * ASAE D384.2 (2005), nutrients per pig as excreted, against USDA-NRCS AWMFH chapter 4, Table 4-10 (2008), per day and
 * 1000 lb. Both from memory: that two tables of different form agree to rounding is what bears the memory out.
 */
import { describe, expect, it } from 'vitest';
import { rowOf } from '../cell';
import { expectPrinted } from './expect-printed';
import { numberIn, readTable } from './read-table';

const TABLE = readTable('manure-nutrients.csv');

describe('ASAE D384.2 and AWMFH Table 4-10', () => {
  for (const row of TABLE) {
    it(`${row.class}: per pig ÷ weight ÷ days gives the rate per 1000 lb`, () => {
      for (const nutrient of ['n', 'p', 'k']) {
        const rate =
          (numberIn(row, `${nutrient}_lb`) / numberIn(row, 'weight_lb') / numberIn(row, 'days')) * 1000;
        expectPrinted(rate, row[`${nutrient}_rate`] ?? '');
      }
    });
  }

  it('grow-finish: NUTRIENT_LOAD over the 120 days of the standard gives its lb per pig', () => {
    const row = TABLE.find((candidate) => candidate.class === 'grow-finish');
    if (!row) throw new Error('no grow-finish row');
    const [n = 0, p = 0, k = 0] = rowOf(
      'NUTRIENT_LOAD',
      1,
      numberIn(row, 'weight_lb'),
      numberIn(row, 'days'),
      1,
    );
    expectPrinted(n, row.n_lb ?? '');
    expectPrinted(p, row.p_lb ?? '');
    expectPrinted(k, row.k_lb ?? '');
  });

  // NRCS national table (read): slaughter pigs 166.0 lb of N per animal unit of 1000 lb a year. Another basis; a range.
  it('a year of grow-finish nitrogen per 1000 lb lies within 25 % of the NRCS national table', () => {
    const [n = 0] = rowOf('NUTRIENT_LOAD', 1, 1000, 365, 1);
    expect(Math.abs(n / 166 - 1)).toBeLessThan(0.25);
  });
});
