/** Items that read like headings, and headings that stand under columns of another list. Invented sheets. */
import { describe, expect, it } from 'vitest';
import type { TabContent, WireCell } from '../../shared/contract';
import { findLists } from '../../shared/lists/find-lists';

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
