/** "Budget feed, water and ground" in a real browser at the sidebar's width. */
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { launchBrowser } from '../browser/launch';
import { FakeSheet, tab } from './fake-sheet';
import { farmSheet } from './farm';
import { checkAndShoot, type Opened, openSidebar } from './open-sidebar';

let browser: Browser | undefined;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser?.close());

async function openBudget(sheet: FakeSheet): Promise<Opened> {
  const opened = await openSidebar(browser as Browser, sheet);
  await opened.page.getByRole('button', { name: 'Budget feed, water and ground' }).click();
  return opened;
}

/** 12 pigs of 60 lb that gain 1.5 lb, 30 days, one paddock: the worked example of FEED_NEEDED. */
function exampleSheet(): FakeSheet {
  return new FakeSheet([
    tab('Ground', [
      ['Field name', 'Size (acres)'],
      ['North', 0.25],
    ]),
    tab('Pigs', [
      ['Herd', 'No. of pigs', 'Avg weight (lb)', 'Weighed', 'ADG (lb)', 'Rotation from', 'Ship date'],
      ['Feeders', 12, 60, { d: '2026-05-01' }, 1.5, { d: '2026-05-01' }, { d: '2026-05-31' }],
    ]),
  ]);
}

describe('the budget in the sidebar', { timeout: 90_000 }, () => {
  test('the worked example of FEED_NEEDED: 1,282.5 lb; over a typed limit; into the sheet', async ({
    skip,
  }) => {
    if (!browser) skip();
    const sheet = exampleSheet();
    const opened = await openBudget(sheet);
    const { page } = opened;
    await page.getByLabel(/^Outdoor factor/).fill('1');
    await page.getByLabel('Days in a paddock').fill('30');
    await page.getByText('1,283 lb').or(page.getByText('1,282 lb')).first().waitFor();
    await page.getByLabel(/^Price of feed/).fill('400');
    await page.getByLabel(/^Fence, what it costs/).fill('960');
    // 1,282.5 lb ÷ 2,000 × $400, and both over 12 pigs.
    await page.getByText('The feed costs 256.5: 21.38 a pig, of 12, 0.48 for each lb gained.').waitFor();
    await page.getByText('Fence: 80 a pig, of 12.').waitFor();
    await page.getByLabel(/^Most nitrogen/).fill('20');
    await page.getByText('Over your limit: North (N).').waitFor();
    await page.getByLabel('By month').check();
    await page.getByText('Most feed in the month from Fri 1 May').waitFor();
    await checkAndShoot(opened, 'budget-result');
    await page.getByRole('button', { name: 'Write the budget' }).click();
    await page.getByText('Written on “Feed and water”').waitFor();
    expect(sheet.written[0]?.name).toBe('SOUNDER_BUDGET');
    expect(opened.errors).toEqual([]);
  });

  test('two groups under odd headings; a pig past the growth table is named with what to do', async ({
    skip,
  }) => {
    if (!browser) skip();
    const opened = await openBudget(farmSheet());
    const { page } = opened;
    await page.getByText('9 paddocks read').waitFor();
    await page.getByText('of feed, waste included').waitFor();
    await page.getByText('Most water, all groups').waitFor();
    await checkAndShoot(opened, 'budget-season');
    await page.getByLabel('Last day (pigs leave)').fill('2026-05-01');
    await page.getByText('The season must end after it starts.').waitFor();
    await checkAndShoot(opened, 'budget-problem');
    const heavy = exampleSheet();
    const pigs = heavy.tabs[1]?.values[1] as unknown[];
    pigs[2] = 290;
    pigs[4] = '';
    const second = await openBudget(heavy);
    await second.page.getByText('Feeders: 5 stays from Fri 1 May on are left out of every figure').waitFor();
    expect(
      await second.page.getByRole('button', { name: 'Write the budget' }).getAttribute('aria-disabled'),
    ).toBe('true');
    expect(opened.errors).toEqual([]);
  });
});
