/**
 * Nutrients dropped: UK Statutory Instrument 2008/2349 (read), a pig a day at 31–66 kg 24 g N and 12.1 g P2O5, from 66 kg
 * 33 g N; USDA-NRCS manure table, archived 2009 (read), slaughter pigs 166.0 lb N a year for each 1000 lb. Ours is one
 * rate by weight, an average over a whole growth. For potassium no published row was found.
 */
import { describe, expect, it } from 'vitest';
import { rowOf } from '../cell';

const P2O5_PER_P = 2.2914;

/** Grams a pig a day: kg on one hectare. */
function grams(kg: number): { n: number; p: number } {
  const [n = 0, p = 0] = rowOf('NUTRIENT_LOAD', 1, kg, 1, 1, 'metric');
  return { n: n * 1000, p: p * 1000 };
}

describe('UK figures by weight', () => {
  it('31–66 kg: the 24 g N of the law, and not a sixth more', () => {
    expect(grams(48.5).n).toBeGreaterThan(24);
    expect(grams(48.5).n).toBeLessThan(28);
  });

  it('from 66 kg: the 33 g N of the law at least', () => {
    expect(grams(66).n).toBeGreaterThan(33);
    expect(grams(66).n).toBeLessThan(33 * 1.15);
  });

  // Ours counts American diets, which hold less phosphorus: a sixth under the law, and no more than a quarter.
  it('31–66 kg: 12.1 g P2O5, ours a quarter less at most', () => {
    const ratio = (grams(48.5).p * P2O5_PER_P) / 12.1;
    expect(ratio).toBeGreaterThan(0.75);
    expect(ratio).toBeLessThan(0.95);
  });
});

// The national table counts slaughter pigs of 110 lb, among them young ones, and losses differ: within a quarter.
it('NRCS: a year of nitrogen for each 1000 lb is within a quarter of 166 lb', () => {
  const [n = 0] = rowOf('NUTRIENT_LOAD', 5, 200, 365, 1);
  expect(Math.abs(n / 166 - 1)).toBeLessThan(0.25);
});
