/** "Let the log decide when they may go out" in a real browser on the built files. */
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { launchBrowser } from './launch';
import { PreviewPage } from './page';

let browser: Browser | undefined;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser?.close());

test('the day of the log goes into the group list', async ({ skip }) => {
  if (!browser) skip();
  const preview = await PreviewPage.open(browser as Browser, {
    query: { sample: 'feet-marrow-creek', today: '2026-05-01' },
    width: 1360,
    height: 900,
  });
  try {
    const { sidebar, page } = preview;
    await preview.chooseMenu('Sounder Sheet', 'Open the sidebar');
    await sidebar.getByRole('button', { name: 'Train the pigs' }).click();
    await sidebar.getByLabel('The training log').check();
    await sidebar.getByRole('button', { name: 'Write the training log' }).click();
    await sidebar.getByText('Written on “Training log”').waitFor({ timeout: 60_000 });
    const row = await firstRow(preview);
    const days = ['2026-04-20', '2026-04-21', '2026-04-21', '2026-04-25'];
    for (const [column, typed] of ['Feeders', 'Lane feeders', '14', ...days, 'Ada'].entries()) {
      await preview.typeInto('Training log', `${'ABCDEFGH'[column]}${row}`, typed);
    }
    await sidebar.getByRole('button', { name: 'Read the spreadsheet again' }).click();
    // A day was typed in the list: it stays.
    await sidebar.getByText(/F5 .* stays for Lane feeders/).waitFor();
    expect(await sidebar.getByRole('button', { name: /^Let the log decide/ }).count()).toBe(0);
    await preview.clickCell('Pigs', 'F5');
    await page.keyboard.press('Delete');
    await sidebar.getByRole('button', { name: 'Read the spreadsheet again' }).click();
    await sidebar.getByRole('button', { name: 'Let the log decide when they may go out' }).click();
    await sidebar
      .getByText('The group list on “Pigs” now follows the log.')
      .first()
      .waitFor({ timeout: 60_000 });
    expect(await preview.shown('Pigs', 'F5')).toMatch(/2026-04-25|4\/25\/2026/);
    expect(await preview.formula('Pigs', 'F5')).toContain('MATCH(A5');
    await preview.screenshot('training-log-decides');
    expect(preview.problems).toEqual([]);
  } finally {
    await preview.close();
  }
}, 240_000);

/** Sheet row of the log's first row to type into. */
async function firstRow(preview: PreviewPage): Promise<number> {
  for (let row = 1; row < 20; row++) {
    if ((await preview.shown('Training log', `A${row}`)) === 'Pig or batch') return row + 1;
  }
  throw new Error('no headings in the log');
}
