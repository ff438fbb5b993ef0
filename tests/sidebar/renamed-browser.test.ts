/** What the page says before the press: a group with another name in the list, and what stands in the way of a table. */
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { HERD_TASK } from '../../shared/tasks/herd/herd-task';
import { standingRotation } from '../../shared/tasks/rotation/rotation-standing';
import { portOf, runTask, type Workbook } from '../../src/headless';
import { launchBrowser } from '../browser/launch';
import { cellUnder } from '../cell-under';
import { shownMoves } from '../hard-use/check-table';
import { readBook } from '../hard-use/rotation-task';
import { openFarm, setToday, sheetOf } from './happened-farm';
import { checkAndShoot, type Opened, openSidebar } from './open-sidebar';

let browser: Browser | undefined;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser?.close());

/** Opens a task that asks whether Shoats are Reds, says yes, and writes its table anew. */
async function saidToBeTheSame(farm: Workbook, task: string, button: string, shot: string): Promise<Opened> {
  const opened = await openSidebar(browser as Browser, sheetOf(farm));
  const { page } = opened;
  await page.getByRole('button', { name: task, exact: true }).click();
  await page.getByText('Is Shoats the new name of Reds? Answer it first').waitFor();
  await checkAndShoot(opened, shot);
  await page.getByLabel('Yes, the same group').check();
  await page.getByRole('button', { name: button }).click();
  await page.locator('.notice.done').filter({ hasText: 'Written on' }).waitFor();
  return opened;
}

test('a group that was renamed', async ({ skip }) => {
  if (!browser) skip();
  const farm = await openFarm();
  setToday(farm, '2026-05-08');
  const moves = () => shownMoves(farm, standingRotation(readBook(farm))!.block.info);
  const at = moves().findIndex(({ cell }) => cell('Group') === 'Reds');
  farm.type('Rotation', cellUnder(farm, 'Moved in', moves()[at]!.row), '2026-05-02');
  const head = moves()[at]!.cell('Head');
  farm.type('Pigs', 'A2', 'Shoats');
  const { errors } = await saidToBeTheSame(farm, 'Plan the moves', 'Write the table anew', 'renamed-group');
  expect(moves()[at]!.cell('Group')).toBe('Shoats');
  expect(moves()[at]!.cell('Head')).toBe(head);
  expect(errors).toEqual([]);
}, 240_000);

test('a group that was renamed, in the herd log', async ({ skip }) => {
  if (!browser) skip();
  const farm = await openFarm();
  setToday(farm, '2026-05-08');
  await runTask(portOf(farm), HERD_TASK);
  farm.type('Pigs', 'A2', 'Shoats');
  const { errors } = await saidToBeTheSame(
    farm,
    'Keep the herd log',
    'Write the herd log anew',
    'renamed-in-log',
  );
  const groups = farm.values('Herd log').map(([group]) => group);
  expect([groups.includes('Shoats'), groups.includes('Reds')]).toEqual([true, false]);
  expect(errors).toEqual([]);
}, 240_000);

test('a note below a table that will grow is named before the press', async ({ skip }) => {
  if (!browser) skip();
  const farm = await openFarm();
  setToday(farm, '2026-05-08');
  const { area, block } = standingRotation(readBook(farm))!;
  farm.type('Rotation', `B${area.row + area.rows}`, 'ask Bea for the pump');
  const end = block.values.findIndex(([label]) => String(label).startsWith('Season end'));
  farm.type('Rotation', `B${area.row + end}`, '2026-07-10');
  for (const until of ['G2', 'G3']) farm.type('Pigs', until, '');
  const opened = await openSidebar(browser as Browser, sheetOf(farm));
  const { page, errors } = opened;
  await page.getByRole('button', { name: 'Plan the moves', exact: true }).click();
  await page.getByText(`stands in its way: Rotation!B${area.row + area.rows}`).waitFor();
  await checkAndShoot(opened, 'in-the-way');
  expect(errors).toEqual([]);
}, 240_000);
