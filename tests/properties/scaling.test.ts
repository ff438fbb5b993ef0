/** Scaling and order: twice as much fence takes twice as much wire, a longer rest never fewer paddocks, and so on. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { entryNamed, numberOf, rowOf } from '../cell';
import { goodCell } from './plausible';

const RELATIVE = 1e-9;

/** Good arguments of a function as a tuple, optional ones given as well, in metric units. */
function goodArguments(name: string): fc.Arbitrary<readonly unknown[]> {
  return fc.tuple(...entryNamed(name).params.map((param) => goodCell(param, 'metric')));
}

function positionOf(name: string, argument: string): number {
  const at = entryNamed(name).params.findIndex((param) => param.name === argument);
  if (at < 0) throw new Error(`${name} has no ${argument}`);
  return at;
}

function replaced(args: readonly unknown[], at: number, value: unknown): readonly unknown[] {
  return args.map((arg, i) => (i === at ? value : arg));
}

/** The answer as numbers, or undefined where the arguments are refused together (as groups above paddocks). */
function answer(name: string, args: readonly unknown[]): readonly number[] | undefined {
  try {
    const { kind } = entryNamed(name).result;
    return kind === 'value' ? [numberOf(name, ...args)] : rowOf(name, ...args);
  } catch {
    return undefined;
  }
}

/** Checks a relation between the answers before and after one argument is changed, and that it was checked at all. */
function compare(
  name: string,
  argument: string,
  change: (value: number) => number,
  check: (before: number, after: number) => void,
): void {
  const at = positionOf(name, argument);
  let compared = 0;
  fc.assert(
    fc.property(goodArguments(name), (args) => {
      const before = answer(name, args);
      const after = answer(name, replaced(args, at, change(args[at] as number)));
      if (!before || !after) return;
      compared++;
      before.forEach((value, i) => {
        check(value, after[i]!);
      });
    }),
    { numRuns: 100 },
  );
  expect(compared).toBeGreaterThan(10);
}

describe('in proportion', () => {
  it.each([
    ['FENCE_LENGTH', 'strands', 2],
    ['ENERGIZER_JOULES', 'fence_length', 2],
    ['ENERGIZER_JOULES', 'load_factor', 3],
    ['FENCE_VOLTAGE', 'source_volts', 2],
    ['FEED_NEEDED', 'head', 2],
    ['FEED_NEEDED', 'outdoor_factor', 2],
    ['WATER_NEEDED', 'head', 2],
    ['SHELTER_AREA', 'head', 2],
    ['SHELTER_AREA', 'k', 2],
    ['STOCKING_DENSITY', 'head', 2],
    ['STOCKING_DENSITY', 'weight', 2],
    ['ANIMAL_UNITS', 'weight', 2],
    ['NUTRIENT_LOAD', 'head', 2],
    ['NUTRIENT_LOAD', 'weight', 2],
    ['NUTRIENT_LOAD', 'days', 2],
    ['REST_PERIOD', 'days_on', 2],
    ['DAYS_ON', 'rest_days', 2],
    ['GRAZING_AREA', 'demand', 2],
    ['GRAZING_AREA', 'days', 2],
  ] as const)('%s with %s', (name, argument, factor) => {
    compare(
      name,
      argument,
      (value) => value * factor,
      (before, after) => {
        expect(Math.abs(after - factor * before)).toBeLessThanOrEqual(RELATIVE * Math.abs(factor * before));
      },
    );
  });

  it.each([
    ['STOCKING_DENSITY', 'area'],
    ['NUTRIENT_LOAD', 'area'],
    ['GRAZING_AREA', 'available_forage'],
    ['WIRE_OHMS', 'wires'],
  ] as const)('%s against %s', (name, argument) => {
    compare(
      name,
      argument,
      (value) => value * 2,
      (before, after) => {
        expect(Math.abs(2 * after - before)).toBeLessThanOrEqual(RELATIVE * before);
      },
    );
  });

  it('WIRE_OHMS with the square of the diameter', () => {
    compare(
      'WIRE_OHMS',
      'diameter',
      (value) => value * 3,
      (before, after) => {
        expect(Math.abs(9 * after - before)).toBeLessThanOrEqual(RELATIVE * before);
      },
    );
  });

  it('FENCE_GRID with the size of the paddocks', () => {
    fc.assert(
      fc.property(goodArguments('FENCE_GRID'), ([rows, columns, width, length]) => {
        const small = rowOf('FENCE_GRID', rows, columns, width, length);
        const large = rowOf('FENCE_GRID', rows, columns, Number(width) * 4, Number(length) * 4);
        small.forEach((value, i) => {
          expect(large[i]).toBeCloseTo(4 * value, 4);
        });
        expect(small[2]).toBeCloseTo((small[0] ?? 0) + (small[1] ?? 0), 6);
      }),
    );
  });

  it('STAY_DAYS with area and head together: half the herd on half the ground stays as long', () => {
    fc.assert(
      fc.property(goodArguments('STAY_DAYS'), ([area, head, ...rest]) => {
        const whole = numberOf('STAY_DAYS', area, head, ...rest);
        expect(numberOf('STAY_DAYS', Number(area) / 2, Number(head) / 2, ...rest) / whole).toBeCloseTo(1, 9);
      }),
    );
  });
});

