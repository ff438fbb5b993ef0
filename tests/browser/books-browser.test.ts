/**
 * Farm books as their growers keep them, opened in a real browser on the built files: from the spreadsheet to the written
 * table by clicks alone, which are counted, and no cell of the books is another one afterwards.
 */
import { readFile } from 'node:fs/promises';
import type { Browser, Locator } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openWorkbook } from '../../src/headless';
import { startTabs, TEN_BOOKS } from '../lists/books/ten-books';
import { launchBrowser } from './launch';
import { PreviewPage } from './page';
import { planned } from './planned';

let browser: Browser | undefined;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser?.close());

const MOST_CLICKS = 8;
const TYPE = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';

/** A grower who has only a mouse, and is counted. */
class Clicks {
  count = 0;
  async on(target: Locator): Promise<void> {
    this.count += 1;
    await target.click();
  }
}

async function openBook(bytes: Buffer, locale: string, today: string): Promise<PreviewPage> {
  const preview = await PreviewPage.open(browser as Browser, { query: { locale, today }, width: 1400 });
  await preview.page.setInputFiles('#file', { name: 'Farm book.xlsx', mimeType: TYPE, buffer: bytes });
  await preview.page.waitForFunction(() => document.getElementById('title')?.textContent === 'Farm book');
  return preview;
}

/** One of the written books, with its tabs changed beforehand. */
async function openWritten(
  name: string,
  change: (tabs: Tabs) => void = () => undefined,
): Promise<PreviewPage> {
  const written = TEN_BOOKS.find((one) => one.name === name)!;
  const { locale, today } = written;
  const tabs = startTabs(written);
  change(tabs);
  const file = await openWorkbook({ tabs, locale, today });
  return openBook(Buffer.from(await file.toXlsx()), locale, today);
}

type Tabs = ReturnType<typeof startTabs>;

/** A small invented book. */
async function openTabs(tabs: Tabs): Promise<PreviewPage> {
  const [locale, today] = ['en_US', '2026-11-24'];
  const file = await openWorkbook({ tabs, locale, today });
  return openBook(Buffer.from(await file.toXlsx()), locale, today);
}

const FIELDS: Tabs[string] = [
  ['Paddock', 'Acres', 'Last used', 'Open from'],
  ['Creek', 0.75, { d: '2026-09-28' }, ''],
  ['Ridge', 0.75, 'red butts in', ''],
  ['Hill', 1.1, 'done, off 11/20', ''],
  ['Sac lot', 1.2, 'sows', ''],
  ['Barn side', 1.1, '', 'closed'],
  ['Back lot', 2.5, { d: '2026-08-30' }, ''],
];

async function openTask({ page, sidebar }: PreviewPage, clicks: Clicks): Promise<void> {
  await clicks.on(page.locator('#menus').getByRole('button', { name: 'Sounder Sheet' }));
  await clicks.on(page.getByRole('menuitem', { name: 'Open the sidebar' }));
  await clicks.on(sidebar.getByRole('button', { name: 'Plan the moves' }));
}

async function writeTable({ sidebar }: PreviewPage, clicks: Clicks): Promise<void> {
  await planned(sidebar);
  await clicks.on(sidebar.getByRole('button', { name: 'Write the table', exact: true }));
  await sidebar
    .getByText(/Written on/)
    .first()
    .waitFor({ timeout: 60_000 });
}

/** Opens the task, answers what is asked by one press among others, and writes the table: five clicks in all. */
async function answered(
  preview: PreviewPage,
  answer: (sidebar: PreviewPage['sidebar'], press: Clicks['on']) => Promise<void>,
): Promise<void> {
  try {
    const clicks = new Clicks();
    await openTask(preview, clicks);
    await answer(preview.sidebar, (button) => clicks.on(button));
    await writeTable(preview, clicks);
    expect(clicks.count).toBe(5);
    expect(preview.problems).toEqual([]);
  } finally {
    await preview.close();
  }
}

/** Everything that stands on a tab: value or formula of each cell. */
function contents(preview: PreviewPage, tabs: readonly string[]): Promise<string> {
  return preview.page.evaluate((names) => {
    const { book } = window.sounderPreview.state;
    const cells = names.map((name) => {
      const sheetId = book.idOf(name) as string;
      const { rows, columns } = book.usedSize(sheetId);
      return Array.from({ length: rows * columns }, (_, i) => {
        const [row, column] = [Math.floor(i / columns), i % columns];
        return book.formula(sheetId, row, column) || book.cell(sheetId, row, column).value;
      });
    });
    return JSON.stringify(cells);
  }, tabs);
}

const GROUP_COLUMN = 0;
const PADDOCK_COLUMN = 1;

/** Group and paddock of the moves in the table, in their order. */
async function firstMoves(preview: PreviewPage): Promise<string[]> {
  const shown = await preview.page.evaluate(() => {
    const { book } = window.sounderPreview.state;
    const sheetId = book.idOf('Rotation') as string;
    const { rows, columns } = book.usedSize(sheetId);
    return Array.from({ length: rows }, (_, row) =>
      Array.from({ length: columns }, (_, column) => book.cell(sheetId, row, column).formattedValue),
    );
  });
  const head = shown.findIndex((row) => row.includes('Group') && row.includes('Paddock'));
  return shown.slice(head + 1).map((row) => `${row[GROUP_COLUMN]}: ${row[PADDOCK_COLUMN]}`);
}

