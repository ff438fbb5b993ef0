/** Items that read like headings, and headings that stand under columns of another list. Invented sheets. */
import { describe, expect, it } from 'vitest';
import type { TabContent, WireCell } from '../../shared/contract';
import { findLists } from '../../shared/lists/find-lists';
import type { PaddockList } from '../../shared/lists/model';
import { readPaddocks } from '../../shared/lists/read-paddocks';

function tab(values: WireCell[][]): TabContent {
  const width = Math.max(...values.map((row) => row.length));
  const even = values.map((row) => [...row, ...new Array<WireCell>(width - row.length).fill('')]);
  return { name: 'Farm', values: even, formulas: even.map((row) => row.map(() => '')) };
}

const shown = (values: WireCell[][]) =>
  findLists([tab(values)]).map(({ kind, headingRow, lastRow, items }) => ({
    kind,
    headingRow,
    lastRow,
    items,
  }));

describe('an item that reads like headings', () => {
  it('does not cut the list short: a field with a remark about its area', () => {
    const found = shown([
      ['Paddock', 'Acres', 'Remarks'],
      ['East', 0.5],
      ['North field', 0.6, 'wet area by the creek'],
      [],
      ['South field', 0.7, 'area fenced twice'],
      ['West', 0.4],
    ]);
    expect(found).toEqual([{ kind: 'paddocks', headingRow: 1, lastRow: 6, items: 4 }]);
  });

  it('nor do the totals of the list beside it', () => {
    const found = shown([
      ['Paddock', 'Acres', '', 'Group', 'Head', 'Weight', 'Weighed on'],
      ['East', 0.5, '', 'Reds', 9, 60, { d: '2026-04-01' }],
      ['North field', 0.6, '', 'Total area', 9],
      ['West', 0.4],
    ]);
    expect(found).toContainEqual({ kind: 'paddocks', headingRow: 1, lastRow: 4, items: 3 });
    expect(found).toHaveLength(2);
  });
});

describe('an error in an item', () => {
  it('"#NAME?" is not taken for a heading that says name', () => {
    const found = shown([
      ['Herd', 'Weighed on', 'Pigs', 'Weight (lb)'],
      ['the "long" one', { d: '2026-04-01' }, '#NAME?', 53],
      ['Oak', { d: '2026-04-01' }, 9, 40],
    ]);
    expect(found).toEqual([{ kind: 'groups', headingRow: 1, lastRow: 3, items: 2 }]);
  });
});

describe('the headings of another table further down', () => {
  const LAND: WireCell[][] = [
    ['Paddock', 'Width (ft)', 'Length (ft)', 'Area (ac)'],
    ['East', 100, 210, 0.48],
    ['West', 90, 205, 0.42],
    ['Total', '', '', 0.9],
  ];
  const LEDGER: WireCell[][] = [
    ['Date', 'Feed', 'lb', '$/lb', 'Cost'],
    [{ d: '2026-04-12' }, 'grower', 500, 0.31, 155],
    [{ d: '2026-05-02' }, 'finisher', 700, 0.29, 203],
  ];
  const notes = (values: WireCell[][]): readonly string[] => {
    const farm = tab(values);
    return readPaddocks(farm, findLists([farm])[0] as unknown as PaddockList, 'US', false).notes;
  };

  it.each([
    ['a gap', [[]]],
    ['a gap and a title', [[], ['Feed bills']]],
  ])('end the list after %s, and the page says so', (_, between: WireCell[][]) => {
    const values = [...LAND, ...between, ...LEDGER];
    expect(shown(values)).toEqual([{ kind: 'paddocks', headingRow: 1, lastRow: 4, items: 2 }]);
    const row = LAND.length + between.length + 1;
    expect(notes(values)).toEqual([
      `Not read as paddocks: what stands from Farm!A${row} (“Date”) on, as a table of its own.`,
    ]);
  });

  it('are not taken for such where no gap is, or figures stand among the words', () => {
    const paddocks = [
      ...LAND.slice(0, 3),
      ['Back lot', 'to measure', 'soon', 'not known'],
      ['North', 80, 200, 0.37],
    ];
    expect(shown(paddocks)).toEqual([{ kind: 'paddocks', headingRow: 1, lastRow: 5, items: 4 }]);
    const unknown = [...LAND.slice(0, 3), [], ['Back lot', 'tbd', 'tbd', 'tbd'], ['North', 80, 200, 0.37]];
    expect(shown(unknown)).toEqual([{ kind: 'paddocks', headingRow: 1, lastRow: 6, items: 4 }]);
  });
});

describe('the headings of a list further down', () => {
  const GROUPS: WireCell[][] = [
    ['Breed', 'Soil', 'Weight (kg)', 'Weighed on', 'Head', 'Group'],
    ['mixed', 'clay', 57, { d: '2026-04-01' }, 12, 'Reds'],
  ];

  it('end a list that only other columns of theirs stand under', () => {
    expect(shown([['Field', 'Area'], ['East', 0.5], ['West', 0.4], [], ...GROUPS])).toEqual([
      { kind: 'groups', headingRow: 5, lastRow: 6, items: 1 },
      { kind: 'paddocks', headingRow: 1, lastRow: 3, items: 2 },
    ]);
  });

  it('do not where items of this list go on below', () => {
    const found = shown([['Field', 'Area'], ['East', 0.5], [], ...GROUPS, ['West', 0.4]]);
    expect(found).toContainEqual({ kind: 'paddocks', headingRow: 1, lastRow: 6, items: 4 });
  });
});

it('the first row below the headings belongs to them, with words in the place of its area and a gap above it', () => {
  const values = [
    ['Owner', 'size [m²]', 'Plot'],
    ['', '', ''],
    ['clay', 'about half', 'Lane'],
    ['', 96, 'Oak'],
  ];
  const formulas = values.map((row) => row.map(() => ''));
  expect(findLists([{ name: 'Land', values, formulas }])).toMatchObject([{ kind: 'paddocks', items: 2 }]);
});
