/** "Give a copy away" in a real browser beside a stand-in for the spreadsheet. */
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { text } from '../../shared/block/cells';
import { withMemory } from '../../shared/tasks/merge/merge-block';
import { markTask } from '../../shared/tasks/share/mark-task';
import { composeLogBlock, LOG_BLOCK } from '../../shared/tasks/training/log-block';
import { launchBrowser } from '../browser/launch';
import { FakeSheet, tab } from './fake-sheet';
import { checkAndShoot, openSidebar } from './open-sidebar';

let browser: Browser | undefined;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser?.close());

function farm(): FakeSheet {
  const sheet = new FakeSheet([tab('Notes', [['']])]);
  const row = new Map([
    ['Pig or batch', text('<img src=x onerror=alert(1)>')],
    ['Note', text('limps')],
  ]);
  const log = composeLogBlock({ minimumDays: 3 }, [row], [], { row: 1, column: 1 });
  const place = { at: 'new-tab', tab: 'Training log' };
  sheet.answer('writeBlock', JSON.stringify({ freezeRows: 0, ...log, name: LOG_BLOCK, place }));
  return sheet;
}

/** By it the file is a copy of another one. */
const FOREIGN = markTask('SOUNDER_ORIGINAL_AAAAAAAAAAAAAAAA');
const FOREIGN_MARK = {
  name: FOREIGN.name,
  freezeRows: 0,
  ...withMemory(FOREIGN.name, FOREIGN.compose(true, { row: 1, column: 1 })),
  place: { at: 'new-tab', tab: 'Sharing' },
};

async function openShare(sheet: FakeSheet) {
  const opened = await openSidebar(browser as Browser, sheet);
  await opened.page.getByRole('button', { name: 'Give a copy away' }).click();
  await opened.page.getByRole('heading', { name: 'What is private here' }).waitFor();
  return { ...opened, sheet };
}

describe('the share panel', { timeout: 120_000 }, () => {
  test('the original: a list, a mark, and no way to clear', async ({ skip }) => {
    if (!browser) skip();
    const sheet = farm();
    const opened = await openShare(sheet);
    const { page, errors } = opened;
    await page.getByText('“Note” in the training log, tab “Training log”: 1 cell').waitFor();
    await page.getByText('not marked yet').waitFor();
    expect(await page.getByRole('button', { name: /^Clear/ }).count()).toBe(0);
    await page.getByRole('button', { name: 'Write the mark' }).click();
    await page.getByText('It is marked:').waitFor();
    expect(await page.getByRole('button', { name: /^Clear/ }).count()).toBe(0);
    expect(sheet.written[1]?.name).toBe(sheet.mark);
    await page.getByText('What whoever copies it must allow, and why').click();
    await checkAndShoot(opened, 'share-original');
    expect(errors).toEqual([]);
  });

  test('a copy: clears the chosen kinds, only after the word is typed', async ({ skip }) => {
    if (!browser) skip();
    const sheet = farm();
    sheet.answer('writeBlock', JSON.stringify(FOREIGN_MARK));
    const opened = await openShare(sheet);
    const { page, errors } = opened;
    await page.getByText(': a copy').waitFor();
    await page.getByLabel(/^logs/).uncheck();
    const button = page.getByRole('button', { name: 'Clear in this copy' });
    expect(await button.getAttribute('aria-disabled')).toBe('true');
    await button.click({ force: true });
    expect(sheet.cleared).toHaveLength(0);
    await page.getByLabel(/^To be sure, type the name/).fill('Farm 2');
    await button.click({ force: true });
    expect(sheet.cleared).toHaveLength(0);
    await page.getByLabel(/^To be sure, type the name/).fill('Farm');
    await checkAndShoot(opened, 'share-copy');
    sheet.trouble.set('clearInCopy', {
      kind: 'refused',
      sentence: 'This is the original, not a copy. Nothing was cleared.',
    });
    await button.click();
    await page.getByRole('alert').filter({ hasText: 'This is the original' }).waitFor();
    await button.click();
    await page.locator('.notice.done:focus').filter({ hasText: '1 cell cleared' }).waitFor();
    expect(sheet.cleared).toHaveLength(1);
    expect(sheet.cleared[0]?.areas).toEqual([
      { tab: 'Training log', row: 9, column: 15, rows: 1, columns: 1 },
    ]);
    expect(sheet.cleared[0]?.blocks.map(({ name }) => name)).toEqual([LOG_BLOCK]);
    expect(errors).toEqual([]);
  });

  test('a blank copy: the rows of the lists too; then it says what was done and what is left', async ({
    skip,
  }) => {
    if (!browser) skip();
    const sheet = farm();
    sheet.tabs = [tab('Letters', [['Dear neighbour']]), ...sheet.tabs];
    sheet.answer('writeBlock', JSON.stringify(FOREIGN_MARK));
    const opened = await openShare(sheet);
    const { page, errors } = opened;
    await page.getByLabel(/^Everything: a blank copy/).check();
    expect(await page.getByLabel('The rows of my lists too').isChecked()).toBe(true);
    await page.getByLabel(/^To be sure, type the name/).fill('Farm');
    await page.getByRole('button', { name: 'Clear in this copy' }).click();
    await page.getByText(': a blank copy.').waitFor();
    await page.getByText('Your own tabs stay, with what is left on them: “Letters”.').waitFor();
    expect(await page.getByText(/not marked yet|Mark it as the original first/).count()).toBe(0);
    await checkAndShoot(opened, 'share-blank');
    expect(errors).toEqual([]);
  });
});
