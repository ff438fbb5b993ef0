/** A list on its side is told with what to do; what is then typed makes it a list like any other. */
import { expect, test } from 'vitest';
import { listFromSelection } from '../../shared/lists/list-columns';
import { growerLists } from '../../shared/tasks/grower-lists';
import { openWorkbook } from '../../src/headless';
import { readBook } from '../hard-use/rotation-task';
import { scriptText } from '../tasks/script-text';

const LAND = [
  ['Our ground'],
  [],
  ['Paddock', 'Hazel', 'Beech', 'Alder', 'Total'],
  ['Area (ha)', 0.4, 0.5, 0.6, '=SUM(B4:D4)'],
  ['Remarks', '', 'stony', '', ''],
];

test('names across the sheet', async () => {
  const farm = await openWorkbook({ tabs: { Land: LAND, Up: [[]] }, codeJs: await scriptText() });
  const book = readBook(farm);
  const told = growerLists(book, 'metric').notes.paddocks[0]!;
  expect(told).toContain("The list at 'Land'!A3:E5 lies on its side");
  const land = book.tabs.find(({ name }) => name === 'Land')!;
  const at = (row: number, column: number) =>
    listFromSelection(
      'paddocks',
      { tab: 'Land', a1: 'C4', row, column, rows: 1, columns: 1, values: [[]] },
      land,
    );
  expect(() => at(4, 3)).toThrow(told);

  farm.type('Up', 'A1', /=TRANSPOSE\([^)]*\)/.exec(told)![0]);
  const { paddocks, problems } = growerLists(readBook(farm), 'metric');
  expect(problems.filter(({ cell }) => cell.startsWith('Up'))).toEqual([]);
  expect(paddocks.map(({ name, areaSquareMeters }) => [name, areaSquareMeters])).toEqual([
    ['Hazel', 4000],
    ['Beech', 5000],
    ['Alder', 6000],
  ]);
});

test('a list that stands upright is not taken for one that lies', async () => {
  const tabs = {
    Land: [
      ['Paddock', 'Area (ha)'],
      ['Hazel', 0.4],
      ['Beech', 0.5],
    ],
  };
  const book = readBook(await openWorkbook({ tabs, codeJs: await scriptText() }));
  const { notes, paddocks } = growerLists(book, 'metric');
  expect(paddocks).toHaveLength(2);
  expect(notes.paddocks.join()).not.toContain('lies on its side');
});

test('a cell of a list that is found, with a merged heading and another list beside it, means that list', async () => {
  const Farm = [
    ['Paddock', '', 'Area (ha)', '', 'Group', 'Head', 'Weight (kg)'],
    ['Hazel', 'H', 0.4, '', 'Amber', 12, 60],
    ['Beech', 'B', 0.5, '', 'Slate', 20, 30],
  ];
  const book = readBook(await openWorkbook({ tabs: { Farm }, codeJs: await scriptText() }));
  const at = (kind: 'paddocks' | 'groups', column: number) =>
    listFromSelection(
      kind,
      { tab: 'Farm', a1: 'x', row: 3, column, rows: 1, columns: 1, values: [[]] },
      book.tabs[0],
    );
  expect(at('paddocks', 2).columns).toEqual({ name: 1, area: 3 });
  expect(at('groups', 6).columns).toEqual({ name: 5, head: 6, weight: 7 });
});
