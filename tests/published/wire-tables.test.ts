/**
 * Wire: the comparative gauge table (Washburn & Moen steel, and AWG), read in two copies; the AWG formula
 * d = 0.005 × 92^((36 − n) ÷ 39) in, read; NBS Handbook 100, copper AWG 12 at 20 °C 1.588 Ω per 1000 ft, from memory.
 */
import { describe, expect, it } from 'vitest';
import { cell, numberOf } from '../cell';
import { expectPrinted } from './expect-printed';
import { numberIn, readTable } from './read-table';

const awgInches = (gauge: number): number => 0.005 * 92 ** ((36 - gauge) / 39);

describe('gauge tables', () => {
  for (const row of readTable('wire-gauge.csv')) {
    // The printed table cuts or rounds the fourth decimal: 10 gauge is 0.10189, printed .1018; 15 gauge 0.05707.
    it(`AWG ${row.gauge} is ${row.awg_in} in`, () => {
      expect(Math.abs(awgInches(numberIn(row, 'gauge')) - numberIn(row, 'awg_in'))).toBeLessThanOrEqual(1e-4);
    });
  }

  it('is anchored at AWG 36, 0.0050 in, and AWG 4/0, 0.4600 in', () => {
    expect(awgInches(36)).toBeCloseTo(0.005, 12);
    expect(awgInches(-3)).toBeCloseTo(0.46, 12);
  });

  it('takes steel of the same number as thicker, so that AWG would overstate its resistance', () => {
    for (const row of readTable('wire-gauge.csv')) {
      const steel = numberOf('WIRE_OHMS', 'mild steel', numberIn(row, 'steel_in'));
      const asAwg = numberOf('WIRE_OHMS', 'mild steel', numberIn(row, 'awg_in'));
      expect(asAwg).toBeGreaterThan(steel * 1.15);
    }
    // 12.5 gauge: 0.099 in against 0.0763 in, 68 % more.
    const ratio = numberOf('WIRE_OHMS', 'mild steel', 0.0763) / numberOf('WIRE_OHMS', 'mild steel', 0.099);
    expectPrinted(ratio, '1.68');
  });
});

describe('resistance', () => {
  // From memory: NBS Handbook 100.
  it('copper AWG 12 at 20 °C: 1.588 Ω per 1000 ft', () => {
    expectPrinted(numberOf('WIRE_OHMS', 'copper', awgInches(12)), '1.588');
  });

  for (const row of readTable('wire-ohms.csv')) {
    it(`steel gauge ${row.gauge}, ${row.diameter_in} in`, () => {
      const ohms = (metal: string): number =>
        numberOf('WIRE_OHMS', metal, numberIn(row, 'diameter_in') * 25.4, 1, 'metric');
      expectPrinted(ohms('mild steel'), row.mild_steel ?? '');
      expectPrinted(ohms('high-tensile steel'), row.high_tensile ?? '');
      expectPrinted(ohms('aluminium'), row.aluminium ?? '');
      expect(ohms('aluminum')).toBe(ohms('aluminium'));
    });
  }

  // Worked out from strand count and thickness.
  it.each([
    [3, 0.15, 13581],
    [6, 0.15, 6791],
    [9, 0.15, 4527],
    [6, 0.2, 3820],
    [9, 0.2, 2546],
  ])('polywire of %d stainless strands of %d mm: %d Ω per km', (wires, diameter, printed) => {
    expectPrinted(numberOf('WIRE_OHMS', 'stainless', diameter, wires, 'metric'), String(printed));
  });

  // A Canadian supplier's laboratory note: 3-strand stainless twine has over 100 times the resistance of 14 gauge steel.
  it('3-strand stainless twine has more than 100 times the resistance of 14 gauge mild steel', () => {
    const twine = numberOf('WIRE_OHMS', 'stainless', 0.15, 3, 'metric');
    expect(twine / numberOf('WIRE_OHMS', 'mild steel', 2.032, 1, 'metric')).toBeGreaterThan(100);
  });

  // A European trade fence guide: the best portable conductors have at most about 0.5 Ω per metre, poor ones over 4.
  it('stainless-only polywire of nine 0.15 mm strands is a poor conductor by the trade guide', () => {
    expect(Number(cell('WIRE_OHMS', 'stainless', 0.15, 9, 'metric')) / 1000).toBeGreaterThan(4);
  });
});
