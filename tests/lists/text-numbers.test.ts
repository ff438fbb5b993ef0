/** Numbers that stand in the sheet as text, in places that write a decimal point and in places that write a comma. */
import { describe, expect, it } from 'vitest';
import type { TabContent, WireCell } from '../../shared/contract';
import { findLists } from '../../shared/lists/find-lists';
import type { GroupList, PaddockList } from '../../shared/lists/model';
import { readGroups } from '../../shared/lists/read-groups';
import { readPaddocks } from '../../shared/lists/read-paddocks';
import { decimalComma } from '../../shared/locale/decimal-comma';
import { laidPaddocks } from '../../shared/tasks/materials/laid-paddocks';
import type { UnitSystem } from '../../shared/units/units';

function tabOf(values: WireCell[][]): TabContent {
  return { name: 'Farm', values, formulas: values.map((row) => row.map(() => '')) };
}

/** What comes of an area typed as text, in the heading's or the farm's unit: square metres, or the refusal. */
function area(text: string, heading: string, locale: string, system: UnitSystem) {
  const tab = tabOf([
    ['Paddock', heading],
    ['North', text],
  ]);
  const [list] = findLists([tab]) as unknown as PaddockList[];
  const { paddocks, problems } = readPaddocks(tab, list!, system, decimalComma(locale));
  return paddocks[0]?.areaSquareMeters ?? problems.map(({ sentence }) => sentence).join();
}

/** Acre: 4046.8564224 m² (international yard, 1959). */
const ACRE = 4046.8564224;

describe('where people write a decimal comma', () => {
  it.each([
    ['0,5', 'Area', 'metric', 5000],
    ['0,5', 'Area', 'US', 0.5 * ACRE],
    ['0,125', 'Area (ha)', 'metric', 1250],
    ['1,500', 'Area (ha)', 'metric', 15_000],
    ['1,5 ha', 'Area', 'US', 15_000],
    ['0.5', 'Area', 'metric', 5000],
    ['0.125', 'Area', 'metric', 1250],
    ['12.25', 'Area', 'US', 12.25 * ACRE],
    ['1234', 'Area (m²)', 'metric', 1234],
    ['12.3456', 'Area', 'metric', 123_456],
  ] as const)('%s under %s, %s', (text, heading, system, squareMeters) => {
    for (const locale of ['de_DE', 'fr_FR', 'es_ES'])
      expect(area(text, heading, locale, system)).toBeCloseTo(squareMeters, 6);
  });

  it.each([
    ['1.234', 'Area (m²)', 'metric', 'm²', '1234 or 1,234'],
    ['2.000', 'Area (m²)', 'metric', 'm²', '2000 or 2,000'],
    ['1.234', 'Area', 'US', 'ac', '1234 or 1,234'],
    ['12.500 m²', 'Area', 'metric', 'ha', '12500 or 12,500'],
  ] as const)('%s is not guessed', (text, heading, system, unit, either) => {
    expect(area(text, heading, 'de_DE', system)).toBe(
      `Farm!B2: area must be typed as a number (${unit}): write ${either}, got "${text}"`,
    );
  });

  it.each([
    ['1.234,5', 1234.5],
    ['1.234.567', 1_234_567],
    ['1 500', 1500],
    ["1'500", 1500],
    ['1 250,5 m²', 1250.5],
    ['ca. 900', 900],
  ])('the signs of %s leave one reading', (text, squareMeters) => {
    expect(area(text, 'Area (m²)', 'de_DE', 'metric')).toBe(squareMeters);
  });

  it.each(['12 50', '1,2,3', ',', '1,5 lb', '1.23.456'])('%s is refused', (text) => {
    expect(area(text, 'Area (m²)', 'de_DE', 'metric')).toMatch(/^Farm!B2: area must be a number/);
  });
});