describe.each([
  {
    file: 'hogbook',
    locale: 'en_US',
    today: '2026-04-14',
    read: ['12 paddocks read, 10.39 ac in all.', '2 groups read, 28 pigs in all.'],
    moves: ['Spring bunch: Barn strip', 'Big ones: Oak lot'],
  },
  {
    file: 'hof',
    locale: 'de_DE',
    today: '2026-04-14',
    read: ['6 paddocks read, 3.15 ha in all.', '2 groups read, 18 pigs in all.'],
    moves: ['Ferkel: ', 'Mast: '],
  },
])('$file', ({ file, locale, today, read, moves }) => {
  test('planned and written without a cell retyped', async ({ skip }) => {
    if (!browser) skip();
    const preview = await openBook(await readFile(`tests/lists/books/${file}.xlsx`), locale, today);
    try {
      const tabs = await preview.tabs();
      const before = await contents(preview, tabs);
      const clicks = new Clicks();
      await openTask(preview, clicks);
      await writeTable(preview, clicks);
      for (const words of read) await preview.sidebar.getByText(words).first().waitFor();
      expect(clicks.count).toBeLessThanOrEqual(MOST_CLICKS);
      expect(clicks.count).toBe(4);
      expect(await contents(preview, tabs)).toBe(before);
      const written = await firstMoves(preview);
      for (const move of moves)
        expect(
          written.some((one) => one.startsWith(move)),
          move,
        ).toBe(true);
      await preview.screenshot(`book-${file}`);
      expect(preview.problems).toEqual([]);
    } finally {
      await preview.close();
    }
  }, 240_000);
});

test('a close choice of columns is asked, and answered by one press', async ({ skip }) => {
  if (!browser) skip();
  const preview = await openWritten('es-dehesa');
  await answered(preview, async (sidebar, press) => {
    await sidebar.getByText('Which is the weight on “Lotes”?').waitFor();
    await preview.screenshot('book-close-choice');
    await press(sidebar.getByRole('button', { name: /Peso actual/ }));
  });
}, 240_000);

test('an area that is missing is asked and written into the list by the button', async ({ skip }) => {
  if (!browser) skip();
  const preview = await openWritten('pt-parques', (tabs) => {
    // Sobreiro: its area is not written.
    tabs.Parques![2]![1] = null;
  });
  await answered(preview, async (sidebar, press) => {
    await sidebar.getByLabel('Area: Sobreiro (ha)').fill('0,90');
    await preview.screenshot('book-missing-area');
    await press(sidebar.getByRole('button', { name: 'Write into column B of “Parques”' }));
    await sidebar.getByText('6 paddocks read, 6.1 ha in all.').waitFor();
    expect(await preview.value('Parques', 'B3')).toBe(0.9);
  });
}, 240_000);

test('words for days stop nothing; a group in the yard is asked, and answered by one press', async ({
  skip,
}) => {
  if (!browser) skip();
  const preview = await openTabs({
    Fields: FIELDS,
    Pigs: [
      ['PIGS', 'HOW MANY', 'WT', 'ON', 'WHERE', 'IN SINCE'],
      ['Red butts', 14, 165, { d: '2026-11-15' }, 'Ridge', { d: '2026-11-08' }],
      ['Blue butts', 11, 92, { d: '2026-11-15' }, 'yard', 'weaned'],
    ],
  });
  await answered(preview, async (sidebar, press) => {
    await planned(sidebar);
    await sidebar
      .getByText(/“Blue butts” stands in “yard”, which is no paddock/)
      .first()
      .waitFor();
    await sidebar
      .getByText(/“closed”: “Barn side” is read like the others/)
      .first()
      .waitFor();
    const asked = sidebar.getByRole('button', { name: 'It goes into the paddocks now' });
    await asked.scrollIntoViewIfNeeded();
    await preview.screenshot('book-group-elsewhere');
    await press(asked);
    await sidebar.getByText('2 groups read, 25 pigs in all.').waitFor();
    expect(await preview.value('Pigs', 'G1')).toBe('In rotation from');
  });
}, 240_000);

test('a diary of moves is made the group list by one press', async ({ skip }) => {
  if (!browser) skip();
  const day = (d: string) => ({ d });
  const preview = await openTabs({
    Fields: FIELDS,
    Diary: [
      ['Date', 'Group', 'From', 'To', 'Head', 'Lbs each'],
      [day('2026-10-02'), 'Reds', 'Creek', 'Hill', 14, 120],
      [day('2026-10-04'), 'Blues', 'barn', 'Back lot', 11, 60],
      [day('2026-10-20'), 'Reds', 'Hill', 'Ridge', 13, ''],
      [day('2026-11-03'), 'Blues', 'Back lot', 'Creek', 11, 95],
      [day('2026-11-15'), 'Reds', 'Ridge', 'Hill', 13, 188],
    ],
  });
  await answered(preview, async (sidebar, press) => {
    await sidebar.getByText('Reds: 13 pigs, 188 lb on 2026-11-15, Hill since 2026-11-15').first().waitFor();
    await preview.screenshot('book-diary');
    await press(sidebar.getByRole('button', { name: 'Make this my group list' }));
    await sidebar.getByText('2 groups read, 24 pigs in all.').waitFor();
  });
}, 240_000);