describe('in order', () => {
  it.each([
    ['POST_COUNT', 'width'],
    ['ROLL_COUNT', 'length'],
    ['STRAND_HEIGHTS', 'weight'],
    ['GROUND_RODS', 'joules'],
    ['FENCE_VOLTAGE', 'leak_ohms'],
    ['FENCE_VOLTAGE', 'touch_ohms'],
    ['PIG_WEIGHT', 'days'],
    ['PIG_WEIGHT', 'daily_gain'],
    ['DAYS_TO_WEIGHT', 'target_weight'],
    ['FEED_NEEDED', 'days'],
    ['FEED_NEEDED', 'start_weight'],
    ['FEED_NEEDED', 'daily_gain'],
    ['WATER_NEEDED', 'weight'],
    ['WATER_NEEDED', 'temperature'],
    ['SHELTER_AREA', 'weight'],
    ['REST_PERIOD', 'paddocks'],
    ['PADDOCKS_NEEDED', 'rest_days'],
    ['PADDOCKS_NEEDED', 'groups'],
    ['STAY_DAYS', 'limit'],
    ['REGROWTH_DAYS', 'growth_needed'],
  ] as const)('%s never falls as %s rises', (name, argument) => {
    compare(
      name,
      argument,
      (value) => (Number.isInteger(value) ? value + 1 : value * 1.25 + 0.01),
      (before, after) => {
        expect(after).toBeGreaterThanOrEqual(before - 1e-9 * Math.max(1, Math.abs(before)));
      },
    );
  });

  it.each([
    ['POST_COUNT', 'spacing'],
    ['SIDE_POSTS', 'spacing'],
    ['BOUNDARY_POSTS', 'spacing'],
    ['ROLL_COUNT', 'on_hand'],
    ['GROUND_RODS', 'rod_length'],
    ['FENCE_VOLTAGE', 'length'],
    ['FENCE_VOLTAGE', 'wire_ohms'],
    ['FENCE_VOLTAGE', 'source_ohms'],
    ['PADDOCKS_NEEDED', 'days_on'],
    ['DAYS_ON', 'paddocks'],
    ['STAY_DAYS', 'head'],
    ['STAY_DAYS', 'weight'],
    ['STAY_DAYS', 'daily_gain'],
  ] as const)('%s never rises as %s rises', (name, argument) => {
    compare(
      name,
      argument,
      (value) => (Number.isInteger(value) ? value + 1 : value * 1.25 + 0.01),
      (before, after) => {
        expect(after).toBeLessThanOrEqual(before + 1e-9 * Math.max(1, Math.abs(before)));
      },
    );
  });
});

describe('counts of things', () => {
  const side = fc.double({ min: 0.5, max: 5000, noNaN: true });

  it('posts leave no gap wider than asked for, and one fewer a side would', () => {
    fc.assert(
      fc.property(side, side, fc.double({ min: 0.5, max: 200, noNaN: true }), (width, length, spacing) => {
        const posts = numberOf('POST_COUNT', width, length, spacing);
        expect(posts).toBe(numberOf('SIDE_POSTS', [[width], [length], [width], [length]], spacing));
        const gaps = posts / 2;
        expect(gaps * spacing).toBeGreaterThanOrEqual((width + length) * (1 - 1e-8));
        expect((gaps - 2) * spacing).toBeLessThan(width + length);
        expect(numberOf('SIDE_POSTS', [[width], [length]], spacing, false)).toBe(gaps + 1);
      }),
    );
  });

  it('floating error is forgiven: so many gaps of a third of a panel are that many', () => {
    for (let gaps = 1; gaps <= 400; gaps++) {
      expect(numberOf('SIDE_POSTS', (gaps * 16) / 3, 16 / 3)).toBe(gaps);
      expect(numberOf('ROLL_COUNT', gaps * 0.1, 0.1)).toBe(gaps);
    }
  });

  it('rolls bought and on hand cover the length, with less than a roll to spare', () => {
    fc.assert(
      fc.property(side, fc.double({ min: 1, max: 2000, noNaN: true }), fc.nat(5), (length, roll, onHand) => {
        const rolls = numberOf('ROLL_COUNT', length, roll, onHand);
        expect((rolls + onHand) * roll).toBeGreaterThanOrEqual(length * (1 - 1e-8));
        if (rolls > 0) expect((rolls + onHand - 1) * roll).toBeLessThan(length);
      }),
    );
  });

  it('paddocks, rest and stay belong together', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 60 }),
        side,
        fc.integer({ min: 1, max: 5 }),
        (paddocks, days, groups) => {
          if (paddocks <= groups) return;
          const rest = numberOf('REST_PERIOD', paddocks, days, groups);
          expect(numberOf('PADDOCKS_NEEDED', rest, days, groups)).toBe(paddocks);
          expect(numberOf('DAYS_ON', paddocks, rest, groups) / days).toBeCloseTo(1, 9);
        },
      ),
    );
  });
});
