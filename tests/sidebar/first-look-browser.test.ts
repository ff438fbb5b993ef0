/**
 * What a grower sees at first sight of every task: counted on a farm whose lists are clean, at 300 × 700 px. Printed, and
 * held to the measures that the design sets: main button and key figure in sight, few words, few stops to the button.
 */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { launchBrowser } from '../browser/launch';
import { farmSheet } from './farm';
import { openSidebar } from './open-sidebar';

let browser: Browser | undefined;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser?.close());

const VIEW = { width: 300, height: 700 };
const MOST_STOPS = 8;
/** Those that the lists and sensible starts answer at once. */
const ANSWERED = [
  'Plan the moves',
  'List the fence materials',
  'Train the pigs',
  'Budget feed, water and ground',
];

interface Look {
  readonly words: number;
  readonly fields: number;
  readonly stops: number;
  readonly mainAt: number;
  readonly answerAt: number;
  readonly height: number;
}

/** Counted in what is in sight without scrolling: words and fields; and where main button and answer lie. */
function firstLook(page: Page): Promise<Look> {
  return page.evaluate((height) => {
    const isSeen = (element: Element): boolean => {
      const { top, bottom, width } = element.getBoundingClientRect();
      return element.checkVisibility() && width > 0 && top < height && bottom > 0;
    };
    const walker = document.createTreeWalker(document.querySelector('main')!, NodeFilter.SHOW_TEXT);
    let words = 0;
    while (walker.nextNode()) {
      const parent = walker.currentNode.parentElement!;
      if (isSeen(parent)) words += (walker.currentNode.textContent?.match(/[\p{L}\p{N}]+/gu) ?? []).length;
    }
    const controls = [
      ...document.querySelectorAll<HTMLElement>(
        'main button, main select, main textarea, main summary, main input',
      ),
    ].filter((control) => control.checkVisibility());
    const main = document.querySelector<HTMLElement>('main button.main');
    const top = (element: Element | null): number =>
      element ? Math.round(element.getBoundingClientRect().bottom) : -1;
    return {
      words,
      fields: controls.filter(
        (control) => !['BUTTON', 'SUMMARY'].includes(control.tagName) && isSeen(control),
      ).length,
      stops: main ? controls.indexOf(main) + 1 : -1,
      mainAt: top(main),
      answerAt: top(document.querySelector('main .answer .big, main .answer h3, main .answer')),
      height: document.documentElement.scrollHeight,
    };
  }, VIEW.height);
}

test('every task at first sight', async ({ skip }) => {
  if (!browser) skip();
  const { page } = await openSidebar(browser as Browser, farmSheet(), { viewport: VIEW, isFolded: true });
  const titles = await page.locator('button.task').allInnerTexts();
  const lines: string[] = [];
  for (const title of titles) {
    await page.getByRole('button', { name: title, exact: true }).click();
    await page.getByRole('heading', { name: title, level: 1 }).waitFor();
    await page.waitForFunction(() => !document.querySelector('main')?.textContent?.includes('Reading'));
    await page.locator('main :is(.answer, h2, fieldset, details, .notice)').first().waitFor();
    if (title === 'Plan the moves') await page.getByRole('button', { name: 'Write the table' }).waitFor();
    await page.screenshot({ path: `test-output/sidebar/first-${title.split(' ')[0]?.toLowerCase()}.png` });
    const look = await firstLook(page);
    lines.push(`${title}: ${JSON.stringify(look)}`);
    if (ANSWERED.includes(title)) {
      expect(look.mainAt, `${title}: main button in sight`).toBeLessThanOrEqual(VIEW.height);
      expect(look.stops, `${title}: stops to the main button`).toBeLessThanOrEqual(MOST_STOPS);
    }
    await page.getByRole('button', { name: 'All tasks' }).click();
  }
  console.log(lines.join('\n'));
}, 120_000);