describe('where people write a decimal point', () => {
  it.each([
    ['0.5', 'Area', 'US', 0.5 * ACRE],
    ['0.5', 'Area', 'metric', 5000],
    ['1.234', 'Area', 'metric', 12_340],
    ['1.234 ac', 'Area', 'metric', 1.234 * ACRE],
  ] as const)('%s under %s, %s', (text, heading, system, squareMeters) => {
    for (const locale of ['en_US', 'en_GB'])
      expect(area(text, heading, locale, system)).toBeCloseTo(squareMeters, 6);
  });

  /** Square foot: 0.3048² m² (international foot, 1959). */
  it.each([
    ['1,500', 1500 * 0.3048 ** 2],
    ['1,234.5', 1234.5 * 0.3048 ** 2],
    ['1,234,567', 1_234_567 * 0.3048 ** 2],
    ['0,5', 0.5 * 0.3048 ** 2],
    ['1,5 ha', 15_000],
  ])('%s has one reading', (text, squareMeters) => {
    expect(area(text, 'Area (sq ft)', 'en_US', 'US')).toBeCloseTo(squareMeters, 6);
  });

  it('a comma is shown where the locale decided that it parts thousands', () => {
    const tab = tabOf([
      ['Paddock', 'Area (sq ft)'],
      ['North', '3,322'],
    ]);
    const read = readPaddocks(tab, findLists([tab])[0] as unknown as PaddockList, 'US', false);
    expect(read.notes).toEqual(['Read from text: Farm!B2 “3,322” as 3322.']);
  });

  it('and is a decimal sign where other numbers of the list have one', () => {
    const tab = tabOf([
      ['Paddock', 'Area (ha)'],
      ['North', '1,125'],
      ['South', '0,25'],
    ]);
    const { paddocks } = readPaddocks(tab, findLists([tab])[0] as unknown as PaddockList, 'metric', false);
    expect(paddocks.map(({ areaSquareMeters }) => areaSquareMeters)).toEqual([11_250, 2500]);
  });

  it.each(['1,2,3', '1.2.3', 'about'])('%s is refused', (text) => {
    expect(area(text, 'Area (ha)', 'en_GB', 'metric')).toMatch(/^Farm!B2: area must be a number/);
  });

  /** Foot: 0.3048 m (1959). */
  it.each([
    ["180'", 180],
    ['210 ft', 210],
    [`180' 6"`, 180.5],
    ['1,250 ft', 1250],
  ])('%s is a side in feet, whatever the farm counts in', (text, feet) => {
    const tab = tabOf([
      ['Paddock', 'Width', 'Length (m)'],
      ['North', text, 100],
    ]);
    const { paddocks } = readPaddocks(tab, findLists([tab])[0] as unknown as PaddockList, 'metric', false);
    expect(paddocks[0]?.areaSquareMeters).toBeCloseTo(feet * 0.3048 * 100, 6);
  });
});

describe('other fields of text', () => {
  const tab = tabOf([
    ['Group', 'Head', 'Weight (kg)', 'Weighed on', 'Until'],
    ['Reds', '10', '32,5', '2026-04-20', '110,5'],
    ['Blacks', '1.200', '32,5', '2026-04-20', '1.100'],
  ]);
  const list = findLists([tab])[0] as unknown as GroupList;

  it('weights with a comma are read, weights and heads that may be thousands are not', () => {
    const { groups, problems, notes } = readGroups(tab, list, 'metric', true);
    expect(groups).toMatchObject([{ weightKg: 32.5, untilWeightKg: 110.5 }]);
    expect(problems.map(({ sentence }) => sentence)).toEqual([
      'Farm!B3: head must be typed as a number: write 1200 or 1,200, got "1.200"',
    ]);
    expect(notes).toContain(
      'Farm!E3: "1.100" is not read as “until” of “Blacks”: it must be typed as a number (kg): write 1100 or 1,100.',
    );
  });

  it('so are sides that are to be fenced', () => {
    const land = tabOf([
      ['Paddock', 'Width (m)', 'Length (m)'],
      ['North', '20,5', '40,5'],
    ]);
    const paddocks = findLists([land])[0] as unknown as PaddockList;
    const read = readPaddocks(land, paddocks, 'metric', true);
    const laid = laidPaddocks(land, paddocks, read.paddocks, { system: 'metric', comma: true }, 1);
    expect(laid.problems).toEqual([]);
    expect(laid.paddocks).toMatchObject([{ widthMeters: 20.5, lengthMeters: 40.5 }]);
  });
});
