/** The two questions about lists that stop nothing, on the page: a paddock that may be out of use, a weight without a day. */
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { openWorkbook } from '../../src/headless';
import { launchBrowser } from '../browser/launch';
import { scriptText } from '../tasks/script-text';
import { sheetOf } from './happened-farm';
import { checkAndShoot, openSidebar } from './open-sidebar';

let browser: Browser | undefined;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser?.close());

const TABS = {
  Land: [
    ['Paddock', 'Acres', 'Remarks'],
    ...['North', 'South', 'East', 'Hill', 'Far', 'Low'].map((name) => [
      name,
      1,
      name === 'East' ? 'no pigs' : '',
    ]),
  ],
  Pigs: [
    ['Group', 'Head', 'Weight (lb)'],
    ['Reds', 10, 60],
  ],
};

test('are asked beside the plan, and answered by a press', async ({ skip }) => {
  if (!browser) skip();
  const book = await openWorkbook({ tabs: TABS, today: '2026-05-11', codeJs: await scriptText() });
  const opened = await openSidebar(browser as Browser, sheetOf(book));
  const { page } = opened;
  await page.getByRole('button', { name: 'Plan the moves' }).click();
  const shut = page.getByRole('button', { name: 'Shut “East” from today on' });
  await shut.waitFor();
  await page.getByLabel('Day of weighing').scrollIntoViewIfNeeded();
  await checkAndShoot(opened, 'asked-of-lists');
  await page.getByLabel('Day of weighing').fill('2026-05-01');
  await page.getByRole('button', { name: 'Write it into column D of “Pigs”' }).click();
  await page.getByLabel('Day of weighing').waitFor({ state: 'detached' });
  await shut.click();
  await shut.waitFor({ state: 'detached' });
  expect(book.shownValues('Pigs').map((row) => row[3])).toEqual(['Weighed on', 'Fri 1 May 2026']);
  const land = book.shownValues('Land');
  expect([land[0]![3], land[3]![3]]).toEqual(['Shut from', 'Mon 11 May 2026']);
  await page.close();
}, 120_000);
