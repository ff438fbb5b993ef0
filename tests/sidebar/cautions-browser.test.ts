/** The cautions of each task, as they stand in the sidebar beside the numbers that they belong to; with pictures. */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { launchBrowser } from '../browser/launch';
import { farmSheet } from './farm';
import { openSidebar, shootWindow } from './open-sidebar';

let browser: Browser | undefined;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser?.close());

interface Seen {
  readonly picture: string;
  readonly task: string;
  /** What is pressed before the caution is there. */
  readonly before?: (page: Page) => Promise<void>;
  readonly says: readonly string[];
}

const work = (name: string, typed: Readonly<Record<string, string>>) => async (page: Page) => {
  await page.getByLabel('What do you want to know?').fill(name);
  await page.getByRole('button', { name }).click();
  for (const [label, value] of Object.entries(typed)) {
    await page.getByRole('textbox', { name: new RegExp(`^${label}`) }).fill(value);
  }
};

const SEEN: readonly Seen[] = [
  { picture: 'rotation', task: 'Plan the moves', says: ['Rest for the forage is not rest from parasites'] },
  {
    picture: 'materials',
    task: 'List the fence materials',
    says: [
      'Keep head, neck and body away from the wire',
      'fences of separate energizers, as for several groups, stay 2.5 m (8 ft) apart',
      '10 m (33 ft) from supply and telephone earths',
      'Against swine fever some countries demand a second, fixed fence',
    ],
  },
  {
    picture: 'pen',
    task: 'Train the pigs',
    says: ['Panels outside, live wire inside', 'One energizer, one circuit a fence', 'Heat kills pigs'],
  },
  {
    picture: 'volts',
    task: 'Check the volts',
    says: ['steady planning estimate', '2.5 m (8 ft) from the next'],
  },
  {
    picture: 'walk',
    task: 'Check the volts',
    before: (page) => page.getByLabel('What I measured on a fence walk').check(),
    says: ['Switch the energizer off before you mend'],
  },
  {
    picture: 'budget',
    task: 'Budget feed, water and ground',
    says: [
      'from about 70 °F (21 °C) on',
      'can poison pigs with salt',
      'Local nutrient and water rules decide',
    ],
  },
  {
    picture: 'joules',
    task: 'Work out a number',
    before: work('ENERGIZER_JOULES', { 'Fence length': '31680' }),
    says: ['Never connect mains to a fence', 'Never two energizers, nor two circuits of one'],
  },
  {
    picture: 'water',
    task: 'Work out a number',
    before: work('WATER_NEEDED', { Head: '12', Weight: '150' }),
    says: ['begin to suffer near 70 °F (21 °C)', 'Never ration water to this number'],
  },
];

test.for(SEEN)('$picture: $task', { timeout: 60_000 }, async ({ picture, task, before, says }, { skip }) => {
  if (!browser) skip();
  const opened = await openSidebar(browser as Browser, farmSheet());
  const { page } = opened;
  await page.getByRole('button', { name: task }).click();
  await page.getByText('Reading the spreadsheet…').waitFor({ state: 'hidden' });
  await before?.(page);
  for (const [at, words] of says.entries()) {
    const caution = page.getByText(words).filter({ visible: true }).first();
    await caution.waitFor();
    await caution.scrollIntoViewIfNeeded();
    await shootWindow(opened, `caution-${picture}-${at + 1}`);
  }
  // Nothing runs out of the narrow page.
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(300);
  expect(opened.errors).toEqual([]);
});
