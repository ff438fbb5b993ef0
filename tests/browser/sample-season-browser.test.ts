/** The sample farm as somebody meets it who presses its button in an empty file, on a day in winter, in a real browser. */
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { launchBrowser } from './launch';
import { PreviewPage } from './page';
import { planned } from './planned';

let browser: Browser | undefined;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser?.close());

test('is written beside the page and has moves to come', async ({ skip }) => {
  if (!browser) skip();
  const preview = await PreviewPage.open(browser as Browser, {
    query: { sample: 'none', today: '2026-12-31' },
    width: 1360,
    height: 900,
  });
  try {
    const { sidebar } = preview;
    await preview.chooseMenu('Sounder Sheet', 'Open the sidebar');
    await sidebar.getByRole('button', { name: 'Plan the moves' }).click();
    await sidebar.getByRole('button', { name: /Marrow Creek/ }).click();
    await planned(sidebar, 120_000);
    expect(await preview.tabs()).toEqual(['Sheet1', 'Paddocks', 'Pigs', 'Today', 'Rotation', 'Herd log']);
    await preview.screenshot('sample-plan');
    // Three moves after the last day of the year, in the words of the page.
    const next = await sidebar.locator('ol.next li').allInnerTexts();
    expect(next).toHaveLength(3);
    for (const move of next) expect(move).toMatch(/^\w{3} \d+ (Dec|Jan): Lane feeders to /);
    await preview.openTab('Today');
    await preview.page.waitForTimeout(500);
    await preview.screenshot('sample-today');
    await preview.openTab('Rotation');
    await preview.page.waitForTimeout(500);
    await preview.screenshot('sample-rotation');
    expect(preview.problems).toEqual([]);
  } finally {
    await preview.close();
  }
}, 240_000);
