/** PIG_WEIGHT and DAYS_TO_WEIGHT are inverse to each other; both against a pig grown in small steps; STAY_DAYS too. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cell, numberOf } from '../cell';

const kg = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('PIG_WEIGHT and DAYS_TO_WEIGHT', () => {
  it('undo each other by the growth table', () => {
    fc.assert(
      fc.property(kg(5, 135), kg(5, 135), (one, two) => {
        const [from, to] = one < two ? [one, two] : [two, one];
        const days = numberOf('DAYS_TO_WEIGHT', from, to, undefined, 'metric');
        // A hair less, because the last rounding may end past the heaviest weight of the table.
        expect(numberOf('PIG_WEIGHT', from, days * (1 - 1e-12), undefined, 'metric')).toBeCloseTo(to, 8);
      }),
    );
  });

  it('undo each other with a given gain', () => {
    fc.assert(
      fc.property(kg(1, 400), kg(0, 500), kg(0.05, 3), (from, days, gain) => {
        const to = numberOf('PIG_WEIGHT', from, days, gain);
        expect(numberOf('DAYS_TO_WEIGHT', from, to, gain)).toBeCloseTo(days, 6);
      }),
    );
  });

  it('are what a pig comes to that gains by the table in small steps', () => {
    const bands = [
      [7, 210],
      [11, 335],
      [25, 585],
      [50, 758],
      [75, 900],
      [100, 917],
      [135, 867],
    ] as const;
    let weight = 8;
    const steps = 1000;
    for (let i = 0; i < 100 * steps; i++) {
      weight += (bands.find(([below]) => weight < below)?.[1] ?? 0) / 1000 / steps;
    }
    expect(numberOf('PIG_WEIGHT', 8, 100, undefined, 'metric')).toBeCloseTo(weight, 2);
  });

  it('speak of 5 to 135 kg only, and say so in the unit that was used', () => {
    expect(() => cell('PIG_WEIGHT', 300, 1)).toThrow(
      'PIG_WEIGHT: start_weight must be from 11.03 lb to 297.6 lb unless daily_gain is given, got 300 lb',
    );
    expect(() => cell('PIG_WEIGHT', 4, 1, undefined, 'metric')).toThrow(
      'PIG_WEIGHT: start_weight must be from 5 kg to 135 kg unless daily_gain is given, got 4 kg',
    );
    expect(() => cell('PIG_WEIGHT', 130, 30, undefined, 'metric')).toThrow(
      'PIG_WEIGHT: days must end before the pig passes 135 kg unless daily_gain is given',
    );
    expect(() => cell('DAYS_TO_WEIGHT', 50, 136, undefined, 'metric')).toThrow(
      'DAYS_TO_WEIGHT: target_weight must be from 5 kg to 135 kg unless daily_gain is given, got 136 kg',
    );
    expect(() => cell('DAYS_TO_WEIGHT', 100, 90)).toThrow(
      'DAYS_TO_WEIGHT: target_weight must be at least start_weight (100 lb), got 90 lb',
    );
    expect(numberOf('PIG_WEIGHT', 300, 10, 1.5)).toBeCloseTo(315, 10);
    expect(cell('DAYS_TO_WEIGHT', 25, 25, undefined, 'metric')).toBe(0);
  });
});

describe('STAY_DAYS', () => {
  it('against adding up liveweight in small steps', () => {
    const [area, head, weight, limit, gain] = [0.4, 9, 85, 30_000, 1.4];
    let [load, days] = [0, 0];
    const step = 1e-4;
    while (load < limit * area) {
      load += head * (weight + gain * (days + step / 2)) * step;
      days += step;
    }
    expect(numberOf('STAY_DAYS', area, head, weight, limit, gain)).toBeCloseTo(days, 3);
  });

  it('without gain is limit × area ÷ liveweight, and a small gain changes little', () => {
    const flat = (40_000 * 0.25) / (12 * 150);
    expect(numberOf('STAY_DAYS', 0.25, 12, 150, 40_000)).toBeCloseTo(flat, 12);
    expect(numberOf('STAY_DAYS', 0.25, 12, 150, 40_000, 1e-12)).toBeCloseTo(flat, 9);
  });
});
