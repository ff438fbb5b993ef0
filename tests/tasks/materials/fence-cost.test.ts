/**
 * Iowa State University Extension, "Estimated costs for livestock fencing".
 * 2012 edition, woven wire, 1,320 ft: as reprinted by agriculture.com, 29 Feb 2012 (second hand).
 * Earlier undated edition FM-1855, yearly ownership per 1,320 ft: seen.
 */
import { describe, expect, test } from 'vitest';
import { firstCost, yearlyCost } from './fence-cost';

describe('Iowa State 2012, 1,320 ft of woven wire', () => {
  const lines = [
    { item: '8-in wood posts', quantity: 4, price: 28, printed: 112 },
    { item: '4-in wood posts', quantity: 57, price: 9, printed: 513 },
    { item: '6.5-ft steel posts', quantity: 55, price: 5, printed: 275 },
    { item: 'staples and clips, lb', quantity: 10, price: 1.8, printed: 18 },
    { item: 'barbed wire, ft', quantity: 1320, price: 0.06, printed: 79.2 },
    { item: 'woven wire, ft', quantity: 1320, price: 0.7, printed: 924 },
    { item: 'labour, h', quantity: 42, price: 15.05, printed: 632.1 },
  ];

  test.each(lines)('$item', (line) => {
    expect(firstCost([line])).toBeCloseTo(line.printed, 2);
  });

  test('total 2,553.30 (printed 2,553.31, its own rows add up to .30), 1.93 a foot', () => {
    expect(firstCost(lines)).toBeCloseTo(2553.3, 2);
    expect(firstCost(lines) / 1320).toBeCloseTo(1.93, 2);
  });
});

describe('Iowa State FM-1855, yearly ownership of a quarter mile', () => {
  // First costs are not printed; they follow from the printed depreciation × life, each within half a dollar a year.
  const kinds = [
    { kind: 'woven', life: 20, upkeep: 8, printed: [99, 79, 159, 338, 0.26] },
    { kind: 'barbed', life: 20, upkeep: 8, printed: [81, 65, 129, 274, 0.21] },
    { kind: 'high-tensile, 8 wires', life: 25, upkeep: 5, printed: [59, 59, 74, 193, 0.15] },
    { kind: 'high-tensile electric, 5 wires', life: 25, upkeep: 5, printed: [37, 37, 46, 121, 0.09] },
  ] as const;

  test.each(kinds)('$kind', ({ life, upkeep, printed }) => {
    const [depreciation, interest, maintenance, total, perFoot] = printed;
    // The one first cost that the printed upkeep names; interest, depreciation and total must then agree.
    const cost = maintenance / (upkeep / 100);
    const halfDollarOfUpkeep = 0.5 / (upkeep / 100);
    const year = yearlyCost(cost, life, upkeep / 100, 0.08);
    expect(Math.abs(year.depreciation - depreciation)).toBeLessThanOrEqual(0.5 + halfDollarOfUpkeep / life);
    expect(Math.abs(year.interest - interest)).toBeLessThanOrEqual(0.5 + halfDollarOfUpkeep * 0.04);
    // Printed totals are off by up to 1 from their own rows.
    expect(Math.abs(year.total - total)).toBeLessThanOrEqual(2);
    expect(Math.abs(year.total / 1320 - perFoot)).toBeLessThanOrEqual(0.006);
  });
});
