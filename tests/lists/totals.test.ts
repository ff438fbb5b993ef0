/** Rows that add up the others are left out and told, whatever they are called. Invented sheets. */
import { describe, expect, it } from 'vitest';
import type { TabContent, WireCell } from '../../shared/contract';
import { findLists } from '../../shared/lists/find-lists';
import type { GroupList, PaddockList } from '../../shared/lists/model';
import { readGroups } from '../../shared/lists/read-groups';
import { readPaddocks } from '../../shared/lists/read-paddocks';

/** Cells with a formula are written as [value, formula]. */
type Cell = WireCell | readonly [WireCell, string];
const shownIn = (cell: Cell): WireCell => (Array.isArray(cell) ? cell[0] : (cell as WireCell));

function tabOf(name: string, rows: Cell[][]): TabContent {
  return {
    name,
    values: rows.map((row) => row.map(shownIn)),
    formulas: rows.map((row) => row.map((cell) => (Array.isArray(cell) ? String(cell[1]) : ''))),
  };
}

function land(last: Cell[], tabName = 'My land') {
  const tab = tabOf(tabName, [
    ['Our farm', '', ''],
    ['Paddock', 'Area (ha)', 'Rest (days)'],
    ['North', 1, 30],
    ['South', 2, 40],
    ['West', [0.5, '=1/2'], 50],
    last,
  ]);
  const list = findLists([tab]).find(({ kind }) => kind === 'paddocks') as unknown as PaddockList;
  const { paddocks, problems, leftOut } = readPaddocks(tab, list, 'metric', false);
  expect(problems).toEqual([]);
  return { names: paddocks.map(({ name }) => name), leftOut };
}

describe('a row whose area adds up the rows above', () => {
  it.each([
    '=SUM(B3:B5)',
    '=sum(B$3:B$5)',
    '=SUM(B3;B4;B5)',
    '=SUM(B3,B4,B5)',
    '=SUBTOTAL(9;B3:B5)',
    '=SUBTOTAL(109,B3:B5)',
    '=AVERAGE(B3:B5)',
    '=ROUND(SUM(B3:B5);2)',
    '=B3+B4+B5',
    '=SUM(B3:B4)+B5',
    "=SUM('My land'!B3:B5)",
    '=SUM(B2:B5)',
    '=SUMIF(A3:A5;"<>";B3:B5)',
  ])('%s', (formula) => {
    const { names, leftOut } = land(['Gesamt', [3.5, formula], '']);
    expect(names).toEqual(['North', 'South', 'West']);
    expect(leftOut).toEqual([{ cell: "'My land'!A6", text: 'Gesamt' }]);
  });

  it('at the top of the list too', () => {
    const tab = tabOf('Land', [
      ['Paddock', 'Area (ha)'],
      ['Summe', [3, '=SUM(B3:B4)']],
      ['North', 1],
      ['South', 2],
    ]);
    const read = readPaddocks(tab, findLists([tab])[0] as unknown as PaddockList, 'metric', false);
    expect(read.paddocks.map(({ name }) => name)).toEqual(['North', 'South']);
    expect(read.leftOut.map(({ text }) => text)).toEqual(['Summe']);
  });

  it('and a row whose head does', () => {
    const weighed = { d: '2026-04-20' };
    const tab = tabOf('Pigs', [
      ['Group', 'Head', 'Weight (kg)', 'Weighed on'],
      ['Reds', 10, 30, weighed],
      ['Blacks', 8, 40, weighed],
      ['Insgesamt', [18, '=SUM(B2:B3)'], [35, '=AVERAGE(C2:C3)'], ''],
    ]);
    const read = readGroups(tab, findLists([tab])[0] as unknown as GroupList, 'metric', false);
    expect(read.problems).toEqual([]);
    expect(read.groups.map(({ name }) => name)).toEqual(['Reds', 'Blacks']);
    expect(read.leftOut).toEqual([{ cell: 'Pigs!A4', text: 'Insgesamt' }]);
  });
});

describe('a row whose area is worked out otherwise is an item', () => {
  it.each([
    '=B3',
    '=B3*2',
    '=10-SUM(B3:B5)',
    '=SUM(C3:C5)',
    '=SUM(Other!B3:B5)',
    '=SUM(B20:B25)',
    '=SUM(B3:B5)*2',
    '=1+2',
    '=SUM(1;2)',
  ])('%s', (formula) => {
    const { names, leftOut } = land(['Rest of it', [3.5, formula], '']);
    expect(names).toEqual(['North', 'South', 'West', 'Rest of it']);
    expect(leftOut).toEqual([]);
  });

  it('also where its own rest is a mean of the others', () => {
    expect(land(['East', 3, [40, '=AVERAGE(C3:C5)']]).names).toEqual(['North', 'South', 'West', 'East']);
  });

  it('and where a short list sums up a long one above it', () => {
    const tab = tabOf('Land', [
      ['Plan', 'x'],
      ['a', 1],
      ['b', 2],
      ['c', 3],
      ['', ''],
      ['Paddock', 'Area (ha)'],
      ['North', [3, '=SUM(B2:B3)']],
      ['South', [3, '=B4']],
    ]);
    const read = readPaddocks(tab, findLists([tab])[0] as unknown as PaddockList, 'metric', false);
    expect(read.paddocks.map(({ name }) => name)).toEqual(['North', 'South']);
  });
});

describe('a total that is typed under a name that is not known', () => {
  it.each([
    [4.5, true],
    [4.501, true],
    [4.6, false],
  ])('%s ha under 4.5 ha is told: %s', (area, told) => {
    const tab = tabOf('Land', [
      ['Paddock', 'Area (ha)'],
      ['North', 1],
      ['South', 2],
      ['West', 1.5],
      ['Yhteensä', area],
    ]);
    const read = readPaddocks(tab, findLists([tab])[0] as unknown as PaddockList, 'metric', false);
    expect(read.problems).toEqual([]);
    expect(read.notes).toEqual(
      told
        ? [
            'Land!A5: “Yhteensä” is as much as all rows above it together. If it adds them up, call it “Total”, for it is read like the others now.',
          ]
        : [],
    );
  });

  it('two small ones may well be as much as a third', () => {
    const tab = tabOf('Land', [
      ['Paddock', 'Area (ha)'],
      ['North', 1],
      ['South', 1],
      ['West', 2],
    ]);
    expect(readPaddocks(tab, findLists([tab])[0] as unknown as PaddockList, 'metric', false).notes).toEqual(
      [],
    );
  });
});
