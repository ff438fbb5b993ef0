/**
 * The real page over the real script and a workbook: lists that were moved between reading and button. What is written
 * points to where they stand now, or nothing is written.
 */
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { MAP_BLOCK } from '../../shared/block/own-words';
import type { Envelope, Overview } from '../../shared/contract';
import { composeMapBlock } from '../../shared/tasks/map/compose-map-block';
import { guessRole } from '../../shared/tasks/map/guess-role';
import { mapFromGeojson } from '../../shared/tasks/map/map-from-geojson';
import { measureMap } from '../../shared/tasks/map/measure-map';
import { openWorkbook, type StartCell, type Workbook } from '../../src/headless';
import { launchBrowser } from '../browser/launch';
import { planned } from '../browser/planned';
import { SAMPLE_MAP } from '../tasks/map/sample-map';
import { scriptText } from '../tasks/script-text';
import { withoutMemory } from '../without-memory';
import { type Opened, openSidebar } from './open-sidebar';

let browser: Browser | undefined;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser?.close());

const TAB = 'Ground & pigs';
const FARM: StartCell[][] = [
  [
    'Field',
    'Acres',
    'Width (ft)',
    'Length (ft)',
    '',
    'Bunch',
    'How many',
    'Avg weight (lb)',
    'Weighed on',
    'ADG (lb)',
  ],
  ['North', 0.5, 110, 200, '', 'Reds', 10, 60, { d: '2026-03-28' }, 1.5],
  ['South', 0.4, 100, 180, '', 'Blacks', 8, 90, { d: '2026-03-28' }, 1.6],
  ['Oak', 0.6, 120, 220],
  ['Hill', 0.5, 115, 190],
  ['Creek', 0.7, 130, 230],
  // Room enough: where a plan falls short, most of the time goes into looking for a better one.
  ...['Mill', 'Barn', 'Lane', 'Dale', 'Knoll', 'Brook'].map((name, i): StartCell[] => [
    name,
    0.5,
    110 + i,
    200,
  ]),
];

/** What a person may do to the tab of the lists while the page stands open. */
const MOVES: readonly (readonly [string, (book: Workbook) => void])[] = [
  ['a row inserted above them', (book) => book.insertRows(TAB, 1, 1)],
  ['a column inserted inside the group list', (book) => sheet(book).insertColumnsBefore(8, 1)],
  ['a column inserted inside the paddock list', (book) => sheet(book).insertColumnsBefore(3, 1)],
  ['the paddock list cut and pasted further down', (book) => cut(book, 'A1:D12', [25, 12])],
  ['the tab renamed', (book) => void sheet(book).setName('Land 2026')],
];

type TaskName = 'rotation' | 'materials' | 'budget';
const TASKS: Readonly<Record<TaskName, { title: string; button: string; block: string; plan?: true }>> = {
  rotation: { title: 'Plan the moves', button: 'Write the table', block: 'SOUNDER_ROTATION', plan: true },
  materials: {
    title: 'List the fence materials',
    button: 'Write the materials list',
    block: 'SOUNDER_MATERIALS',
  },
  budget: { title: 'Budget feed, water and ground', button: 'Write the budget', block: 'SOUNDER_BUDGET' },
};

