/** "Plan the moves" in a real browser at the sidebar's width. */
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { launchBrowser } from '../browser/launch';
import type { FakeSheet } from './fake-sheet';
import { farmSheet, PADDOCK_ROWS, PIG_ROWS } from './farm';
import { checkAndShoot, type Opened, openSidebar } from './open-sidebar';

let browser: Browser | undefined;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser?.close());

async function openRotation(sheet: FakeSheet): Promise<Opened> {
  const opened = await openSidebar(browser as Browser, sheet);
  await opened.page.getByRole('button', { name: 'Plan the moves' }).click();
  return opened;
}

describe('the rotation in the sidebar', () => {
  test('lists under odd headings are found, a plan is made and shown', async ({ skip }) => {
    if (!browser) skip();
    const opened = await openRotation(farmSheet());
    const { page } = opened;
    await page.getByText('9 paddocks read, 6.35 ac in all.').waitFor();
    await page.getByText('2 groups read, 15 pigs in all.').waitFor();
    await page.getByText('Left out as totals').waitFor();
    await checkAndShoot(opened, 'rotation-lists');
    await page.getByRole('button', { name: 'Work out the plan' }).click();
    await page.getByRole('heading', { name: 'Next moves' }).waitFor();
    await checkAndShoot(opened, 'rotation-plan');
    expect(opened.errors).toEqual([]);
  });

  test('every problem of a bad list is told with its cell, and nothing can be planned', async ({ skip }) => {
    if (!browser) skip();
    const bad = PADDOCK_ROWS.map((row, i) =>
      i === 4 ? ['North 2', '', '', ''] : i === 5 ? ['North 2', -2, '', ''] : row,
    );
    const pigs = PIG_ROWS.map((row, i) => (i === 1 ? ['Early', 0, ...row.slice(2)] : row));
    const opened = await openRotation(farmSheet(bad, pigs));
    const { page } = opened;
    await page.getByText('Land!B5: ').waitFor();
    await page.getByText('Land!B6: ').waitFor();
    await page.getByText('Pigs!B2: ').waitFor();
    await checkAndShoot(opened, 'rotation-bad-lists');
    const button = page.getByRole('button', { name: 'Work out the plan' });
    expect(await button.getAttribute('aria-disabled')).toBe('true');
  });
});
