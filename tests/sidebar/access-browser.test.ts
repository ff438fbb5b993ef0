/** The page for people without a mouse, with large text, in the dark and with forced colours. */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { launchBrowser } from '../browser/launch';
import { planned } from '../browser/planned';
import { farmSheet } from './farm';
import { checkAndShoot, openSidebar } from './open-sidebar';

let browser: Browser | undefined;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser?.close());

/** Presses Tab until the focus is on something of that name. */
async function tabTo(page: Page, name: RegExp): Promise<void> {
  for (let i = 0; i < 80; i++) {
    await page.keyboard.press('Tab');
    const found = await page.evaluate(() => {
      const at = document.activeElement as HTMLInputElement | null;
      if (at === document.body) return '';
      return at?.getAttribute('aria-label') ?? at?.labels?.[0]?.textContent ?? at?.textContent ?? '';
    });
    if (name.test(found)) return;
  }
  throw new Error(`Tab never reached ${name}`);
}

/** Focused control: its outline must be seen. */
async function outlineWidth(page: Page): Promise<number> {
  return page.evaluate(() =>
    Number.parseFloat(getComputedStyle(document.activeElement as Element).outlineWidth),
  );
}

describe('access', { timeout: 120_000 }, () => {
  test('a formula by keyboard alone', async ({ skip }) => {
    if (!browser) skip();
    const sheet = farmSheet();
    const { page } = await openSidebar(browser as Browser, sheet);
    await tabTo(page, /Work out a number/);
    expect(await outlineWidth(page)).toBeGreaterThanOrEqual(2);
    await page.keyboard.press('Enter');
    await tabTo(page, /What do you want to know/);
    await page.keyboard.type('rectangle');
    await tabTo(page, /FENCE_LENGTH/);
    await page.keyboard.press('Enter');
    await tabTo(page, /^Width/);
    await page.keyboard.type('20');
    await tabTo(page, /^Length/);
    await page.keyboard.type('30');
    await tabTo(page, /Put into the active cell/);
    await page.keyboard.press('Space');
    await page.getByText('The formula is in').first().waitFor();
    expect(sheet.formulas).toEqual(['=FENCE_LENGTH(20;30)']);
    await page.keyboard.press('Shift+Tab');
    await tabTo(page, /Put into the active cell/);
  });

  test('a plan by keyboard alone, and back again', async ({ skip }) => {
    if (!browser) skip();
    const { page } = await openSidebar(browser as Browser, farmSheet());
    await tabTo(page, /Plan the moves/);
    await page.keyboard.press('Enter');
    await page.getByText('9 paddocks read').waitFor();
    await planned(page);
    await tabTo(page, /Drawing of the season/);
    await page.keyboard.press('ArrowRight');
    await tabTo(page, /All tasks/);
    await page.keyboard.press('Enter');
    await page
      .getByRole('heading', { name: 'What do you want to do?' })
      .and(page.locator(':focus'))
      .waitFor();
  });

  test.each([
    ['dark', { colorScheme: 'dark' as const }],
    ['forced-colours', { forcedColors: 'active' as const }],
  ])('%s', async (name, options) => {
    if (!browser) return;
    const opened = await openSidebar(browser, farmSheet(), options);
    const { page } = opened;
    await checkAndShoot(opened, `${name}-home`);
    await page.getByRole('button', { name: 'Plan the moves' }).click();
    await page.getByText('9 paddocks read').waitFor();
    await planned(page);
    await checkAndShoot(opened, `${name}-rotation`);
  });

  test('text at twice the size: nothing runs out of the page', async ({ skip }) => {
    if (!browser) skip();
    const opened = await openSidebar(browser as Browser, farmSheet());
    const { page } = opened;
    await page.addStyleTag({ content: ':root { font-size: 200% !important; }' });
    await page.getByRole('button', { name: 'Plan the moves' }).click();
    await page.getByText('9 paddocks read').waitFor();
    await planned(page);
    await checkAndShoot(opened, 'large-text-rotation');
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(300);
  });

  test('everything to press is at least 24 px high and wide', async ({ skip }) => {
    if (!browser) skip();
    const { page } = await openSidebar(browser as Browser, farmSheet());
    await page.getByRole('button', { name: 'Plan the moves' }).click();
    await page.getByText('9 paddocks read').waitFor();
    const small = await page.evaluate(() =>
      [...document.querySelectorAll('button, select, summary, textarea, input, label.choice')].flatMap(
        (control) => {
          const { width, height } = (control.closest('label.choice') ?? control).getBoundingClientRect();
          return (width < 24 || height < 24) && width > 0 ? [control.outerHTML] : [];
        },
      ),
    );
    expect(small).toEqual([]);
  });
});
