/**
 * FENCE_VOLTAGE against a fence cut into many short pieces, each with its wire resistance and its leak, solved as a
 * network by Ohm's and Kirchhoff's laws from the far end back. Nothing of the formula is used.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { numberOf } from '../cell';

interface Fence {
  readonly volts: number;
  readonly source: number;
  readonly length: number;
  readonly wire: number;
  readonly leak: number | undefined;
  readonly touch: number | undefined;
}

/** Volts at the far end; leaks sit between the pieces, half a piece's worth at both ends. */
function ladderVolts({ volts, source, length, wire, leak, touch }: Fence, pieces: number): number {
  const along = (wire * length) / pieces;
  const down = leak === undefined ? 0 : length / pieces / leak;
  // As if there were 1 V at the far end: the volts and amperes that the energizer would then have to give.
  let volt = 1;
  let ampere = down / 2 + (touch === undefined ? 0 : 1 / touch);
  for (let i = 1; i <= pieces; i++) {
    volt += ampere * along;
    ampere += volt * (i < pieces ? down : down / 2);
  }
  return volts / (volt + ampere * source);
}

const formulaVolts = ({ volts, source, length, wire, leak, touch }: Fence): number =>
  numberOf('FENCE_VOLTAGE', volts, source, length, wire, leak, touch);

describe('FENCE_VOLTAGE against a ladder of resistors', () => {
  it.each([
    [5, 35, 6687.5],
    [10, 35, 5340.6],
    [0.5, 4000, 7507.0],
  ])('%d km of %d Ω/km leaking 10 kΩ·km: both give %d V', (length, wire, printed) => {
    const fence = { volts: 8000, source: 300, length, wire, leak: 10_000, touch: undefined };
    expect(Math.abs(ladderVolts(fence, 400) - printed)).toBeLessThan(0.1);
    expect(Math.abs(formulaVolts(fence) - printed)).toBeLessThan(0.05);
  });

  it.each([
    [500, 4, 1428.6],
    [500, 0.113, 4670.2],
    [5, 35, 4102.6],
  ])(
    'an animal of 500 Ω behind %d × %d Ω without leak: %d V, by the voltage divider',
    (length, wire, printed) => {
      expect((8000 * 500) / (300 + length * wire + 500)).toBeCloseTo(printed, 1);
      const fence = { volts: 8000, source: 300, length, wire, leak: undefined, touch: 500 };
      expect(Math.abs(formulaVolts(fence) - printed)).toBeLessThan(0.05);
    },
  );

  it('agrees for any fence, with and without leak and touch', () => {
    const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    const fences = fc.record({
      volts: number(1000, 12_000),
      source: number(10, 1000),
      length: number(0.05, 30),
      wire: number(1, 5000),
      leak: fc.option(number(500, 1e6), { nil: undefined }),
      touch: fc.option(number(100, 10_000), { nil: undefined }),
    });
    fc.assert(
      fc.property(fences, (fence) => {
        const pieces = 4000;
        // What the cutting costs: the exponent is off by x³ ÷ 24 pieces², the line's own resistance by x² ÷ 8 pieces².
        const x = fence.leak === undefined ? 0 : fence.length * Math.sqrt(fence.wire / fence.leak);
        const allowed = 1e-9 + (x ** 3 / 24 + x ** 2 / 8) / pieces ** 2;
        const [formula, ladder] = [formulaVolts(fence), ladderVolts(fence, pieces)];
        expect(Math.abs(formula / ladder - 1)).toBeLessThanOrEqual(2 * allowed);
      }),
      { numRuns: 300 },
    );
  });

  it('a hopelessly long or leaky fence has 0 volts, not an overflow', () => {
    expect(numberOf('FENCE_VOLTAGE', 8000, 300, 1e6, 1000, 1)).toBe(0);
    expect(numberOf('FENCE_VOLTAGE', 8000, 0, 1e9, 1e9, 1e-9, 500)).toBe(0);
  });

  it('without wire resistance or without length the divider of energizer, leak and touch is left', () => {
    expect(numberOf('FENCE_VOLTAGE', 8000, 300, 2, 0, 1000)).toBeCloseTo((8000 * 500) / 800, 8);
    expect(numberOf('FENCE_VOLTAGE', 8000, 300, 0, 35, 1000)).toBe(8000);
    expect(numberOf('FENCE_VOLTAGE', 8000, 300, 0, 35, undefined, 500)).toBeCloseTo(5000, 8);
  });
});
