/** Map, pen, log and mark on the built files in a real browser, beside the sample farms. */
import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { SAMPLE_MAP } from '../tasks/map/sample-map';
import { launchBrowser } from './launch';
import { PreviewPage } from './page';

let browser: Browser | undefined;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser?.close());

const SAMPLES = [
  // The 14 pigs of its list on 25 sq ft each: 18.7 ft a side, two panels of 16 ft. The other: see its list.
  { sample: 'feet-marrow-creek', panels: 8 },
  // 8 pigs × 2.4 m² = 19.2 m², √19.2 = 4.38 m: one 4.9 m panel a side as well.
  { sample: 'metric-larch-vale', panels: 4 },
];

describe.each(SAMPLES)('$sample', ({ sample, panels }) => {
  test('map, pen, log and mark', async ({ skip }) => {
    if (!browser) skip();
    const path = join(mkdtempSync(join(tmpdir(), 'sounder-map-')), 'farm.geojson');
    writeFileSync(path, JSON.stringify(SAMPLE_MAP));
    const preview = await PreviewPage.open(browser as Browser, {
      query: { sample, today: '2026-04-20' },
      width: 1500,
      height: 950,
    });
    try {
      await preview.chooseMenu('Sounder Sheet', 'Open the sidebar');
      const { sidebar } = preview;
      await sidebar.getByRole('button', { name: 'Draw the paddocks' }).click();
      await sidebar.getByLabel('Map file').setInputFiles(path);
      await sidebar.getByRole('button', { name: 'Write the map table' }).click();
      await sidebar.getByText('Written on “Map”').waitFor();
      await preview.openTab('Map');
      expect(await preview.shown('Map', 'A9')).toBe('North');
      // About 80.2 m × 100 m: 0.80 ha, 1.98 ac; see the checks of measureMap.
      const area = Number(await preview.value('Map', 'B9'));
      expect(Math.min(Math.abs(area - 0.802), Math.abs(area - 1.982))).toBeLessThan(0.01);
      await sidebar.getByRole('img', { name: /Map of 4 paddocks/ }).scrollIntoViewIfNeeded();
      await preview.screenshot(`map-${sample}`);
      await sidebar.getByRole('button', { name: 'Open it large, to print' }).click();
      const large = preview.page.frameLocator('#script-dialog iframe');
      await large.getByText('Pond field').waitFor();
      await large.getByRole('button', { name: 'Print' }).waitFor();
      await preview.screenshot(`map-large-${sample}`);
      await preview.page.keyboard.press('Escape');
      await preview.page.locator('#script-dialog').waitFor({ state: 'hidden' });
      await sidebar.getByRole('button', { name: 'Write the map table anew' }).click();
      await sidebar.getByText('Written on “Map”').waitFor();

      await sidebar.getByRole('button', { name: 'All tasks' }).click();
      await sidebar.getByRole('button', { name: 'Train the pigs' }).click();
      await sidebar.getByRole('button', { name: 'Write the pen list' }).click();
      await sidebar.getByText('Written on “Training pen”').waitFor();
      await preview.openTab('Training pen');
      const pen = await cellBeside(preview, 'Training pen', 'panels');
      expect(pen).toBe(panels);
      await sidebar.getByRole('button', { name: 'Write the pen list anew' }).click();
      await sidebar.getByText('Written on “Training pen”').waitFor();
      expect(await cellBeside(preview, 'Training pen', 'panels')).toBe(panels);
      await sidebar.getByRole('img', { name: /^Pen of/ }).scrollIntoViewIfNeeded();
      await preview.screenshot(`training-pen-${sample}`);

      await sidebar.getByLabel('The training log').check();
      await sidebar.getByRole('button', { name: 'Write the training log' }).click();
      await sidebar.getByText('Written on “Training log”').waitFor();
      await preview.typeInto('Training log', 'A9', 'Red');
      await preview.typeInto('Training log', 'D9', '2026-04-18');
      expect(await preview.shown('Training log', 'J9')).toBe('not ready');
      expect(await preview.shown('Training log', 'L9')).toBe('not ready');
      await preview.screenshot(`training-log-${sample}`);

      await sidebar.getByRole('button', { name: 'All tasks' }).click();
      await sidebar.getByRole('button', { name: 'Give a copy away' }).click();
      await sidebar.getByText('“Pig or batch” in the training log, tab “Training log”: 1 cell').waitFor();
      await sidebar.getByRole('button', { name: 'Write the mark' }).click();
      await sidebar.getByText('It is marked:').waitFor();
      expect(await sidebar.getByRole('button', { name: /^Clear/ }).count()).toBe(0);
      await preview.screenshot(`share-${sample}`);
      expect(preview.problems).toEqual([]);
      expect(preview.outside).toEqual([]);
    } finally {
      await preview.close();
    }
  }, 300_000);
});

/** The cell to the right of the first one in column A that holds these words. */
function cellBeside(preview: PreviewPage, tab: string, words: string): Promise<unknown> {
  return preview.page.evaluate(
    ([name, label]) => {
      const { book } = window.sounderPreview.state;
      const sheetId = book.idOf(name!) as string;
      const row = Array.from({ length: 60 }, (_, r) => r).find(
        (r) => book.cell(sheetId, r, 0).value === label,
      );
      return row === undefined ? undefined : book.cell(sheetId, row, 1).value;
    },
    [tab, words],
  );
}
