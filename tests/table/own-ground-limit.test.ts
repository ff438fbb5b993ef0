import { describe, expect, it } from 'vitest';
import type { PastRow } from '../../shared/table/model';
import { ownGroundLimit } from '../../shared/table/own-ground-limit';
import { fromInside, toInside } from '../../shared/units/units';

/** A stay of one day of grown pigs that do not grow, on one acre: head × weight is the load in lb·days/ac. */
function stay(loadPounds: number, cover: number | undefined): PastRow {
  return {
    sheetRow: 1,
    group: 'G',
    paddock: 'P',
    inDay: 20_000,
    outDay: 20_001,
    days: 1,
    head: 10,
    startWeightKg: toInside(loadPounds / 10, 'mass', 'US'),
    growthDays: 30,
    dailyGainKg: 0,
    areaSquareMeters: toInside(1, 'area', 'US'),
    ...(cover !== undefined && { cover }),
    id: '#1',
    typed: [],
    lookups: [],
  };
}

const inPounds = (limit: number | undefined): number => fromInside(limit ?? Number.NaN, 'massPerArea', 'US');

describe('ownGroundLimit', () => {
  // The worked example of GROUND_LIMIT in the contract of the cell functions.
  const example = [stay(10_000, 0.9), stay(20_000, 0.8), stay(40_000, 0.7)];

  it('gives what GROUND_LIMIT gives for the same records', () => {
    const own = ownGroundLimit(example);
    expect(inPounds(own.limit)).toBeCloseTo(30_537, 0);
    expect(own).toMatchObject({ records: 3, spread: undefined });
  });

  it('tells the spread with each record left out, from four on', () => {
    const own = ownGroundLimit([...example, stay(30_000, 0.75)]);
    const [lowest, highest] = own.spread ?? [];
    // Leaving out the fourth gives the example again; the fourth lies at 30 000 by itself, since 0.75 is the aim.
    expect(inPounds(lowest)).toBeLessThan(30_537);
    expect(inPounds(highest)).toBeGreaterThanOrEqual(30_536);
    expect(inPounds(own.limit)).toBeGreaterThan(30_000);
    expect(inPounds(own.limit)).toBeLessThan(30_537);
  });

  it('passes over blanks and what is no share of the ground', () => {
    const own = ownGroundLimit([...example, stay(5000, undefined), stay(5000, 75), stay(5000, 0)]);
    expect(own.records).toBe(3);
    expect(inPounds(own.limit)).toBeCloseTo(30_537, 0);
  });

  it('has no limit for too few records or cover that does not fall', () => {
    expect(ownGroundLimit(example.slice(0, 2))).toEqual({ records: 2, limit: undefined, spread: undefined });
    const bare = [stay(10_000, 1), stay(20_000, 1), stay(40_000, 1)];
    expect(ownGroundLimit(bare).limit).toBeUndefined();
  });
});
