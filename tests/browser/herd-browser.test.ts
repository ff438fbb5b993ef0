/** The herd log in a real browser on the built files: written from the list, a sale added, the moves follow. */

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

test('a sale goes into the log and into the moves from its day on', async ({ skip }) => {
  if (!browser) skip();
  const preview = await PreviewPage.open(browser as Browser, {
    query: { sample: 'feet-marrow-creek', today: '2026-05-10' },
    width: 1360,
    height: 900,
  });
  try {
    const { sidebar } = preview;
    await preview.chooseMenu('Sounder Sheet', 'Open the sidebar');
    await sidebar.getByRole('button', { name: 'Keep the herd log' }).click();
    await sidebar.getByText('Lane feeders: 14 head').waitFor();
    await sidebar.getByLabel('From which day on').fill('2026-06-01');
    await sidebar.getByLabel('Head from then on').fill('9.5');
    await sidebar.getByText('head must be a whole number').first().waitFor();
    await sidebar.getByLabel('Head from then on').fill('9');
    await sidebar.getByLabel('Note').fill('five sold');
    await sidebar.getByRole('button', { name: 'Write the herd log' }).click();
    await sidebar.getByText('Written on “Herd log”').waitFor({ timeout: 60_000 });
    // The first row is the list's, the second the one that was added.
    expect([await preview.shown('Herd log', 'C7'), await preview.shown('Herd log', 'D7')]).toEqual([
      '14',
      '62',
    ]);
    expect([await preview.shown('Herd log', 'C8'), await preview.shown('Herd log', 'E8')]).toEqual([
      '9',
      'five sold',
    ]);
    await preview.screenshot('herd-log');

    await sidebar.getByRole('button', { name: 'All tasks' }).click();
    await writeMoves(sidebar);
    const moves = await movesOf(preview);
    expect(moves.length).toBeGreaterThan(10);
    for (const { planned, head } of moves) expect(head, planned).toBe(planned < '2026-06-01' ? '14' : '9');
    expect(preview.problems).toEqual([]);
  } finally {
    await preview.close();
  }
}, 240_000);

async function movesOf(preview: PreviewPage): Promise<{ planned: string; head: string }[]> {
  const rows = await preview.page.evaluate(() => {
    const { book } = window.sounderPreview.state;
    const sheetId = book.idOf('Rotation') as string;
    const { rows } = book.usedSize(sheetId);
    const shown = (row: number, column: number): string => book.cell(sheetId, row, column).formattedValue;
    return Array.from({ length: rows }, (_, row) => ({ planned: shown(row, 2), head: shown(row, 6) }));
  });
  const heading = rows.findIndex(({ planned }) => planned === 'Planned in');
  return rows
    .slice(heading + 1)
    .map(({ planned, head }) => ({ planned: isoShown(planned), head }))
    .filter(({ planned }) => /^\d{4}-\d\d-\d\d$/.test(planned));
}