describe.each(Object.keys(TASKS) as TaskName[])(
  '%s, the lists moved before the button',
  { timeout: 120_000 },
  (name) => {
    let still: readonly unknown[][];
    beforeAll(async () => {
      if (browser) still = await written(name, () => undefined);
      expect(JSON.stringify(still ?? [])).not.toMatch(/#[A-Z/0]+[!?A]/);
    });

    test.for(MOVES)('%s: written as if nothing had moved', async ([, move], { skip }) => {
      if (!browser) skip();
      expect(await written(name, move)).toEqual(still);
    });

    test('another figure meanwhile: told by its cell where it stands now, and nothing is written', async ({
      skip,
    }) => {
      if (!browser) skip();
      const book = await workbook();
      const { page } = await ready(name, book);
      book.insertRows(TAB, 1, 1);
      book.type(TAB, name === 'materials' ? 'C5' : 'B5', '77');
      await page.getByRole('button', { name: TASKS[name].button }).first().click();
      const cell = name === 'materials' ? 'C5' : 'B5';
      await page
        .getByRole('alert')
        .filter({ hasText: `Your lists have changed: '${TAB}'!${cell}` })
        .waitFor({ timeout: 8000 });
      expect(blockOf(book, name)).toBeUndefined();
    });
  },
);

test.for(MOVES)(
  'a rotation that stands, %s before the button: built anew as if nothing had moved',
  { timeout: 120_000 },
  async ([, move], { skip }) => {
    if (!browser) skip();
    const book = await workbook();
    await press(await ready('rotation', book), 'rotation');
    const { tab } = blockOf(book, 'rotation')!;
    const isPlace = (row: readonly unknown[]): boolean => /^(Paddock|Group) list$/.test(String(row[0]));
    const table = () => withoutMemory(book.values(tab).filter((row) => !isPlace(row)));
    const before = table();
    const opened = await openTask('rotation', book);
    const button = opened.page.getByRole('button', { name: 'Write the table anew' });
    await button.waitFor({ timeout: 60_000 });
    move(book);
    await button.click();
    await opened.page.getByText('Written on “').first().waitFor();
    expect(table()).toEqual(before);
    expect(JSON.stringify(book.values(tab))).not.toMatch(/#[A-Z/0]+[!?A]/);
    expect(opened.errors).toEqual([]);
  },
);

describe.each(['materials', 'budget'] as const)('%s, a map drawn later', { timeout: 120_000 }, (name) => {
  test('the table written anew is still made from the list that it was made from', async ({ skip }) => {
    if (!browser) skip();
    // Names and areas only: the map's list, which says more, is found before it.
    const plain = FARM.map((row) => [...row.slice(0, 2), '', ...row.slice(5)]);
    const book = await workbook(plain);
    const first = await ready(name, book);
    await press(first, name);
    const { tab } = blockOf(book, name)!;
    const before = withoutMemory(book.values(tab));
    drawMap(book);
    const again = await ready(name, book);
    await press(again, name);
    expect(withoutMemory(book.values(tab))).toEqual(before);
    expect(book.values(tab).flat()).not.toContain('North field');
  });
});

/** Writes the sample map through the script: its paddocks are a list too. */
function drawMap(book: Workbook): void {
  const shapes = mapFromGeojson(SAMPLE_MAP).shapes.map((shape) => ({ ...shape, role: guessRole(shape) }));
  const map = measureMap(shapes, 8, 3);
  const block = composeMapBlock({
    map,
    settings: { postSpacing: 25 },
    units: 'US',
    origin: { row: 1, column: 1 },
  });
  const reply = book.ask('writeBlock', {
    freezeRows: 0,
    ...block,
    name: MAP_BLOCK,
    place: { at: 'new-tab', tab: 'Map' },
  });
  expect(reply.ok).toBe(true);
}

async function press({ page }: Opened, name: TaskName): Promise<void> {
  await page.getByRole('button', { name: TASKS[name].button }).first().click();
  await page
    .getByText(/(The table stands|Written) on “/)
    .first()
    .waitFor();
}

/** The figures of a block that is written after `move`, in its numbers and words. */
async function written(name: TaskName, move: (book: Workbook) => void): Promise<readonly unknown[][]> {
  const book = await workbook();
  const opened = await ready(name, book);
  const { errors } = opened;
  move(book);
  await press(opened, name);
  expect(errors).toEqual([]);
  const { tab } = blockOf(book, name)!;
  // Where the list stands is said in words; everything else is the same.
  const isPlace = (row: readonly unknown[]): boolean => /^(Paddock|Group) list$/.test(String(row[0]));
  return withoutMemory(book.values(tab).filter((row) => !isPlace(row)));
}

async function ready(name: TaskName, book: Workbook): Promise<Opened> {
  const opened = await openTask(name, book);
  const { page } = opened;
  if (name === 'budget') await page.getByRole('heading', { name: 'What this rests on' }).waitFor();
  const { button } = TASKS[name];
  await page.getByRole('button', { name: button }).first().waitFor({ timeout: 60_000 });
  return opened;
}

async function openTask(name: TaskName, book: Workbook): Promise<Opened> {
  const opened = await openSidebar(browser as Browser, {
    answer: (call, text) => ({ reply: JSON.stringify(book.ask(call, JSON.parse(text))) }),
  });
  const { page } = opened;
  const task = TASKS[name];
  await page.getByRole('button', { name: task.title }).click();
  if (task.plan) await planned(page);
  return opened;
}

async function workbook(farm = FARM): Promise<Workbook> {
  return openWorkbook({ tabs: { [TAB]: farm }, codeJs: await scriptText(), today: '2026-04-01' });
}

function blockOf(book: Workbook, name: TaskName) {
  const reply = book.ask('overview') as Extract<Envelope, { ok: true }>;
  return (reply.data as Overview).blocks.find((block) => block.name === TASKS[name].block);
}

function sheet(book: Workbook) {
  return book.spreadsheet.getSheetByName(TAB)!;
}

/** Cut, and pasted while no formula points there. `to`: row and column. */
function cut(book: Workbook, a1: string, [row, column]: readonly [number, number]): void {
  const from = book.range(TAB, a1);
  const values = from.getValues();
  from.clearContent();
  sheet(book).getRange(row, column, values.length, values[0]!.length).setValues(values);
}
