/** "Train the pigs" in a real browser beside a stand-in for the spreadsheet. */
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { launchBrowser } from '../browser/launch';
import { FakeSheet, tab } from './fake-sheet';
import { checkAndShoot, openSidebar } from './open-sidebar';

let browser: Browser | undefined;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser?.close());

async function openTraining(sheet = new FakeSheet([tab('Notes', [['']])])) {
  const opened = await openSidebar(browser as Browser, sheet);
  await opened.page.getByRole('button', { name: 'Train the pigs' }).click();
  await opened.page.getByText('What about?').waitFor();
  return { ...opened, sheet };
}

describe('the training panel', { timeout: 120_000 }, () => {
  test('the pen: numbers, drawing with words, list into the sheet and anew', async ({ skip }) => {
    if (!browser) skip();
    const opened = await openTraining();
    const { page, sheet, errors } = opened;
    await page.getByLabel(/^Weight of one/).fill('216');
    // Common practice, no source: every side one 16 ft panel takes 4 panels and 12 posts.
    expect(await page.getByRole('row', { name: /^Panels/ }).textContent()).toBe('Panels4 ');
    expect(await page.getByRole('row', { name: /^Posts/ }).textContent()).toBe('Posts12 ');
    // Two strands for growing pigs: 10 and 18 in (published, second hand), in the pen as on pasture (judgement).
    await page.getByRole('img', { name: /inside at 10 in and 18 in.*Corner posts stand inside/ }).waitFor();
    await page.getByText(/Never drive pigs into the wire/).waitFor();
    await checkAndShoot(opened, 'training-pen');
    await page.getByLabel(/^Pigs/).fill('0');
    await page.getByText(/Pigs must be 1 or more/).waitFor();
    await page.getByLabel(/^Pigs/).fill('12');
    await page.getByRole('button', { name: 'Write the pen list' }).click();
    await page.getByText('Written on “Training pen”').waitFor();
    const formulas = sheet.written[0]?.cells.flat().flatMap((cell) => (cell.k === 'f' ? [cell.v] : [])) ?? [];
    expect(formulas.filter((formula) => formula.includes('TRAINING_PEN'))).toHaveLength(1);
    await page.getByRole('button', { name: 'Write the pen list anew' }).click();
    await expect.poll(() => sheet.written.length).toBe(2);
    expect(sheet.written[1]?.place).toMatchObject({ at: 'own', area: { row: 1, column: 1 } });
    expect(errors).toEqual([]);
  });

  test('the log: written, shown, typed rows kept', async ({ skip }) => {
    if (!browser) skip();
    const opened = await openTraining();
    const { page, sheet, errors } = opened;
    await page.getByLabel('The training log').check();
    await page.getByText('Before turn-out').waitFor();
    await page.getByLabel(/^Fewest days in the pen/).fill('5');
    await page.getByRole('button', { name: 'Write the training log' }).click();
    await page.getByText('Written on “Training log”').waitFor();
    const log = sheet.tabs.find(({ name }) => name === 'Training log')!;
    const head = log.values.findIndex((row) => row[0] === 'Pig or batch');
    log.values[head + 2]![0] = '<b>Red</b>';
    log.values[head + 2]![9] = 'not ready';
    log.values[head + 2]![10] = 'saw the wire';
    await page.getByRole('button', { name: 'Read the spreadsheet again' }).click();
    await page.getByRole('row', { name: '<b>Red</b> not ready saw the wire' }).waitFor();
    log.values[head + 2]![9] = '';
    log.values[head + 2]![10] = '';
    // Without a name, and right below the log.
    log.values[head + 3]![1] = 'Spring';
    const blank = log.values[0]!.map(() => '');
    log.values.push(['Late', 'Spring', ...blank.slice(2)]);
    log.formulas.push([...blank]);
    await page.getByRole('button', { name: 'Read the spreadsheet again' }).click();
    await page.getByRole('row', { name: `(row ${head + 4})` }).waitFor();
    await page.getByRole('row', { name: /^Late not ready below the log: not counted/ }).waitFor();
    await page.getByText('The filled row right below it becomes part of it.').waitFor();
    await checkAndShoot(opened, 'training-log');
    await page.getByRole('button', { name: 'Write the training log anew' }).click();
    await expect.poll(() => sheet.written.length).toBe(2);
    const { cells, place } = sheet.written[1]!;
    expect(place).toMatchObject({ at: 'own', area: { rows: sheet.written[0]!.cells.length + 1 } });
    expect(cells[head + 2]?.[0]).toMatchObject({ k: 't', v: '<b>Red</b>' });
    expect(cells[head + 3]?.[1]).toMatchObject({ k: 't', v: 'Spring' });
    expect(cells.flatMap(([name]) => (name?.k === 't' ? [name.v] : []))).toContain('Late');
    expect(errors).toEqual([]);
  });

  test('a pig is out: help without reading anything', async ({ skip }) => {
    if (!browser) skip();
    const sheet = new FakeSheet([tab('Notes', [['']])]);
    const opened = await openTraining(sheet);
    const { page, errors } = opened;
    sheet.trouble.set('overview', { kind: 'silent' });
    await page.getByLabel('A pig is out').check();
    await page.getByText(/Never herd it into the electric fence/).waitFor();
    await page.getByText(/put a person there to warn traffic/).waitFor();
    await checkAndShoot(opened, 'training-out');
    expect(errors).toEqual([]);
  });
});
