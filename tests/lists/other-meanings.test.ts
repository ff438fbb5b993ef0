/** Headings that hold a known word and mean something else are taken for nothing, and shown as not used. */
import { describe, expect, it } from 'vitest';
import type { TabContent, WireCell } from '../../shared/contract';
import { findLists } from '../../shared/lists/find-lists';
import type { FoundList, GroupList } from '../../shared/lists/model';
import { readGroups } from '../../shared/lists/read-groups';

const WEIGHED = { d: '2026-04-20' };

function groups(heading: string, more: [string, WireCell][] = []): { tab: TabContent; list: FoundList } {
  const values: WireCell[][] = [
    ['Group', 'Head', heading, 'Weighed on', ...more.map(([text]) => text)],
    ['Reds', 10, 300, WEIGHED, ...more.map(([, cell]) => cell)],
  ];
  const tab = { name: 'Pigs', values, formulas: values.map((row) => row.map(() => '')) };
  return { tab, list: findLists([tab])[0]! };
}

function paddocks(...heads: string[]): FoundList {
  const values: WireCell[][] = [
    ['Paddock', ...heads],
    ['North', ...heads.map((_, i) => i + 1)],
  ];
  return findLists([{ name: 'Land', values, formulas: values.map((row) => row.map(() => '')) }])[0]!;
}

describe('the weight of all pigs together', () => {
  it.each(['Total weight (kg)', 'Group weight', 'Weight of all (lb)', 'Total live weight', 'Herd weight'])(
    '%s is not the weight of one pig, and that is said',
    (heading) => {
      const { tab, list } = groups(heading);
      expect(list.missing).toEqual(['weight']);
      const read = readGroups(tab, list as unknown as GroupList, 'metric', false);
      expect(read.groups).toEqual([]);
      expect(read.problems.map(({ sentence }) => sentence)).toEqual([
        `Pigs!A1: the group list must have a column for weight; none was found ("${heading}" in Pigs!C1 is the weight of all pigs together; that of one pig is needed)`,
      ]);
    },
  );

  it.each(['Group avg weight (kg)', 'Weight per pig', 'Pig weight', 'Live weight', 'Mean weight of batch'])(
    '%s is the weight of one pig',
    (heading) => expect(groups(heading).list.columns).toMatchObject({ weight: 3 }),
  );

  it('does no harm beside the weight of one pig', () => {
    const { tab, list } = groups('Total weight', [['Weight (kg)', 30]]);
    const read = readGroups(tab, list as unknown as GroupList, 'metric', false);
    expect(read.problems).toEqual([]);
    expect(read.groups.map(({ weightKg }) => weightKg)).toEqual([30]);
  });
});

describe('other meanings', () => {
  it.each([
    ['Target carcass weight', 'untilWeight'],
    ['Monthly gain', 'dailyGain'],
    ['Gain to date', 'dailyGain'],
    ['Feed per kg gain', 'dailyGain'],
  ])('%s is not %s', (heading, field) => {
    const { list } = groups('Weight', [[heading, 1]]);
    expect(list.columns).toMatchObject({ name: 1, head: 2, weight: 3, weighedOn: 4 });
    const columns: Partial<Record<string, number>> = list.columns;
    expect(columns[field]).not.toBe(5);
  });

  it.each(['Carcass weight', 'Birth weight (lb)', 'Hanging wt'])(
    '%s is not the weight of a live pig',
    (heading) => {
      expect(groups(heading).list.missing).toEqual(['weight']);
    },
  );

  it('pigs lost are not the head', () => {
    const values: WireCell[][] = [
      ['Group', 'Pigs lost', 'Weight', 'Weighed on'],
      ['Reds', 1, 30, WEIGHED],
    ];
    const tab = { name: 'Pigs', values, formulas: values.map((row) => row.map(() => '')) };
    expect(findLists([tab])[0]!.missing).toEqual(['head']);
  });

  it.each(['Rent per acre', 'Pigs/acre', 'Stocking rate (per acre)'])(
    '%s is not the area of a paddock',
    (heading) => {
      const { columns } = paddocks(heading, 'Width (m)', 'Length (m)');
      expect(columns).toEqual({ name: 1, width: 3, length: 4 });
    },
  );

  it('acres per paddock are', () => {
    expect(paddocks('Acres per paddock').columns).toEqual({ name: 1, area: 2 });
  });
});
