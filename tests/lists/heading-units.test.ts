/**
 * Units in headings: read, refused or told, never passed over.
 *
 * Sizes, from memory: international yard and pound (1959); stone of 14 lb (UK Weights and Measures Act 1985);
 * hectare of 10,000 m² and tonne of 1000 kg (SI Brochure, 9th edition, table 8), an are being a hundredth of a
 * hectare; metric dunam of 1000 m².
 */
import { describe, expect, it } from 'vitest';
import type { TabContent, WireCell } from '../../shared/contract';
import { findLists } from '../../shared/lists/find-lists';
import type { GroupList, PaddockList } from '../../shared/lists/model';
import { readGroups } from '../../shared/lists/read-groups';
import { readPaddocks } from '../../shared/lists/read-paddocks';
import type { UnitSystem } from '../../shared/units/units';

function tabOf(values: WireCell[][]): TabContent {
  return { name: 'Farm', values, formulas: values.map((row) => row.map(() => '')) };
}

function paddock(heading: string, cell: WireCell, system: UnitSystem = 'metric', extra: WireCell[][] = []) {
  const [names = [], cells = []] = extra;
  const tab = tabOf([
    ['Paddock', heading, ...names],
    ['North', cell, ...cells],
  ]);
  const [list] = findLists([tab]) as unknown as PaddockList[];
  return readPaddocks(tab, list!, system, false);
}

function group(heading: string, cell: WireCell, system: UnitSystem = 'metric') {
  const tab = tabOf([
    ['Group', 'Head', 'Weight (kg)', 'Weighed on', heading],
    ['Reds', 10, 30, { d: '2026-04-20' }, cell],
  ]);
  const [list] = findLists([tab]) as unknown as GroupList[];
  return readGroups(tab, list!, system, false);
}

describe('units that are read', () => {
  it.each([
    ['Groei (g/dag)', 500, 0.5],
    ['Zunahme (g/Tier/Tag)', 500, 0.5],
    ['Croissance (g par jour)', 500, 0.5],
    ['Incremento (g al giorno)', 500, 0.5],
    ['ADPV (kg/día)', 0.5, 0.5],
    ['GMD', '500 g/dia', 0.5],
    ['Gain', '2 lb/j', 0.907_184_74],
    ['Tillväxt (g/dygn)', 500, 0.5],
  ])('a gain a day: %s, %s', (heading, cell, kg) => {
    const { groups, problems } = group(heading, cell);
    expect(problems).toEqual([]);
    expect(groups[0]!.dailyGainKg).toBeCloseTo(kg, 9);
  });

  it.each([
    ['Area (a)', 10, 1000],
    ['Area (ares)', 10, 1000],
    ['Area, a', 10, 1000],
    ['Area (dunam)', 2, 2000],
    ['Area (approx) (ac)', 1, 4046.8564224],
    ['Area (approx. ac)', 1, 4046.8564224],
    ['Area (ha incl. ditches)', 1, 10_000],
    ['Acres fenced', 1, 4046.8564224],
    ['Area (sq yd)', 1, 0.9144 ** 2],
    ['Area in hectares', 1, 10_000],
  ])('%s', (heading, cell, squareMeters) => {
    for (const system of ['US', 'metric'] as const) {
      const { paddocks, problems, notes } = paddock(heading, cell, system);
      expect({ problems, notes }).toEqual({ problems: [], notes: [] });
      expect(paddocks[0]!.areaSquareMeters).toBeCloseTo(squareMeters, 9);
    }
  });

  it.each([
    ['Weeks of rest', 5, 35],
    ['Rest (weeks)', 5, 35],
    ['Days of rest', 5, 5],
  ])('%s', (heading, cell, days) => {
    const { paddocks, problems, notes } = paddock('Area (ha)', 1, 'metric', [[heading], [cell]]);
    expect({ problems, notes }).toEqual({ problems: [], notes: [] });
    expect(paddocks[0]!.restDays).toBe(days);
  });

  it.each([
    ['Daily gain (kg/week)', 4.2, 0.6],
    ['Daily gain (kg per week)', 4.2, 0.6],
    ['Weekly gain (kg)', 4.2, 0.6],
    ['Gain (lb/wk)', 7, 0.45359237],
    ['Daily gain (g)', 600, 0.6],
    ['Daily gain (g/pig/day)', 600, 0.6],
    ['Daily gain (oz)', 16, 0.45359237],
    ['ADG, lb per head per day', 1, 0.45359237],
  ])('%s', (heading, cell, kgPerDay) => {
    for (const system of ['US', 'metric'] as const) {
      const { groups, problems, notes } = group(heading, cell, system);
      expect({ problems, notes }).toEqual({ problems: [], notes: [] });
      expect(groups[0]!.dailyGainKg).toBeCloseTo(kgPerDay, 12);
    }
  });

  it.each([
    ['Until weight (st)', 10, 140 * 0.45359237],
    ['Until weight (t)', 0.11, 110],
    ['Until weight (g)', 110_000, 110],
    ['Target weight (kg per pig)', 110, 110],
  ])('%s', (heading, cell, kg) => {
    for (const system of ['US', 'metric'] as const) {
      const { groups, problems, notes } = group(heading, cell, system);
      expect({ problems, notes }).toEqual({ problems: [], notes: [] });
      expect(groups[0]!.untilWeightKg).toBeCloseTo(kg, 9);
    }
  });
});

