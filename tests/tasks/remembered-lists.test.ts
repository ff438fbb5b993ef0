/** What the grower settled for the rotation is the answer of every other task: one choice, kept in cells. */
import { expect, test } from 'vitest';
import { columnDoubts } from '../../shared/lists/column-doubts';
import { withColumn } from '../../shared/lists/list-columns';
import type { FoundList } from '../../shared/lists/model';
import { pointedList } from '../../shared/lists/pointed-list';
import { BUDGET_TASK } from '../../shared/tasks/budget/budget-task';
import { growerLists } from '../../shared/tasks/grower-lists';
import { HERD_TASK } from '../../shared/tasks/herd/herd-task';
import { MATERIALS_TASK } from '../../shared/tasks/materials/materials-task';
import { ROTATION_TASK } from '../../shared/tasks/rotation/rotation-task';
import type { Answers } from '../../shared/tasks/task';
import { openWorkbook, portOf, runTask, type StartCell } from '../../src/headless';
import { readBook } from '../hard-use/rotation-task';
import { scriptText } from './script-text';

const LAND: StartCell[][] = [
  ['Paddock', 'Hectares', 'Hectares in grass'],
  ...['Rata', 'Totara', 'Kauri', 'Rimu', 'Manuka', 'Kowhai'].map((name) => [name, 0.9, 0.6]),
];
const PIGS: StartCell[][] = [
  ['Mob', 'Hd', 'Weight spring (kg)', 'Weight autumn (kg)', 'Weighed'],
  ['Blacks', 12, 30, 55, { d: '2026-04-10' }],
  ['Reds', 9, 28, 48, { d: '2026-04-10' }],
];

async function open(tabs: Record<string, StartCell[][]>) {
  return openWorkbook({ tabs, locale: 'en_NZ', today: '2026-04-20', codeJs: await scriptText() });
}

/** Two columns of weights that are as good: the first press says which. */
test('a choice made for the rotation holds for herd log, budget and materials', async () => {
  const farm = await open({ Land: LAND, Pigs: PIGS });
  const book = readBook(farm);
  const { chosen } = growerLists(book, 'metric');
  const [land, pigs] = [chosen.paddocks!, chosen.groups!];
  const lists: Answers = {
    'Paddock list': withColumn(land, 'area', 3),
    'Group list': withColumn(pigs, 'weight', 4),
  };
  const done = await runTask(portOf(farm), ROTATION_TASK, lists);
  expect(done.kind).toBe('written');
  const after = readBook(farm);
  const read = growerLists(after, 'metric');
  expect(read.problems).toEqual([]);
  expect(read.paddocks.map(({ areaSquareMeters }) => areaSquareMeters)).toEqual(Array(6).fill(6000));
  expect(read.groups.map(({ weightKg }) => weightKg)).toEqual([55, 48]);
  expect(HERD_TASK.read(after, {}).groups.map(({ weightKg }) => weightKg)).toEqual([55, 48]);
  expect((BUDGET_TASK.read(after, {}).sources.groups ?? read.sources.groups)?.list.columns.weight).toBe(4);
  expect(MATERIALS_TASK.read(after, {}).sources.paddocks?.list.columns.area).toBe(3);
}, 60_000);

test('what is not written yet is asked, not taken', async () => {
  const book = readBook(await open({ Land: LAND, Pigs: PIGS }));
  const { problems } = growerLists(book, 'metric');
  expect(problems.map(({ sentence }) => sentence)).toContain(
    'Pigs!C1: which is the weight, “Weight spring (kg)” (30 · 28) or “Weight autumn (kg)” (55 · 48)?',
  );
});

/** No word of the headings is known: the finder sees no list there. */
test('a list that was pointed at is found again from the cells of the table', async () => {
  const odd: StartCell[][] = [['Xa', 'Xb'], ...LAND.slice(1).map(([name]) => [name ?? '', 0.6])];
  const farm = await open({
    Odd: odd,
    Pigs: [
      ['Mob', 'Hd', 'Kg', 'Weighed'],
      ['Blacks', 12, 30, { d: '2026-04-10' }],
    ],
  });
  const book = readBook(farm);
  const tab = book.tabs.find(({ name }) => name === 'Odd')!;
  expect(growerLists(book, 'metric').chosen.paddocks).toBeUndefined();
  const pointed = pointedList('paddocks', tab, { row: 3, column: 1 }) as FoundList;
  const done = await runTask(portOf(farm), ROTATION_TASK, { 'Paddock list': pointed });
  expect(done.kind).toBe('written');
  expect(growerLists(readBook(farm), 'metric').paddocks).toHaveLength(6);
  expect(columnDoubts(tab, pointed)).toEqual([]);
}, 60_000);
