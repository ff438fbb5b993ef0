/**
 * Stocking rate and density: University of Missouri and Oklahoma State, quoted in Ozarks Farm & Neighbor, 3 July 2017
 * (second hand; the last step worked out). Animal units: J. P. Chastain and others, "Swine manure production and nutrient
 * content" (read): 1,000 pounds of live animal weight.
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

it('an animal unit is 1,000 pounds of live weight: four pigs of 250', () => {
  expect(cell('ANIMAL_UNITS', 4, 250)).toBe(1);
});

// German ministry of agriculture, BMEL-Statistik, key of livestock units (read): 500 kg of live mass are one unit; a
// fattening pig from 50 kg on counts 0.16 of it on average, a young pig below 50 kg 0.06.
it('a livestock unit is 500 kg; pigs of 80 and 30 kg count 0.16 and 0.06', () => {
  expect(cell('ANIMAL_UNITS', 1, 500, 'metric')).toBe(1);
  expectPrinted(numberOf('ANIMAL_UNITS', 1, 80, 'metric'), '0.16');
  expectPrinted(numberOf('ANIMAL_UNITS', 1, 30, 'metric'), '0.06');
});
