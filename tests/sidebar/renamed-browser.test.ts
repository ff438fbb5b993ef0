/** A group with another name in the list: the page asks, says what the button waits for, and writes once it is answered. */
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { standingRotation } from '../../shared/tasks/rotation/rotation-standing';
import { launchBrowser } from '../browser/launch';
import { shownMoves } from '../hard-use/check-table';
import { readBook } from '../hard-use/rotation-task';
import { openFarm, setToday, sheetOf } from './happened-farm';
import { checkAndShoot, openSidebar } from './open-sidebar';

let browser: Browser | undefined;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser?.close());

test('a group that was renamed', async ({ skip }) => {
  if (!browser) skip();
  const farm = await openFarm();
  setToday(farm, '2026-05-08');
  const moves = () => shownMoves(farm, standingRotation(readBook(farm))!.block.info);
  const at = moves().findIndex(({ cell }) => cell('Group') === 'Reds');
  farm.type('Rotation', `D${moves()[at]!.row}`, '2026-05-02');
  const head = moves()[at]!.cell('Head');
  farm.type('Pigs', 'A2', 'Shoats');
  const opened = await openSidebar(browser as Browser, sheetOf(farm));
  const { page, errors } = opened;
  await page.getByRole('button', { name: 'Plan the moves', exact: true }).click();
  await page.getByText('Is Shoats the new name of Reds? Answer it first').waitFor();
  await checkAndShoot(opened, 'renamed-group');
  await page.getByLabel('Yes, the same group').check();
  await page.getByRole('button', { name: 'Write the table anew' }).click();
  await page.locator('.notice.done').filter({ hasText: 'Written on' }).waitFor();
  expect(moves()[at]!.cell('Group')).toBe('Shoats');
  expect(moves()[at]!.cell('Head')).toBe(head);
  expect(errors).toEqual([]);
}, 240_000);
