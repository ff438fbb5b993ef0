/** Every task of the page: opened by keyboard, clean for axe, in the dark, with forced colours and with large text. */
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { launchBrowser } from '../browser/launch';
import { farmSheet } from './farm';
import { checkAndShoot, openSidebar } from './open-sidebar';

let browser: Browser | undefined;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser?.close());

/** More stops than any task has. */
const MOST_STOPS = 150;

const LOOKS: readonly (readonly [string, BrowserContextOptions, string])[] = [
  ['plain', {}, ''],
  ['dark', { colorScheme: 'dark' }, ''],
  ['forced-colours', { forcedColors: 'active' }, ''],
  ['large-text', {}, ':root { font-size: 200% !important; }'],
];

describe.each(LOOKS)('%s', (look, options, style) => {
  test('every task', async ({ skip }) => {
    if (!browser) skip();
    const opened = await openSidebar(browser as Browser, farmSheet(), options);
    const { page } = opened;
    if (style) await page.addStyleTag({ content: style });
    const titles = await page.locator('button.task').allInnerTexts();
    expect(titles.length).toBeGreaterThan(6);
    for (const title of titles) {
      await page.getByRole('button', { name: title, exact: true }).focus();
      await page.keyboard.press('Enter');
      await page.getByRole('heading', { name: title, level: 1 }).and(page.locator(':focus')).waitFor();
      // The lists are read before the task shows its fields.
      await page.waitForFunction(() => !document.querySelector('main')?.textContent?.includes('Reading'));
      // The plan comes by itself, and with it the buttons above the rules.
      if (title === 'Plan the moves') await page.getByRole('button', { name: 'Write the table' }).waitFor();
      await checkAndShoot(opened, `task-${title.split(' ')[0]?.toLowerCase()}-${look}`);
      expect(await page.evaluate(() => document.documentElement.scrollWidth), title).toBeLessThanOrEqual(300);
      if (look === 'plain') expect(await unseenStops(page), title).toEqual([]);
      await page.getByRole('button', { name: 'All tasks' }).focus();
      await page.keyboard.press('Enter');
      // The screen takes the focus itself; only then is the next button ours to press.
      await page
        .getByRole('heading', { name: 'What do you want to do?' })
        .and(page.locator(':focus'))
        .waitFor();
    }
  }, 240_000);
});

/** Walks the task with Tab; gives the controls that were skipped or show no focus. */
async function unseenStops(page: Page): Promise<string[]> {
  await page.evaluate(() => {
    const first = document.querySelector<HTMLElement>('main button');
    first?.focus();
    if (first) first.dataset.seen = 'yes';
  });
  const faint: string[] = [];
  for (let stop = 0; stop < MOST_STOPS; stop++) {
    await page.keyboard.press('Tab');
    const found = await page.evaluate(() => {
      const at = document.activeElement as HTMLElement | null;
      if (!at || at === document.body) return undefined;
      at.dataset.seen = 'yes';
      return {
        name: at.outerHTML.slice(0, 80),
        outline: Number.parseFloat(getComputedStyle(at).outlineWidth),
      };
    });
    if (!found) break;
    if (found.outline < 2) faint.push(`no outline: ${found.name}`);
  }
  const skipped = await page.evaluate(() =>
    [
      ...document.querySelectorAll<HTMLElement>(
        'main button, main select, main textarea, main summary, main input',
      ),
    ]
      .filter((control) => control.checkVisibility() && !control.dataset.seen)
      // Of radio buttons only the chosen one is a stop; arrow keys do the rest.
      .filter(
        (control) => !(control instanceof HTMLInputElement && control.type === 'radio' && !control.checked),
      )
      .map((control) => `skipped: ${control.outerHTML.slice(0, 80)}`),
  );
  return [...faint, ...skipped];
}
