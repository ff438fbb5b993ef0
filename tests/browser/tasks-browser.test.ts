/**
 * Every task of the sidebar in the preview, on the built files: both samples and a list with odd headings. Each writes
 * its block through the script into the sheet, and no cell of it may show an error. Pictures are kept for the README.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import ExcelJS from 'exceljs';
import type { Browser, FrameLocator } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { launchBrowser } from './launch';
import { PreviewPage } from './page';
import { planned } from './planned';

let browser: Browser | undefined;
const folder = mkdtempSync(join(tmpdir(), 'sounder-own-list-'));
beforeAll(async () => {
  browser = await launchBrowser();
  await ownList().xlsx.writeFile(join(folder, 'own-list.xlsx'));
});
afterAll(async () => {
  await browser?.close();
  rmSync(folder, { recursive: true, force: true });
});

/** A farm list as people keep them: title, notes, odd headings and order, capitals, a total. All invented. */
function ownList(): ExcelJS.Workbook {
  const book = new ExcelJS.Workbook();
  const sheet = book.addWorksheet('2026 pig ground');
  sheet.addRows([
    ['Hollin Bank, pigs 2026'],
    [],
    ['ask Jo about the gate'],
    ['ACRES', 'FIELD', 'rest needed (d)', 'Length in ft', 'width (FEET)'],
    [0.42, 'top of hill', null, 180, 102],
    [0.38, "Jo's strip", 45, 165, 100],
    [0.44, 'BY THE OAK', null, 190, 101],
    [0.4, '=wet end', 55, 175, 99],
    [0.41, 'new ley', null, 178, 100],
    [0.39, 'back lane', null, 170, 100],
    [2.44, 'TOTAL'],
    [],
    ['BUNCH', 'how many', 'lbs each', 'date weighed', 'out from', 'ships on'],
    ['wet end boys', 9, 71, day('2026-04-30'), day('2026-05-04'), day('2026-08-14')],
  ]);
  return book;
}

function day(iso: string): Date {
  return new Date(`${iso}T00:00:00Z`);
}

/** Two fields that share a side, and a spring; invented, in open sea. */
const MAP = JSON.stringify({
  type: 'FeatureCollection',
  features: [
    field('East piece', 0),
    field('West piece', -0.001),
    {
      type: 'Feature',
      properties: { name: 'Spring' },
      geometry: { type: 'Point', coordinates: [-30.0003, 40.0012] },
    },
  ],
});

function field(name: string, shift: number) {
  const [west, east, south, north] = [-30 + shift, -29.999 + shift, 40, 40.0009];
  const ring = [
    [west, south],
    [east, south],
    [east, north],
    [west, north],
    [west, south],
  ];
  return { type: 'Feature', properties: { name }, geometry: { type: 'Polygon', coordinates: [ring] } };
}

interface Task {
  readonly title: string;
  readonly picture: string;
  /** Fills in what the task cannot know, and writes. */
  readonly write: (sidebar: FrameLocator) => Promise<void>;
}

const press = (sidebar: FrameLocator, name: string | RegExp) =>
  sidebar.getByRole('button', { name }).first().click();

const TASKS: readonly Task[] = [
  {
    title: 'Plan the moves',
    picture: 'rotation',
    write: async (sidebar) => {
      await planned(sidebar);
      await press(sidebar, 'Write the table');
    },
  },
  {
    title: 'See today at a glance',
    picture: 'today',
    write: (sidebar) => press(sidebar, 'Write today’s page'),
  },
  {
    title: 'List the fence materials',
    picture: 'materials',
    write: (sidebar) => press(sidebar, 'Write the materials list'),
  },
  {
    title: 'Train the pigs',
    picture: 'training',
    write: async (sidebar) => {
      await sidebar.getByLabel(/^Pigs/).fill('22');
      await press(sidebar, 'Write the pen list');
    },
  },
  {
    title: 'Check the volts',
    picture: 'volts',
    write: async (sidebar) => {
      await sidebar.getByLabel(/^Length/).fill('1450');
      await press(sidebar, 'Write the volts');
    },
  },
  {
    title: 'Budget feed, water and ground',
    picture: 'budget',
    write: (sidebar) => press(sidebar, 'Write the budget'),
  },
  {
    title: 'Draw the paddocks',
    picture: 'map',
    write: async (sidebar) => {
      await sidebar.getByLabel('Pasted GeoJSON or KML').check();
      await sidebar.getByRole('textbox').first().fill(MAP);
      await press(sidebar, 'Read the text');
      await press(sidebar, 'Write the map table');
    },
  },
  { title: 'Give a copy away', picture: 'share', write: (sidebar) => press(sidebar, 'Write the mark') },
];

describe.each(['feet-marrow-creek', 'metric-larch-vale', 'own-list'])('%s', (sample) => {
  test('every task writes its block, and no cell shows an error', async ({ skip }) => {
    if (!browser) skip();
    const preview = await PreviewPage.open(browser as Browser, {
      query: { sample, today: '2026-04-20' },
      width: 1360,
      height: 860,
      ...(sample === 'own-list' ? { samples: folder } : {}),
    });
    try {
      await preview.chooseMenu('Sounder Sheet', 'Open the sidebar');
      for (const task of TASKS) await runTask(preview, task, sample);
      expect(preview.problems).toEqual([]);
      expect(preview.outside).toEqual([]);
    } finally {
      await preview.close();
    }
  }, 600_000);
});

async function runTask(preview: PreviewPage, task: Task, sample: string): Promise<void> {
  const before = await preview.tabs();
  const { sidebar } = preview;
  await press(sidebar, task.title);
  await task.write(sidebar);
  await sidebar.getByText(/^Done/).first().waitFor({ timeout: 60_000 });
  const added = (await preview.tabs()).filter((tab) => !before.includes(tab));
  expect(added, task.title).toHaveLength(1);
  const errors = await errorCells(preview, added[0] as string);
  expect(errors, task.title).toEqual([]);
  await preview.screenshot(`task-${task.picture}-${sample}`);
  await press(sidebar, 'All tasks');
}

/** Cells of a tab that show an error, as "A1 #N/A". */
function errorCells(preview: PreviewPage, tab: string): Promise<string[]> {
  return preview.page.evaluate((name) => {
    const { book } = window.sounderPreview.state;
    const sheetId = book.idOf(name) as string;
    const { rows, columns } = book.usedSize(sheetId);
    const errors: string[] = [];
    for (let row = 0; row < rows; row++) {
      for (let col = 0; col < columns; col++) {
        const cell = book.cell(sheetId, row, col);
        const said = typeof cell.value === 'string' && /^[A-Z_]+: .* must /.test(cell.value);
        if (cell.type === 'error' || said) errors.push(`${row + 1},${col + 1} ${cell.value}`);
      }
    }
    return errors;
  }, tab);
}