describe('units that cannot be read are refused at the heading', () => {
  it.each([
    ['Area (morgen)', 'morgen', 'ac, ha, m² or ft²'],
    ['Area (m)', 'm', 'ac, ha, m² or ft²'],
    ['Area (ac or ha)', 'ac or ha', 'ac, ha, m² or ft²'],
    ['Area (ha/pig)', 'ha/pig', 'ac, ha, m² or ft²'],
    ['Area a', 'a', 'ac, ha, m² or ft²'],
    ['Area in morgen', 'morgen', 'ac, ha, m² or ft²'],
  ])('%s', (heading, unit, write) => {
    expect(paddock(heading, 1).problems.map(({ sentence }) => sentence)).toEqual([
      `Farm!B1: the unit "${unit}" in "${heading}" is not known for area; write ${write}`,
    ]);
  });

  it.each([
    ['Daily gain (kg/month)', 'kg/month', 'daily gain', 'lb/day, kg/day or g/day'],
    ['Daily gain (kg per month)', 'kg per month', 'daily gain', 'lb/day, kg/day or g/day'],
    ['Weekly gain', 'week', 'daily gain', 'lb/day, kg/day or g/day'],
    ['Until weight (cwt)', 'cwt', 'weight at which it leaves', 'lb or kg'],
    ['Until weight st', 'st', 'weight at which it leaves', 'lb or kg'],
  ])('%s', (heading, unit, field, write) => {
    expect(group(heading, 1).problems.map(({ sentence }) => sentence)).toEqual([
      `Farm!E1: the unit "${unit}" in "${heading}" is not known for ${field}; write ${write}`,
    ]);
  });

  it('months of rest have no length', () => {
    const { problems } = paddock('Area (ha)', 1, 'metric', [['Rest (months)'], [2]]);
    expect(problems.map(({ cell }) => cell)).toEqual(['Farm!C1']);
  });
});

describe('a remark in the place of a unit', () => {
  it.each(['(approx)', '(owned)', '(see map)', '(est.)', '(2026)', '(N side)', '(a bit wet)', '(B2)'])(
    '%s is told and stops nothing',
    (remark) => {
      const { paddocks, problems, notes } = paddock(`Area ${remark}`, 2);
      expect(problems).toEqual([]);
      expect(notes).toEqual([
        `Farm!B1: "Area ${remark}" names no unit that is known here; its numbers are read in ha.`,
      ]);
      expect(paddocks[0]!.areaSquareMeters).toBe(20_000);
    },
  );

  it('nothing is told of plain headings, dates to leave and sides', () => {
    const { problems, notes } = group('Until (date or weight)', { d: '2026-09-01' });
    expect({ problems, notes }).toEqual({ problems: [], notes: [] });
    expect(paddock('Area', 1).notes).toEqual([]);
  });

  it('names of paddocks do not become headings because a letter is a unit', () => {
    const tab = tabOf([
      ['Paddock', 'Area (a)', 'Remarks'],
      ['Paddock A', 10, 'size a'],
      ['Plot G', 20, ''],
    ]);
    expect(findLists([tab]).map(({ headingRow, items }) => ({ headingRow, items }))).toEqual([
      { headingRow: 1, items: 2 },
    ]);
  });
});
