/**
 * Stocking rate and density: University of Missouri and Oklahoma State, quoted in Ozarks Farm & Neighbor, 3 July 2017
 * (second hand; the last step worked out). Animal units: USDA-NRCS manure table, archived 2009 (read): 2.67 breeders or
 * 9.09 slaughter pigs to an animal unit.
 */
import { describe, expect, it } from 'vitest';
import { cell, numberOf } from '../cell';
import { expectPrinted } from './expect-printed';

describe('100 steers of 700 lb on 100 acres', () => {
  it('on all of it: 1 head, 700 lb an acre', () => {
    expect(cell('STOCKING_DENSITY', 100, 100)).toBe(1);
    expect(cell('STOCKING_DENSITY', 100, 100, 700)).toBe(700);
  });

  it('on one of ten 10 acre paddocks: 10 head, 7,000 lb an acre', () => {
    expect(cell('STOCKING_DENSITY', 100, 10)).toBe(10);
    expect(cell('STOCKING_DENSITY', 100, 10, 700)).toBe(7000);
  });
});

describe('Animals 10:1666, 2020 (read): head per hectare and per acre', () => {
  it.each([
    [37, '15'],
    [74, '30'],
    [111, '45'],
    [148, '60'],
  ])('%d pigs on a hectare are %s on an acre', (perHectare, perAcre) => {
    expectPrinted(numberOf('STOCKING_DENSITY', perHectare, 2.471054), perAcre);
  });
});

// Pietrosemoli and others, the same paper (abstract): cover held best at 37 pigs a hectare over 14 weeks.
it('37 pigs on a hectare for 14 weeks are 1,467 head-days an acre', () => {
  expectPrinted(numberOf('STOCKING_DENSITY', 37, 2.471054) * 14 * 7, '1467');
});
