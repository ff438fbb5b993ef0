/** "Work out a number" in a real browser at the sidebar's width. */
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { launchBrowser } from '../browser/launch';
import { FakeSheet, tab } from './fake-sheet';
import { checkAndShoot, type Opened, openSidebar } from './open-sidebar';

let browser: Browser | undefined;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser?.close());

function farm(): FakeSheet {
  return new FakeSheet([
    tab('Paddocks', [
      ['Paddock', 'Width', 'Length'],
      ['Oak', 200, 300],
      ['Ash', 100, 150],
      ['Elm', -5, 150],
    ]),
    tab('Notes', [['']]),
  ]);
}

async function openFunction(sheet: FakeSheet, search: string, name: string): Promise<Opened> {
  const opened = await openSidebar(browser as Browser, sheet);
  await opened.page.getByRole('button', { name: 'Work out a number' }).click();
  await opened.page.getByLabel('What do you want to know?').fill(search);
  await opened.page.getByRole('button', { name }).click();
  return opened;
}

describe('formulas in the sidebar', { timeout: 120_000 }, () => {
  test('home, search, a typed answer and the formula in the active cell', async ({ skip }) => {
    if (!browser) skip();
    const sheet = farm();
    const opened = await openSidebar(browser as Browser, sheet);
    const { page } = opened;
    await checkAndShoot(opened, 'home');
    await page.getByRole('button', { name: 'Work out a number' }).click();
    await page.getByRole('heading', { name: 'Work out a number' }).and(page.locator(':focus')).waitFor();
    await checkAndShoot(opened, 'formulas-list');
    await page.getByLabel('What do you want to know?').fill('rectangle');
    await page.getByRole('button', { name: 'FENCE_LENGTH' }).click();
    await page.getByText('Fill in width and length').waitFor();
    await page.getByRole('textbox', { name: /^Width/ }).fill('200');
    await page.getByRole('textbox', { name: /^Length/ }).fill('300');
    await page.getByRole('textbox', { name: /^Strands/ }).fill('2');
    // 2 × (200 + 300) × 2, by hand.
    await page.getByText('2,000').waitFor();
    await checkAndShoot(opened, 'formulas-answer');
    await page.getByRole('button', { name: 'Put into the active cell' }).click();
    await page.getByText('The formula is in B2 on “Notes”.').first().waitFor();
    expect(sheet.formulas).toEqual(['=FENCE_LENGTH(200;300;2)']);
    await checkAndShoot(opened, 'formulas-put');
    expect(opened.errors).toEqual([]);
  });

  test('selected cells, typed references and messages in the rows of a range', async ({ skip }) => {
    if (!browser) skip();
    const sheet = farm();
    const opened = await openFunction(sheet, 'rectangle', 'FENCE_LENGTH');
    const { page } = opened;
    sheet.selection = {
      ...sheet.selection,
      tab: 'Paddocks',
      a1: 'B2:B4',
      values: [[200], [100], [-5]],
    };
    await page.getByRole('button', { name: 'Use selected cells for width' }).click();
    await page.getByRole('textbox', { name: /^Length/ }).fill('Paddocks!C2:C4');
    await page.getByText('width must be more than 0, got -5').waitFor();
    await checkAndShoot(opened, 'formulas-range');
    sheet.selection = { ...sheet.selection, tab: 'Notes', a1: 'A1', values: [['']] };
    await page.getByRole('button', { name: 'Put into the active cell' }).click();
    await page.getByText('The formula is in A1 on “Notes”.').first().waitFor();
    expect(sheet.formulas).toEqual(["=FENCE_LENGTH('Paddocks'!B2:B4;Paddocks!C2:C4)"]);
  });

  test('a refusal stands beside its field, and an occupied cell is left alone', async ({ skip }) => {
    if (!browser) skip();
    const sheet = farm();
    const opened = await openFunction(sheet, 'rectangle', 'FENCE_LENGTH');
    const { page } = opened;
    await page.getByRole('textbox', { name: /^Width/ }).fill('-1');
    await page.getByRole('textbox', { name: /^Length/ }).fill('300');
    const field = page.getByRole('textbox', { name: /^Width/ });
    await expect.poll(() => field.getAttribute('aria-invalid')).toBe('true');
    await checkAndShoot(opened, 'formulas-refused');
    await field.fill('1,320');
    await page.getByText('width: write 1320, without a sign between thousands').first().waitFor();
    await field.fill('1320');
    sheet.selection = { ...sheet.selection, values: [['do not lose me']] };
    await page.getByRole('button', { name: 'Put into the active cell' }).click();
    await page.getByText('already holds “do not lose me”').waitFor();
    expect(sheet.formulas).toEqual([]);
  });

  test('in a decimal-comma spreadsheet the formula holds no decimal point', async ({ skip }) => {
    if (!browser) skip();
    const sheet = farm();
    sheet.locale = 'de_DE';
    const opened = await openFunction(sheet, 'growing', 'PIG_WEIGHT');
    const { page } = opened;
    await page.getByLabel('Start weight (kg)').fill('25,5');
    await page.getByRole('textbox', { name: /^Days/ }).fill('10');
    await page.getByRole('textbox', { name: /^Daily gain/ }).fill('0,5');
    // 25.5 + 10 × 0.5, by hand.
    await page.getByText('30.5').waitFor();
    await page.getByRole('button', { name: 'Put into the active cell' }).click();
    await page.getByText('The formula is in').first().waitFor();
    expect(sheet.formulas).toEqual(['=PIG_WEIGHT(255/10;10;5/10;"metric")']);
  });
});
