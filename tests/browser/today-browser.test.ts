/**
 * Today's page as a grower uses it, in a real browser on the built files: written from the sidebar, read at the width
 * of a phone, a box ticked by a tap.
 */

import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { isoShown } from '../iso-shown';
import { launchBrowser } from './launch';
import { PreviewPage } from './page';
import { writeMoves } from './planned';

let browser: Browser | undefined;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser?.close());

const PHONE = { width: 400, height: 860 };

test('written from the sidebar, read on a phone, ticked by a tap', async ({ skip }) => {
  if (!browser) skip();
  const preview = await PreviewPage.open(browser as Browser, {
    query: { sample: 'metric-larch-vale', today: '2026-06-10' },
    width: 1360,
    height: PHONE.height,
  });
  try {
    const { sidebar, page } = preview;
    await preview.chooseMenu('Sounder Sheet', 'Open the sidebar');
    await writeMoves(sidebar);
    await sidebar.getByRole('button', { name: 'All tasks' }).click();
    await sidebar.getByRole('button', { name: 'See today at a glance' }).click();
    await sidebar.getByRole('button', { name: 'Write today’s page' }).click();
    await sidebar.getByText('Written on “Today”').waitFor({ timeout: 60_000 });
    // Ours stand together, today's page first.
    expect(await preview.tabs()).toEqual(['Farm', 'Today', 'Rotation']);

    await preview.screenshot('today-beside-sidebar');
    await page.locator('#sidebar-close').click();
    await page.setViewportSize(PHONE);
    await preview.openTab('Today');
    await page.waitForTimeout(500);
    const before = await cardOf(preview);
    expect(before['Goes to']).not.toBe('');
    await preview.screenshot('today-phone');

    // Nobody has said yet when they came: which move a tick means cannot be told.
    await tapBox(preview);
    await page.waitForTimeout(500);
    expect((await cardOf(preview)).says).toMatch(/^Not written: no day is typed for this group yet/);
    for (let row = 6; row < 60; row++) {
      const [paddock, planned] = [
        await preview.shown('Rotation', `B${row}`),
        await preview.shown('Rotation', `C${row}`),
      ];
      if (paddock === before['Stands in'] && planned.startsWith(before.Since!))
        await preview.typeInto('Rotation', `D${row}`, isoShown(planned));
    }
    await preview.openTab('Today');
    await page.waitForTimeout(500);
    await tapBox(preview);
    await page.waitForTimeout(500);
    const after = await cardOf(preview);
    expect(after['Stands in']).toBe(before['Goes to']);
    expect(after.Since).toBe('Wed 10 Jun');
    expect(after.Moved).toBe('FALSE');
    await preview.screenshot('today-phone-ticked');

    await tapBox(preview);
    await page.waitForTimeout(500);
    expect((await cardOf(preview)).says).toMatch(/^Not written: it came here today/);
    expect(await cardOf(preview)).toMatchObject({ 'Stands in': before['Goes to'], Moved: 'FALSE' });
    await preview.screenshot('today-phone-refused');
    expect(preview.problems).toEqual([]);
  } finally {
    await preview.close();
  }
}, 240_000);

const BOX_ROW = 11;

/** The first group's card by its labels, and what stands beside the box. */
async function cardOf(preview: PreviewPage): Promise<Record<string, string>> {
  const card: Record<string, string> = { says: await preview.shown('Today', `C${BOX_ROW}`) };
  for (let row = 5; row <= 18; row++) {
    card[await preview.shown('Today', `A${row}`)] = await preview.shown('Today', `B${row}`);
  }
  return card;
}

/** Taps the middle of the cell, where the box stands. */
async function tapBox(preview: PreviewPage): Promise<void> {
  const { x, y } = await preview.placeOf('Today', `B${BOX_ROW}`);
  await preview.page.mouse.click(x, y);
}
