/** The preview's page in a real browser, with the fixture script in the place of the built one. */
import { readFile } from 'node:fs/promises';
import axe from 'axe-core';
import ExcelJS from 'exceljs';
import type { Browser } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { openWorkbook } from '../../src/headless';
import { launchBrowser } from '../browser/launch';
import { type OpenOptions, PreviewPage } from '../browser/page';
import { codeJs, FIXTURES } from './fixture';

let browser: Browser | undefined;
let opened: PreviewPage | undefined;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser?.close());
afterEach(async () => {
  const { problems, outside } = opened ?? { problems: [], outside: [] };
  await opened?.close();
  opened = undefined;
  expect(problems).toEqual([]);
  expect(outside).toEqual([]);
});

/** Opens the page on an empty workbook, or skips the test where there is no browser. */
async function open(skip: () => void, options: OpenOptions = {}): Promise<PreviewPage> {
  if (!browser) skip();
  opened = await PreviewPage.open(browser as Browser, { built: FIXTURES, samples: FIXTURES, ...options });
  return opened;
}

async function axeViolations(preview: PreviewPage, places: string[]): Promise<string[]> {
  await preview.page.evaluate(axe.source);
  return preview.page.evaluate(async (include) => {
    const { axe: checker } = window as unknown as { axe: typeof axe };
    const found = await checker.run({ include: include.map((place) => [place]) }, { iframes: false });
    return found.violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join(' ')}`);
  }, places);
}

describe('the grid', () => {
  test('a formula typed by keyboard, with help popping up, gives its answer', async ({ skip }) => {
    const preview = await open(skip);
    await preview.typeInto('Sheet1', 'B5', '200');
    await preview.typeInto('Sheet1', 'C5', '300');
    await preview.startTyping('Sheet1', 'D5', '=FENCE_T');
    await preview.page.locator('.o-autocomplete-value').getByText('FENCE_TEST').waitFor();
    await preview.page.keyboard.type('EST(');
    const help = preview.page.locator('.o-formula-assistant');
    await help.getByText('Round a rectangle: 2 × (width + length) × strands.').waitFor();
    await help.getByText('Width of the field.').waitFor();
    await help.getByText('[strands]').first().waitFor();
    await preview.screenshot('preview-help');
    await preview.page.keyboard.type('B5; C5; 2)');
    await preview.page.keyboard.press('Enter');
    // 2 × (200 + 300) × 2, by hand.
    expect(await preview.value('Sheet1', 'D5')).toBe(2000);
    expect(await preview.formula('Sheet1', 'D5')).toBe('=FENCE_TEST(B5,C5,2)');
  });

  test('the message of an error shows on hover', async ({ skip }) => {
    const preview = await open(skip);
    await preview.typeInto('Sheet1', 'B2', '=FENCE_TEST("wide", 5)');
    expect(await preview.value('Sheet1', 'B2')).toBe('#ERROR!');
    expect(await preview.hoverMessage('Sheet1', 'B2')).toContain(
      'FENCE_TEST: width must be a number, got "wide"',
    );
    await preview.screenshot('preview-error');
  });

  test('a percent cell reads 75% and 75 as 75 percent', async ({ skip }) => {
    const preview = await open(skip);
    await preview.page.evaluate(() => {
      const { book } = window.sounderPreview.state;
      const target = [{ left: 0, right: 0, top: 0, bottom: 9 }];
      book.must({ type: 'SET_FORMATTING', sheetId: book.activeSheetId(), target, format: '0%' });
    });
    await preview.typeInto('Sheet1', 'A1', '75%');
    await preview.typeInto('Sheet1', 'A2', '75');
    await preview.typeInto('Sheet1', 'A3', '-5%');
    await preview.typeInto('Sheet1', 'B1', '[a](b)');
    for (const [a1, value, shown] of [
      ['A1', 0.75, '75%'],
      ['A2', 0.75, '75%'],
      ['A3', -0.05, '-5%'],
    ] as const) {
      expect([await preview.value('Sheet1', a1), await preview.shown('Sheet1', a1)]).toEqual([value, shown]);
    }
    expect(await preview.value('Sheet1', 'B1')).toBe('[a](b)');
  });

  test('on a machine that draws slowly no key is lost and none is put beside the old text', async ({
    skip,
  }) => {
    const drawsSlowly = () => {
      const frame = window.requestAnimationFrame.bind(window);
      window.requestAnimationFrame = (draw) => window.setTimeout(() => frame(draw), 200);
    };
    const preview = await open(skip, { query: { locale: 'de_DE' }, before: drawsSlowly });
    await preview.typeInto('Sheet1', 'C2', '7,5%');
    expect(await preview.value('Sheet1', 'C2')).toBe(0.075);
    await preview.typeInto('Sheet1', 'C2', '8,5%');
    expect(await preview.value('Sheet1', 'C2')).toBe(0.085);
    await preview.typeInto('Sheet1', 'C2', '95');
    expect(await preview.value('Sheet1', 'C2')).toBe(0.95);
  });

  test('what is typed into a plain-text cell stays text', async ({ skip }) => {
    const preview = await open(skip);
    await preview.page.evaluate(() => {
      const { book } = window.sounderPreview.state;
      const sheetId = book.activeSheetId();
      const target = [{ left: 0, right: 0, top: 0, bottom: 9 }];
      // The engine's name for the plain-text format, see engine/number-format.ts.
      book.must({ type: 'SET_FORMATTING', sheetId, target, format: '0;-0;0;@' });
    });
    await preview.typeInto('Sheet1', 'A1', '=1+1');
    await preview.typeInto('Sheet1', 'A2', '007');
    expect(await preview.value('Sheet1', 'A1')).toBe('=1+1');
    expect(await preview.value('Sheet1', 'A2')).toBe('007');
    expect(await preview.formula('Sheet1', 'A1')).toBe('');
  });

  test('several tabs, each with its own cells', async ({ skip }) => {
    const preview = await open(skip);
    await preview.typeInto('Sheet1', 'A1', 'first');
    await preview.page.locator('.o-add-sheet').click();
    expect(await preview.tabs()).toEqual(['Sheet1', 'Sheet2']);
    await preview.typeInto('Sheet2', 'A1', '=Sheet1!A1');
    expect(await preview.value('Sheet2', 'A1')).toBe('first');
  });

  test('locale and time zone come from the address', async ({ skip }) => {
    const query = { locale: 'de_DE', tz: 'America/New_York', today: '2026-04-01' };
    const preview = await open(skip, { query });
    await preview.typeInto('Sheet1', 'A1', '1,5');
    await preview.typeInto('Sheet1', 'A2', '=A1*2');
    await preview.typeInto('Sheet1', 'A3', '=SUM(A1;A2)');
    await preview.typeInto('Sheet1', 'A4', '=TODAY()');
    expect(await preview.shown('Sheet1', 'A3')).toBe('4,5');
    expect(await preview.shown('Sheet1', 'A4')).toBe('1.4.2026');
    // 2026-04-21 is day 46133 from 1899-12-30, where Sheets' serial numbers begin.
    await preview.typeInto('Sheet1', 'B1', '21.04.2026');
    await preview.typeInto('Sheet1', 'B2', '21.4.2026 12:00');
    await preview.typeInto('Sheet1', 'B1', '22.04.2026');
    await preview.typeInto('Sheet1', 'C1', '1.234,5');
    await preview.typeInto('Sheet1', 'C2', '7,5%');
    await preview.typeInto('Sheet1', 'C2', '8,5%');
    expect(await preview.value('Sheet1', 'B1')).toBe(46134);
    expect(await preview.shown('Sheet1', 'B1')).toBe('22.4.2026');
    expect(await preview.value('Sheet1', 'B2')).toBe(46133.5);
    expect(await preview.value('Sheet1', 'C1')).toBe(1234.5);
    expect(await preview.value('Sheet1', 'C2')).toBe(0.085);
  });

  test('a day typed as in France is a date', async ({ skip }) => {
    const preview = await open(skip, { query: { locale: 'fr_FR', today: '2026-04-01' } });
    await preview.typeInto('Sheet1', 'A1', '21/04/2026');
    await preview.typeInto('Sheet1', 'A2', '1,5');
    expect(await preview.value('Sheet1', 'A1')).toBe(46133);
    expect(await preview.value('Sheet1', 'A2')).toBe(1.5);
  });
});

describe("the script's menu and pages", () => {
  test('the sidebar opens from the menu, 300 pixels wide, and talks with the script', async ({ skip }) => {
    const preview = await open(skip);
    await preview.clickCell('Sheet1', 'C4');
    await preview.chooseMenu('Fixture', 'Open the sidebar');
    await preview.sidebar.getByRole('button', { name: 'Ask the script' }).click();
    const answer = '{"ok":true,"data":{"title":"Untitled spreadsheet","activeCell":"C4"}}';
    await preview.sidebar.getByText(`got ${answer}`).waitFor();
    // 300 pixels is what Google documents.
    expect((await preview.page.locator('#sidebar iframe').boundingBox())?.width).toBe(300);
    await preview.screenshot('preview-sidebar');
    await preview.sidebar.getByRole('button', { name: 'Close' }).click();
    await preview.page.locator('#sidebar').waitFor({ state: 'hidden' });
  });

  test('Ctrl+Z takes back what a call of the script wrote, Ctrl+Y writes it again', async ({ skip }) => {
    const preview = await open(skip);
    await preview.typeInto('Sheet1', 'A1', 'mine');
    await preview.page.evaluate(() => {
      for (const rows of [[['a', 1]], [['b', 2]]]) {
        window.sounderPreview.callFromPage('answerSidebar', ['write', JSON.stringify({ rows })]);
      }
    });
    const first = async () => [await preview.value('Sheet1', 'A1'), await preview.value('Sheet1', 'B1')];
    expect(await first()).toEqual(['b', 2]);
    await preview.clickCell('Sheet1', 'C3');
    await preview.page.keyboard.press('Control+z');
    expect(await first()).toEqual(['a', 1]);
    await preview.page.keyboard.press('Control+z');
    expect(await first()).toEqual(['mine', null]);
    await preview.page.keyboard.press('Control+y');
    expect(await first()).toEqual(['a', 1]);
  });

  test('the menu works by keyboard and an alert shows its text', async ({ skip }) => {
    const preview = await open(skip);
    await preview.page.locator('#menus').getByRole('button', { name: 'Fixture' }).focus();
    for (const key of ['Enter', 'ArrowDown', 'Enter']) await preview.page.keyboard.press(key);
    await preview.page.getByRole('dialog', { name: 'Hello' }).getByText('From the script').waitFor();
    await preview.page.keyboard.press('Escape');
    await preview.page.getByRole('dialog', { name: 'Hello' }).waitFor({ state: 'hidden' });
  });

  test('F6 leads from the grid to the menus, from there to the sidebar and back', async ({ skip }) => {
    const preview = await open(skip);
    const { page } = preview;
    const part = (): Promise<string> =>
      page.evaluate(() => document.activeElement?.closest('#menus, #sidebar, #grid')?.id ?? 'none');
    await page.locator('.o-grid').waitFor();
    await page.keyboard.press('F6');
    await expect.poll(part).toBe('menus');
    await page.keyboard.press('Enter');
    await page.keyboard.press('ArrowDown');
    await page.getByRole('menuitem', { name: 'Open the sidebar' }).press('Enter');
    await expect.poll(part).toBe('sidebar');
    await page.keyboard.press('F6');
    await expect.poll(part).toBe('grid');
    await page.keyboard.press('F6');
    await page.keyboard.press('F6');
    await expect.poll(part).toBe('sidebar');
  });

  test('our own parts of the page pass axe-core', async ({ skip }) => {
    const preview = await open(skip);
    await preview.chooseMenu('Fixture', 'Open the sidebar');
    expect(await axeViolations(preview, ['.bar', '#sidebar'])).toEqual([]);
  });
});

describe('.xlsx', () => {
  test('a file opens, keeps its texts and formulas, and is saved again', async ({ skip }) => {
    const preview = await open(skip);
    const file = await (
      await openWorkbook({
        codeJs,
        tabs: { Farm: [[{ text: '00123' }, '=FENCE_TEST(1;2)', { d: '2026-04-01' }]] },
      })
    ).toXlsx();
    const mimeType = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';
    await preview.page.setInputFiles('#file', { name: 'My farm.xlsx', mimeType, buffer: Buffer.from(file) });
    await preview.page.getByRole('heading', { name: 'My farm' }).waitFor();
    expect(await preview.value('Farm', 'A1')).toBe('00123');
    expect(await preview.value('Farm', 'B1')).toBe(6);
    const [download] = await Promise.all([
      preview.page.waitForEvent('download'),
      preview.page.getByRole('button', { name: 'Save .xlsx' }).click(),
    ]);
    expect(download.suggestedFilename()).toBe('My farm.xlsx');
    const saved = await openWorkbook(await readFile(await download.path()), { codeJs });
    expect(saved.values('Farm')).toEqual([['00123', 6, new Date('2026-04-01T00:00:00Z')]]);
    expect(saved.formulas('Farm')).toEqual([['', '=FENCE_TEST(1,2)', '']]);
  });

  test('what is not carried over is told on opening and asked about before saving', async ({ skip }) => {
    const preview = await open(skip);
    const file = new ExcelJS.Workbook();
    const sheet = file.addWorksheet('Farm');
    sheet.getCell('A1').note = 'wet after rain';
    sheet.getCell('A2').value = { text: 'Soil map', hyperlink: 'https://example.org/' };
    const buffer = Buffer.from(await file.xlsx.writeBuffer());
    await preview.page.setInputFiles('#file', { name: 'Mine.xlsx', mimeType: 'text/plain', buffer });
    const sentence = 'Not carried over from this file: 1 note. It will be missing if you save it from here.';
    await preview.page.getByRole('status').getByText(sentence).waitFor();
    expect(await preview.value('Farm', 'A2')).toBe('Soil map');
    // Looking at a link must not ask for anything outside, not even its picture: checked after each test.
    await preview.clickCell('Farm', 'A2');
    await preview.page.locator('.o-link-tool').getByText('https://example.org/').waitFor();
    await preview.screenshot('preview-file-loss');
    expect(await axeViolations(preview, ['.file-loss'])).toEqual([]);

    const save = preview.page.getByRole('button', { name: 'Save .xlsx' });
    const question = preview.page.getByRole('dialog', { name: 'Save without some parts?' });
    let downloads = 0;
    preview.page.on('download', () => {
      downloads += 1;
    });
    await save.click();
    await question.getByText(sentence).waitFor();
    await preview.page.keyboard.press('Escape');
    await question.waitFor({ state: 'hidden' });
    await save.click();
    expect(await axeViolations(preview, ['#save-question'])).toEqual([]);
    const [download] = await Promise.all([
      preview.page.waitForEvent('download'),
      question.getByRole('button', { name: 'Save a new file' }).click(),
    ]);
    expect(download.suggestedFilename()).toBe('Mine.xlsx');
    expect(downloads).toBe(1);

    await preview.page.getByRole('button', { name: 'Hide' }).click();
    await preview.page.getByRole('status').getByText(sentence).waitFor({ state: 'detached' });
    // Another file has its own losses.
    const clean = new ExcelJS.Workbook();
    clean.addWorksheet('Clean').getCell('A1').value = 1;
    await preview.page.setInputFiles('#file', {
      name: 'Clean.xlsx',
      mimeType: 'text/plain',
      buffer: Buffer.from(await clean.xlsx.writeBuffer()),
    });
    await preview.page.getByRole('heading', { name: 'Clean' }).waitFor();
    await Promise.all([preview.page.waitForEvent('download'), save.click()]);
  });

  test('a file that is none is refused in words', async ({ skip }) => {
    const preview = await open(skip);
    await preview.page.setInputFiles('#file', {
      name: 'x.xlsx',
      mimeType: 'text/plain',
      buffer: Buffer.from('no'),
    });
    await preview.page.getByText('"x.xlsx" could not be read as an .xlsx workbook.').waitFor();
    expect(await preview.tabs()).toEqual(['Sheet1']);
  });
});
