/** Calls that fail: each ends in a sentence on the screen, and the next try works. */
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { launchBrowser } from '../browser/launch';
import type { Trouble } from './fake-sheet';
import { farmSheet } from './farm';
import { checkAndShoot, openSidebar } from './open-sidebar';

let browser: Browser | undefined;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser?.close());

const TROUBLES: readonly [string, Trouble, RegExp][] = [
  ['the script refuses', { kind: 'refused', sentence: 'The tab is gone. Read again.' }, /The tab is gone/],
  ['several accounts', { kind: 'thrown', message: 'PERMISSION_DENIED' }, /private \(incognito\) window/],
  ['lost connection', { kind: 'thrown', message: 'NetworkError: HTTP 0' }, /connection .* was lost/i],
  ['an empty answer', { kind: 'text', text: null }, /are of different versions/],
  ['half an answer', { kind: 'text', text: '{"ok":true,"da' }, /are of different versions/],
  [
    'an answer of another shape',
    { kind: 'text', text: '{"ok":true,"data":[{"name":1}]}' },
    /different versions/,
  ],
];

describe('failing calls', { timeout: 120_000 }, () => {
  test('each is told in words and can be tried again', async ({ skip }) => {
    if (!browser) skip();
    const sheet = farmSheet();
    const opened = await openSidebar(browser as Browser, sheet);
    const { page } = opened;
    await page.getByRole('button', { name: 'Plan the moves' }).click();
    await page.getByText('9 paddocks read').waitFor();
    const again = page.getByRole('button', { name: 'Read the spreadsheet again' });
    for (const [, trouble, told] of TROUBLES) {
      sheet.trouble.set('readFile', trouble);
      await again.click();
      await page.getByRole('alert').filter({ hasText: told }).waitFor();
      await again.click();
      await page.getByRole('alert').waitFor({ state: 'detached' });
    }
    sheet.trouble.set('readFile', { kind: 'thrown', message: 'PERMISSION_DENIED' });
    await again.click();
    await page.getByRole('alert').waitFor();
    await checkAndShoot(opened, 'failure');
    expect(opened.errors).toEqual([]);
  });

  test('an answer that never comes is waited for, but not for ever', async ({ skip }) => {
    if (!browser) skip();
    const sheet = farmSheet();
    sheet.trouble.set('readFile', { kind: 'silent' });
    const opened = await openSidebar(browser as Browser, sheet, {}, (page) => page.clock.install());
    const { page } = opened;
    await page.getByRole('button', { name: 'Plan the moves' }).click();
    await page.getByText('Reading the spreadsheet…').waitFor();
    await page.clock.fastForward(61_000);
    await page.getByRole('alert').filter({ hasText: 'has not answered' }).waitFor();
  });

  test('offline is said', async ({ skip }) => {
    if (!browser) skip();
    const sheet = farmSheet();
    const opened = await openSidebar(browser as Browser, sheet);
    const { page } = opened;
    await page.context().setOffline(true);
    sheet.trouble.set('readFile', { kind: 'thrown', message: 'x' });
    await page.getByRole('button', { name: 'Plan the moves' }).click();
    await page.getByRole('alert').filter({ hasText: 'Check the internet connection' }).waitFor();
  });

  test('without a spreadsheet the page still works out numbers and says what is missing', async ({
    skip,
  }) => {
    if (!browser) skip();
    const opened = await openSidebar(browser as Browser, undefined);
    const { page } = opened;
    await page.getByRole('button', { name: 'Work out a number' }).click();
    await page.getByRole('button', { name: 'FENCE_LENGTH' }).click();
    await page.getByRole('alert').filter({ hasText: 'only beside a spreadsheet' }).waitFor();
    await page.getByRole('textbox', { name: /^Width/ }).fill('20');
    await page.getByRole('textbox', { name: /^Length/ }).fill('30');
    // 2 × (20 + 30), by hand.
    await page.locator('.big').filter({ hasText: /^100 / }).waitFor();
    expect(opened.errors).toEqual([]);
  });
});
