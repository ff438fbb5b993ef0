/**
 * Rows inserted or deleted by hand after the sidebar has read the table: the write that is refused leaves every cell
 * alone, and undo and redo go over what the person did, step by step, as if it had not been tried.
 */
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { launchBrowser } from '../browser/launch';
import { PreviewPage } from '../browser/page';
import { planned } from '../browser/planned';

let browser: Browser | undefined;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser?.close());

const TAB = 'Rotation';
/** Half of the column of row numbers, in pixels: where a row is right-clicked. */
const ROW_NUMBER_X = 20;

test('a refused write leaves rows inserted and deleted by hand, and their undo, alone', async ({ skip }) => {
  if (!browser) skip();
  const preview = await PreviewPage.open(browser as Browser, {
    query: { sample: 'feet-marrow-creek', today: '2026-05-20' },
    width: 1500,
  });
  try {
    await preview.chooseMenu('Sounder Sheet', 'Open the sidebar');
    await preview.sidebar.getByRole('button', { name: 'Plan the moves' }).click();
    await workOut(preview);
    await preview.sidebar.getByRole('button', { name: 'Write the table' }).click();
    await preview.sidebar.getByText('Written on “Rotation”').first().waitFor({ timeout: 30_000 });
    await preview.sidebar.getByText('Reading the spreadsheet…').waitFor({ state: 'hidden' });

    const inserted = await changedByHand(preview, 9, 'Insert row below');
    expect(inserted.changed).not.toEqual(inserted.before);
    expect(await preview.value(TAB, 'B10')).toBe(null);
    await refusedAndUndone(preview, inserted, 'typed after the row came');

    const deleted = await changedByHand(preview, 8, 'Delete row');
    expect(deleted.changed).not.toEqual(deleted.before);
    await refusedAndUndone(preview, deleted, 'typed after the row went');
    expect(preview.problems).toEqual([]);
  } finally {
    await preview.close();
  }
}, 240_000);

interface Change {
  readonly before: unknown;
  readonly changed: unknown;
}

async function workOut(preview: PreviewPage): Promise<void> {
  const { sidebar } = preview;
  await planned(sidebar);
  await sidebar
    .getByRole('button', { name: /Write the table|Write the table anew/ })
    .waitFor({ timeout: 60_000 });
}

/** Plans first, so that the page has read the table, then chooses from the menu of a row. */
async function changedByHand(preview: PreviewPage, row: number, entry: string): Promise<Change> {
  const { page } = preview;
  await workOut(preview);
  const before = await contents(preview);
  const { y } = await preview.placeOf(TAB, `B${row}`);
  const grid = await page.locator('.o-grid canvas').first().boundingBox();
  const x = (grid?.x ?? 0) + ROW_NUMBER_X;
  await page.mouse.click(x, y);
  await page.mouse.click(x, y, { button: 'right' });
  await page.locator('.o-menu').getByText(entry).first().click();
  await page.locator('.o-menu').waitFor({ state: 'hidden' });
  return { before, changed: await contents(preview) };
}

async function refusedAndUndone(
  preview: PreviewPage,
  { before, changed }: Change,
  note: string,
): Promise<void> {
  const { page, sidebar } = preview;
  await sidebar.getByRole('button', { name: 'Write the table anew' }).click();
  await sidebar.getByRole('alert').filter({ hasText: 'Nothing was written' }).waitFor({ timeout: 30_000 });
  await sidebar.getByText('Reading the spreadsheet…').waitFor({ state: 'hidden' });
  expect(await contents(preview)).toEqual(changed);

  await preview.typeInto(TAB, 'Q7', note);
  const typed = await contents(preview);
  expect(await preview.value(TAB, 'Q7')).toBe(note);
  await preview.clickCell(TAB, 'C3');
  for (let round = 0; round < 2; round += 1) {
    for (const [key, expected] of [
      ['Control+z', changed],
      ['Control+z', before],
      ['Control+y', changed],
      ['Control+y', typed],
    ] as const) {
      await page.keyboard.press(key);
      expect(await contents(preview)).toEqual(expected);
    }
  }
}

/** All that the engine would save, without its counter of changes. */
function contents(preview: PreviewPage): Promise<unknown> {
  return preview.page.evaluate(() => {
    const { revisionId: _, ...rest } = window.sounderPreview.state.book.snapshot() as Record<string, unknown>;
    return rest;
  });
}
