/** Words in one weight cell blank what is counted with it: every task that rests on the weight names the cell. */
import { expect, test } from 'vitest';
import { BUDGET_TASK } from '../../shared/tasks/budget/budget-task';
import { HERD_TASK } from '../../shared/tasks/herd/herd-task';
import { MATERIALS_TASK } from '../../shared/tasks/materials/materials-task';
import { ROTATION_TASK } from '../../shared/tasks/rotation/rotation-task';
import { TODAY_TASK } from '../../shared/tasks/today/today-task';
import { openWorkbook, portOf, runTask } from '../../src/headless';
import { readBook } from '../hard-use/rotation-task';
import { scriptText } from './script-text';

const WRONG = 'Pigs!C2: weight must be a number (lb), got "ask Bob"';

test('“ask Bob” in the weight of one group', async () => {
  const paddocks = ['North', 'South', 'Oak', 'Hill', 'Creek', 'West', 'Hay'].map((name) => [name, 0.5]);
  const tabs = {
    Land: [['Paddock', 'Acres'], ...paddocks],
    Pigs: [
      ['Group', 'Head', 'Weight (lb)', 'Weighed on'],
      ['Reds', 10, 60, { d: '2026-11-01' }],
      ['Blues', 10, 70, { d: '2026-11-01' }],
    ],
  };
  const farm = await openWorkbook({ tabs, locale: 'en_US', today: '2026-11-20', codeJs: await scriptText() });
  expect(await runTask(portOf(farm), ROTATION_TASK)).toMatchObject({ kind: 'written' });
  farm.type('Pigs', 'C2', 'ask Bob');
  const book = readBook(farm);
  expect(ROTATION_TASK.read(book, {}).questions).toContain(WRONG);
  expect(BUDGET_TASK.read(book, {}).questions[0]).toBe(WRONG);
  expect(HERD_TASK.read(book, {}).wrong).toEqual([WRONG]);
  expect(TODAY_TASK.read(book, {}).warnings).toEqual([`${WRONG}.`]);
  // Trouble in the group list does not matter to the fence.
  expect(MATERIALS_TASK.read(book, {}).questions).toEqual([]);
}, 60_000);
