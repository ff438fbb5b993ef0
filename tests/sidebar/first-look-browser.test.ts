/**
 * What a grower sees at first sight of every task: counted on a farm whose lists are clean, at 300 × 700 px. Printed, and
 * held to the measures that the design sets: main button and key figure in sight, few words, few stops to the button.
 */
import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { standingRotation } from '../../shared/tasks/rotation/rotation-standing';
import { markTask } from '../../shared/tasks/share/mark-task';
import { portOf, runTask } from '../../src/headless';
import { launchBrowser } from '../browser/launch';
import { cellUnder } from '../cell-under';
import { shownMoves } from '../hard-use/check-table';
import { readBook } from '../hard-use/rotation-task';
import { SAMPLE_MAP } from '../tasks/map/sample-map';
import { farmSheet } from './farm';
import { openFarm, setToday, sheetOf } from './happened-farm';
import { checkAndShoot, openSidebar, shootWindow } from './open-sidebar';

let browser: Browser | undefined;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser?.close());

const VIEW = { width: 300, height: 700 };
const MOST_STOPS = 8;
const MOST_WORDS = 120;
/** They show what is chosen among, not an answer. */
const WITHOUT_ANSWER = ['What happened', 'Work out a number'];

function expectMeasures(title: string, { words, mainAt, stops }: Look, hasButton: boolean): void {
  expect(words, `${title}: words in sight`).toBeLessThanOrEqual(MOST_WORDS);
  if (!hasButton) return;
  for (const [key, value, most] of [
    ['mainAt', mainAt, VIEW.height],
    ['stops', stops, MOST_STOPS],
  ] as const) {
    expect(value, `${title}: ${key} of the main button`).toBeLessThanOrEqual(most);
    expect(value, `${title}: the main button is there`).toBeGreaterThan(0);
  }
}

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
    expectMeasures(title, look, !WITHOUT_ANSWER.includes(title));
    await page.getByRole('button', { name: 'All tasks' }).click();
  }
  console.log(lines.join('\n'));
}, 120_000);

/** What each task comes to on a farm in mid-season, and where its answer is more than the main button. */
const IN_USE: readonly {
  readonly name: string;
  readonly task: string;
  readonly before?: (page: Page) => Promise<void>;
  readonly answer: RegExp;
  /** All that it may do is done already. */
  readonly hasNoButton?: boolean;
}[] = [
  { name: 'today', task: 'See today at a glance', answer: /Reds: In \w+ since/ },
  { name: 'herd', task: 'Keep the herd log', answer: /^18 pigs in 2 groups today/ },
  {
    name: 'map',
    task: 'Draw the paddocks',
    before: async (page) => {
      const path = join(mkdtempSync(join(tmpdir(), 'sounder-map-')), 'farm.geojson');
      writeFileSync(path, JSON.stringify(SAMPLE_MAP));
      await page.getByLabel('Map file').setInputFiles(path);
      await page.locator('.answer:focus').waitFor();
    },
    answer: /^[\d.]+ ac in 4 paddocks/,
  },
  {
    name: 'walk',
    task: 'Check the volts',
    before: (page) => page.getByLabel('What I measured on a fence walk').check(),
    answer: /No reading yet/,
  },
  {
    name: 'log',
    task: 'Train the pigs',
    before: (page) => page.getByLabel('The training log').check(),
    answer: /One row a pig or batch/,
  },
  { name: 'original', task: 'Give a copy away', answer: /the original/, hasNoButton: true },
];

test('tasks in use', async ({ skip }) => {
  if (!browser) skip();
  const farm = await openFarm();
  setToday(farm, '2026-04-20');
  const port = portOf(farm);
  const { mark } = await port('fileMark', {});
  await runTask(port, markTask(mark));
  const opened = await openSidebar(browser as Browser, sheetOf(farm), { viewport: VIEW, isFolded: true });
  const { page } = opened;
  for (const { name, task, before, answer, hasNoButton } of IN_USE) {
    await page.getByRole('button', { name: task, exact: true }).click();
    await page.getByText('Reading the spreadsheet…').waitFor({ state: 'hidden' });
    await before?.(page);
    const card = page.locator('.answer').first();
    await card.filter({ hasText: answer }).waitFor();
    expect((await card.boundingBox())!.y, `${name}: key figure in sight`).toBeLessThan(VIEW.height);
    await shootWindow(opened, `in-use-${name}`);
    const look = await firstLook(page);
    console.log(`${name}: ${JSON.stringify(look)}`);
    expectMeasures(name, look, !hasNoButton);
    await checkAndShoot(opened, `in-use-${name}-whole`);
    if (!hasNoButton) {
      await page.locator('main button.main').press('Enter');
      await page.locator('.notice.done:focus').filter({ hasText: 'Written on' }).waitFor();
      await shootWindow(opened, `in-use-${name}-written`);
      await checkAndShoot(opened, `in-use-${name}-written-whole`);
    }
    await page.getByRole('button', { name: 'All tasks' }).click();
  }
  expect(opened.errors).toEqual([]);
}, 240_000);

test('a copy: what to clear, by keyboard, and the blank copy', async ({ skip }) => {
  if (!browser) skip();
  const farm = await openFarm();
  const port = portOf(farm);
  const { mark } = await port('fileMark', {});
  await runTask(port, markTask(mark));
  const { row } = shownMoves(farm, standingRotation(readBook(farm))!.block.info)[0]!;
  farm.type('Rotation', cellUnder(farm, 'Moved in', row), '2026-04-20');
  const copy = await farm.copy();
  const opened = await openSidebar(browser as Browser, sheetOf(copy), { viewport: VIEW, isFolded: true });
  const { page } = opened;
  await page.getByRole('button', { name: 'Give a copy away' }).click();
  await page.locator('.answer').filter({ hasText: 'a copy' }).waitFor();
  // Perhaps it is a copy that somebody works in.
  await page.getByText('has 1 move recorded, the last on').waitFor();
  await shootWindow(opened, 'in-use-copy');
  const look = await firstLook(page);
  console.log(`copy: ${JSON.stringify(look)}`);
  expectMeasures('copy', look, true);
  await checkAndShoot(opened, 'in-use-copy-whole');
  await page.getByLabel('Everything: a blank copy').focus();
  await page.keyboard.press('Space');
  await page.getByText('2 tables of ours, on “Rotation”, “Sharing”; the rows of the lists on').waitFor();
  const main = page.getByRole('button', { name: 'Clear in this copy' });
  await page.getByLabel(/^To be sure, type the name of this file/).fill('Some other file');
  await main.press('Enter');
  expect(copy.values('Pigs')[1]?.[0]).toBe('Reds');
  await page.getByLabel(/^To be sure, type the name of this file/).fill(copy.spreadsheet.getName());
  await shootWindow(opened, 'in-use-blank-copy');
  await checkAndShoot(opened, 'in-use-blank-copy-whole');
  await main.press('Enter');
  await page.locator('.notice.done:focus').filter({ hasText: 'version history' }).waitFor();
  await page.getByText(': a blank copy.').waitFor();
  await shootWindow(opened, 'in-use-blank-copy-done');
  await checkAndShoot(opened, 'in-use-blank-copy-done-whole');
  expect(copy.values('Pigs').flat().filter(String)).toEqual(farm.values('Pigs')[0]?.filter(String));
  expect(farm.values('Pigs')[1]?.[0]).toBe('Reds');
  expect(opened.errors).toEqual([]);
}, 240_000);
