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

  // Trade page (read): 12.5 gauge high-tensile fence wire, 0.099 in, has 56 Ω a mile.
  it('12.5 gauge high-tensile: 56 Ω a mile', () => {
    expectPrinted(numberOf('WIRE_OHMS', 'high-tensile steel', 0.099) * 5.28, '56');
  });

  // Page on fence wire, techniquesdelevage.fr (read): galvanised steel of 2.5 mm 30 to 50 Ω a km, of 1.6 mm 80 to 100.
  it.each([
    [2.5, 30, 50],
    [1.6, 80, 100],
  ])('fence wire of %d mm: %d to %d Ω a km', (millimeters, least, most) => {
    const ohms = numberOf('WIRE_OHMS', 'high-tensile steel', millimeters, 1, 'metric');
    expect(ohms).toBeGreaterThanOrEqual(least);
    expect(ohms).toBeLessThanOrEqual(most);
  });

  // From memory: electrical-grade aluminium conducts 61 % of annealed copper, 1010 steel about 12 %; copper 1.7241e-8 Ω m
  // by definition of the standard (IEC 60028). Tolerance: half of the last digit, 0.5 in 61 and in 12.
  it.each([
    ['aluminium', 0.61, 0.5 / 61],
    ['aluminum', 0.61, 0.5 / 61],
    ['mild steel', 0.12, 0.5 / 12],
  ])('%s conducts %d of standard copper', (metal, share, tolerance) => {
    const ohms = (1.7241e-8 / (Math.PI * 0.001 ** 2)) * 1000;
    expect(Math.abs(numberOf('WIRE_OHMS', metal, 2, 1, 'metric') / (ohms / share) - 1)).toBeLessThan(
      tolerance,
    );
  });

  // Data sheets of AISI 304 (roymech.co.uk, valleydesign.com and others, read): 72 µΩ·cm at 20 °C. Nine strands of 0.2 mm.
  it('stainless polywire is of 72 µΩ·cm', () => {
    const microOhmCentimeters =
      numberOf('WIRE_OHMS', 'stainless', 0.2, 9, 'metric') * (9 * Math.PI * 0.1 ** 2) * 0.1;
    expectPrinted(microOhmCentimeters, '72');
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
