/** What the group list knows, materials and pen begin with. Worked by hand from the lists. */
import { expect, test } from 'vitest';
import { bookOf } from '../../shared/block/book';
import { listedHerd } from '../../shared/tasks/listed-herd';
import { MATERIALS_TASK } from '../../shared/tasks/materials/materials-task';
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

test('what is typed on the page counts, and without a group list the usual start', async () => {
  const book = await bookWith([['just words']]);
  expect(listedHerd(book, 'US')).toBeUndefined();
  expect(PEN_TASK.read(book, {}).settings.values).toMatchObject({ head: 8, weight: 60 });
  const typed = PEN_TASK.read(await bookWith(PIGS), { Pigs: '3' });
  expect(typed.settings.values).toMatchObject({ head: 3, weight: 80 });
});
