/** GROUND_LIMIT against the regressions of simple-statistics, and against records made from a known curve. */
import fc from 'fast-check';
import { linearRegression } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { cell, numberOf } from '../cell';

/**
 * Least squares through the origin by an ordinary regression: with every record also taken at (−x, −y) the line that
 * fits best runs through the origin, and has the same slope as the one that has to.
 */
function slopeThroughOrigin(records: readonly (readonly [number, number])[]): number {
  const mirrored = records.flatMap(([x, cover]) => [
    [x, Math.log(cover)],
    [-x, -Math.log(cover)],
  ]);
  const { m, b } = linearRegression(mirrored);
  expect(Math.abs(b)).toBeLessThan(1e-9);
  return m;
}

const column = (values: readonly number[]): number[][] => values.map((value) => [value]);

describe('GROUND_LIMIT against a regression', () => {
  it('the example of the contract', () => {
    const slope = slopeThroughOrigin([
      [10000, 0.9],
      [20000, 0.8],
      [40000, 0.7],
    ]);
    expect(Math.abs(Math.log(0.75) / slope - 30537)).toBeLessThan(0.5);
  });

  it('any falling records', () => {
    const record = fc.tuple(
      fc.double({ min: 100, max: 100_000, noNaN: true }),
      fc.double({ min: 0.05, max: 0.99, noNaN: true }),
    );
    fc.assert(
      fc.property(
        fc.array(record, { minLength: 3, maxLength: 30 }),
        fc.double({ min: 0.3, max: 0.95, noNaN: true }),
        (records, target) => {
          const limit = numberOf(
            'GROUND_LIMIT',
            column(records.map(([x]) => x)),
            column(records.map(([, cover]) => cover)),
            target,
          );
          expect(limit / (Math.log(target) / slopeThroughOrigin(records))).toBeCloseTo(1, 9);
        },
      ),
      { numRuns: 200 },
    );
  });

  it('finds the curve that made the records', () => {
    const loads = [5000, 12_000, 18_000, 33_000, 60_000];
    const covers = loads.map((load) => Math.exp(-load / 80_000));
    expect(numberOf('GROUND_LIMIT', column(loads), column(covers), 0.6)).toBeCloseTo(
      -Math.log(0.6) * 80_000,
      4,
    );
  });

  it('leads to a stay that leaves the cover aimed at', () => {
    const loads = [5000, 12_000, 18_000];
    const limit = numberOf(
      'GROUND_LIMIT',
      column(loads),
      column(loads.map((load) => Math.exp(-load / 80_000))),
    );
    const days = numberOf('STAY_DAYS', 0.5, 10, 120, limit, 1.3);
    const load = (10 * (120 * days + (1.3 * days * days) / 2)) / 0.5;
    expect(Math.exp(-load / 80_000)).toBeCloseTo(0.75, 10);
  });

  it.each([
    [[1000, 2000], [0.9, 0.8], 'GROUND_LIMIT: liveweight_days must hold at least 3 numbers, got 2'],
    [
      [1000, 2000, 3000],
      [0.9, 1.1, 0.8],
      'GROUND_LIMIT: cover_left, cell 2 must be more than 0 and at most 1, got 1.1',
    ],
    [
      [1000, 2000, 3000],
      [0.9, 0, 0.8],
      'GROUND_LIMIT: cover_left, cell 2 must be more than 0 and at most 1, got 0',
    ],
    [
      [1000, 2000, 3000],
      [1, 1, 1],
      'GROUND_LIMIT: cover_left must fall as liveweight_days rise, got a fit that does not fall',
    ],
    [
      [0, 0, 0],
      [0.9, 0.8, 0.7],
      'GROUND_LIMIT: cover_left must fall as liveweight_days rise, got a fit that does not fall',
    ],
  ])('refuses %j with cover %j', (loads, covers, sentence) => {
    expect(() => cell('GROUND_LIMIT', column(loads), column(covers))).toThrow(sentence);
  });

  it('refuses a target of all or nothing', () => {
    const records = [column([1, 2, 3]), column([0.9, 0.8, 0.7])];
    for (const target of [0, 1, 1.5]) {
      expect(() => cell('GROUND_LIMIT', ...records, target)).toThrow(
        `GROUND_LIMIT: target_cover must be more than 0 and less than 1, got ${target}`,
      );
    }
  });
});
