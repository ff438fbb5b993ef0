/** What the group list knows, materials and pen begin with. Worked by hand from the lists. */
import { expect, test } from 'vitest';
import { bookOf } from '../../shared/block/book';
import { listedHerd } from '../../shared/tasks/listed-herd';
import { MATERIALS_TASK } from '../../shared/tasks/materials/materials-task';
import { runTask } from '../../shared/tasks/run-task';
import { PEN_TASK } from '../../shared/tasks/training/pen-task';
import { openWorkbook, portOf, type StartCell } from '../../src/headless';
import { scriptText } from './script-text';

const LAND: StartCell[][] = [
  ['Paddock', 'Acres'],
  ['North', 0.5],
  ['South', 0.4],
];
const PIGS: StartCell[][] = [
  ['Group', 'Head', 'Weight (lb)', 'Weighed on', 'ADG (lb/day)', 'In rotation from'],
  ['Reds', 10, 60, { d: '2026-04-01' }, 1.5],
  ['Blacks', 6, 90, { d: '2026-04-01' }, 1.5],
  ['Spots', 5, 70, { d: '2026-04-01' }, 1, { d: '2026-04-20' }],
];

async function bookWith(pigs: StartCell[][]) {
  const farm = await openWorkbook({
    tabs: { Land: LAND, Pigs: pigs },
    codeJs: await scriptText(),
    today: '2026-04-11',
  });
  return bookOf(await portOf(farm)('readFile', {}));
}

test('groups, the lightest and the one to train', async () => {
  const book = await bookWith(PIGS);
  // 60 + 10 days × 1.5 = 75 lb; Spots come in on April 20, 70 + 10 × 1 = 80 lb.
  expect(listedHerd(book, 'US')).toEqual({ groups: 3, lightest: 75, toTrain: { head: 5, weight: 80 } });
  expect(MATERIALS_TASK.read(book, {}).settings.values).toMatchObject({ groups: 3, pigWeight: 75 });
  expect(PEN_TASK.read(book, {}).settings.values).toMatchObject({ head: 5, weight: 80 });
  // Everybody is out: the lightest, on the day.
  const out = await bookWith(PIGS.slice(0, 3));
  expect(PEN_TASK.read(out, {}).settings.values).toMatchObject({ head: 10, weight: 75 });
});

// 45 lb, where growing pigs begin: judgement after a class limit of swine.extension.org. FiBL 2019 (read): with piglets the
// lowest wire at 15 cm; the trial against wild boar (abstract, read): the next at 30 cm.
test('the lightest pig decides how many wires, in the materials as in the pen, in the units of the farm', async () => {
  const small = (kg: number): StartCell[][] => [
    ['Group', 'Head', 'Weight (kg)'],
    ['Finishers', 9, 81],
    ['Late lot', 7, kg],
  ];
  const strands = async (kg: number, answers = {}) => {
    const book = await bookWith(small(kg));
    const tasks = [MATERIALS_TASK.read(book, answers), PEN_TASK.read(book, answers)];
    return tasks.map(({ settings }) => settings.values.strands);
  };
  expect(await strands(14)).toEqual([3, 3]);
  expect(await strands(21)).toEqual([2, 2]);
  // Whoever types a weight or a number of wires, has it so.
  expect(await strands(21, { 'Weight of the lightest pig': '14', 'Weight of one': '14' })).toEqual([3, 3]);
  expect(await strands(14, { Strands: '2', 'Live wires': '2' })).toEqual([2, 2]);

  const farm = await openWorkbook({
    tabs: { Land: LAND, Pigs: small(14) },
    codeJs: await scriptText(),
    today: '2026-04-11',
  });
  const port = portOf(farm);
  const metric = { Units: 'Metric (m, ha, kg, L, °C)' };
  await runTask(port, MATERIALS_TASK, { ...metric, 'What is the fence made of?': 'Wire on posts' });
  await runTask(port, PEN_TASK, metric);
  const heights = ['Fence materials', 'Training pen'].map((tab) => {
    const rows = farm.values(tab);
    expect(rows.flat().filter((cell) => /\b45 lb/.test(String(cell)))).toEqual([]);
    return rows
      .find((row) => /^Wire heights/.test(String(row[0])))!
      .slice(1, 4)
      .map(Number);
  });
  expect(heights[0]!.slice(0, 2).map(Math.round)).toEqual([15, 30]);
  expect(heights[1]).toEqual(heights[0]);
});

test('what is typed on the page counts, and without a group list the usual start', async () => {
  const book = await bookWith([['just words']]);
  expect(listedHerd(book, 'US')).toBeUndefined();
  expect(PEN_TASK.read(book, {}).settings.values).toMatchObject({ head: 8, weight: 60 });
  const typed = PEN_TASK.read(await bookWith(PIGS), { Pigs: '3' });
  expect(typed.settings.values).toMatchObject({ head: 3, weight: 80 });
});
