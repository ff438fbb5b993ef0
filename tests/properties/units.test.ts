/** Units: conversion there and back, exact factors, and the same answer whichever system the question is put in. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CATALOGUE } from '../../shared/catalogue';
import type { ColumnOut } from '../../shared/catalogue/define';
import { call } from '../../shared/door/call';
import { fromInside, QUANTITIES, type Quantity, toInside, type UnitSystem } from '../../shared/units/units';
import { UTC_EDGE } from '../cell';
import { goodCell, goodNumber } from './plausible';

const SYSTEMS = ['US', 'metric'] as const;

describe('factors, by definition', () => {
  it.each<[Quantity, number, UnitSystem, number]>([
    ['length', 1, 'US', 0.3048],
    ['length', 5280, 'US', 1609.344],
    ['height', 1, 'US', 0.0254],
    ['diameter', 1, 'US', 0.0254],
    ['mass', 1, 'US', 0.45359237],
    ['area', 1, 'US', 4046.8564224],
    ['area', 1, 'metric', 10_000],
    ['floorArea', 1, 'US', 0.09290304],
    ['volumePerDay', 1, 'US', 3.785411784],
    ['temperature', 32, 'US', 0],
    ['temperature', 212, 'US', 100],
    ['temperature', -40, 'US', -40],
    // 1 lb/ac is 1.120851 kg/ha (from memory; conversion tables).
    ['massPerArea', 1, 'US', 1.120851e-4],
    ['loadPerArea', 1, 'US', 1.120851e-4],
  ])('%s: %d %s is %d inside', (quantity, value, system, inside) => {
    expect(toInside(value, quantity, system)).toBeCloseTo(inside, inside < 0.001 ? 9 : 10);
  });

  it('an acre is a tenth of a furlong squared: 43,560 square feet', () => {
    expect(43_560 * 0.3048 ** 2).toBeCloseTo(4046.8564224, 9);
  });
});

describe('there and back', () => {
  it.each(Object.keys(QUANTITIES) as Quantity[])('%s', (quantity) => {
    for (const system of SYSTEMS) {
      fc.assert(
        fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), (value) => {
          const back = fromInside(toInside(value, quantity, system), quantity, system);
          expect(Math.abs(back - value)).toBeLessThanOrEqual(1e-12 * Math.max(100, Math.abs(value)));
        }),
      );
    }
  });
});

/** The numbers of an answer in inside units. */
function insideNumbers(
  answer: unknown,
  columns: readonly ColumnOut[],
  system: UnitSystem,
): readonly number[] {
  const row = Array.isArray(answer) ? (answer[0] as number[]) : [answer as number];
  return row.map((value, i) => {
    const quantity = (columns[i] ?? columns[0])?.quantity;
    return quantity ? toInside(value, quantity, system) : value;
  });
}

// ANIMAL_UNITS counts 1000 lb or 500 kg, which are different units; TRAINING_PEN gives lines.
const WITH_UNITS = CATALOGUE.filter(
  ({ name, params, result }) =>
    params.some((param) => param.kind === 'units') && result.kind !== 'lines' && name !== 'ANIMAL_UNITS',
);

describe('the same question in either system', () => {
  it.each(WITH_UNITS.map((entry) => [entry.name, entry] as const))('%s', (_, entry) => {
    const columns = entry.result.kind === 'row' ? entry.result.columns : [entry.result as ColumnOut];
    const inside = fc.tuple(
      ...entry.params.map((param) =>
        param.kind === 'number' && param.quantity ? goodNumber(param) : goodCell(param, 'metric'),
      ),
    );
    const asked = (values: readonly unknown[], system: UnitSystem): readonly unknown[] =>
      entry.params.map((param, i) => {
        if (param.kind === 'units') return system;
        return param.kind === 'number' && param.quantity
          ? fromInside(values[i] as number, param.quantity, system)
          : values[i];
      });
    const answered = (values: readonly unknown[], system: UnitSystem): readonly number[] | undefined => {
      try {
        return insideNumbers(call(entry, asked(values, system), UTC_EDGE), columns, system);
      } catch {
        return undefined;
      }
    };
    let compared = 0;
    fc.assert(
      fc.property(inside, (values) => {
        const [us, metric] = [answered(values, 'US'), answered(values, 'metric')];
        // At the very edge of a limit the last bit may fall either way.
        if (!us || !metric) return;
        compared++;
        us.forEach((value, i) => {
          // What is the difference of two arguments over a small third is only as exact as their last bits.
          expect(Math.abs(value - metric[i]!)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(value)));
        });
      }),
      { numRuns: 200 },
    );
    expect(compared).toBeGreaterThan(20);
  });
});
