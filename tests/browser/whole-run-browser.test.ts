/**
 * The whole run as a grower makes it, in a real browser on the built files: type a formula, plan the moves from the
 * sample's own lists, write the table, type a late move, see the season shift, build anew, find what was typed.
 */
import { readFileSync } from 'node:fs';
import ICAL from 'ical.js';
import type { Browser, FrameLocator } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { launchBrowser } from './launch';
import { PreviewPage } from './page';
import { planned } from './planned';

let browser: Browser | undefined;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser?.close());

const SERIAL_OF_1970 = 25_569;
const DAY_MILLISECONDS = 86_400_000;
const TODAY = '2026-04-20';
const TODAY_SERIAL = Date.parse(TODAY) / DAY_MILLISECONDS + SERIAL_OF_1970;

interface Run {
  readonly sample: string;
  readonly listTab: string;
  readonly formula: string;
  readonly answer: number;
}

/** Answers by hand: 2 × (130 ft + 190 ft) = 640 ft; 11 pigs on 0.21 ha are 52.38 a hectare. */
const RUNS: readonly Run[] = [
  { sample: 'feet-marrow-creek', listTab: 'Paddocks', formula: '=FENCE_LENGTH(B5, C5)', answer: 640 },
  { sample: 'metric-larch-vale', listTab: 'Farm', formula: '=STOCKING_DENSITY(G5, A5)', answer: 11 / 0.21 },
];

describe.each(RUNS)('$sample', ({ sample, listTab, formula, answer }) => {
  test('formula, table, late move, rebuild', async ({ skip }) => {
    if (!browser) skip();
    const preview = await PreviewPage.open(browser as Browser, {
      query: { sample, today: TODAY },
      width: 1400,
    });
    try {
      await preview.typeInto(listTab, 'M5', formula);
      expect(await preview.value(listTab, 'M5')).toBeCloseTo(answer, 9);

      await preview.chooseMenu('Sounder Sheet', 'Open the sidebar');
      const { sidebar } = preview;
      let workers = 0;
      preview.page.on('worker', () => {
        workers += 1;
      });
      await sidebar.getByRole('button', { name: 'Plan the moves' }).click();
      await buildTable(sidebar, 'Write the table');
      // The built page's own script text runs as the planner.
      expect(workers).toBeGreaterThan(0);
      await preview.screenshot(`whole-run-${sample}-table`);
      const before = await rows(preview);
      expect(before.length).toBeGreaterThan(10);

      const late = lateMove(before);
      await preview.typeInto('Rotation', `D${late.row}`, late.typed);
      await preview.typeInto('Rotation', `R${late.row + 1}`, 'wet week');
      const shifted = await rows(preview);
      expect(shifted.map((row) => row.planned - (before[row.at]?.planned ?? 0))).toEqual(
        before.map((row) => (row.group === late.group && row.at > late.at ? late.days : 0)),
      );
      await preview.screenshot(`whole-run-${sample}-late`);

      await sidebar.getByRole('button', { name: 'Read the spreadsheet again' }).click();
      await buildTable(sidebar, 'Write the table anew');
      const rebuilt = await rows(preview);
      const kept = rebuilt.find((row) => row.moved !== undefined);
      expect(kept).toMatchObject({ group: late.group, moved: before[late.at]!.planned + late.days });
      expect(await cellsWith(preview, 'wet week')).toBe(1);
      await preview.screenshot(`whole-run-${sample}-rebuilt`);

      const moves = rebuilt.filter((row) => row.planned >= TODAY_SERIAL);
      expect(await calendarDays(preview)).toEqual(
        expect.arrayContaining(moves.slice(5, 8).map((row) => row.planned)),
      );
      await sidebar.getByRole('button', { name: 'Write the season as a picture in cells' }).click();
      await sidebar.getByText('Written on “Season”').first().waitFor({ timeout: 60_000 });
      await preview.screenshot(`whole-run-${sample}-picture`);
      expect(preview.problems).toEqual([]);
      expect(preview.outside).toEqual([]);
    } finally {
      await preview.close();
    }
  }, 300_000);
});

async function buildTable(sidebar: FrameLocator, write: string): Promise<void> {
  await planned(sidebar);
  const button = sidebar.getByRole('button', { name: write });
  await button.waitFor({ timeout: 60_000 });
  await button.click();
  await sidebar.getByText('Written on “Rotation”').first().waitFor({ timeout: 30_000 });
  // The page reads the file again after writing; what is typed meanwhile may come too early.
  await sidebar.getByText('Reading the spreadsheet…').waitFor({ state: 'hidden' });
}

/** Days of the events in the downloaded calendar file, read by another library, as serial day numbers. */
async function calendarDays(preview: PreviewPage): Promise<number[]> {
  const [download] = await Promise.all([
    preview.page.waitForEvent('download'),
    preview.sidebar.getByRole('button', { name: 'Download the calendar file' }).click(),
  ]);
  const text = readFileSync((await download.path()) as string, 'utf8');
  const events = new ICAL.Component(ICAL.parse(text)).getAllSubcomponents('vevent');
  return events.map((event) => {
    const start = new ICAL.Event(event).startDate;
    return Date.UTC(start.year, start.month - 1, start.day) / DAY_MILLISECONDS + SERIAL_OF_1970;
  });
}

interface Row {
  readonly at: number;
  readonly row: number;
  readonly group: string;
  readonly planned: number;
  readonly moved: number | undefined;
}

/** Rows of moves: group in A, planned in C, moved in D, as serial day numbers. */
async function rows(preview: PreviewPage): Promise<Row[]> {
  const cells = await grid(preview);
  const moves: Row[] = [];
  // Warnings may stand above the heading; a blank line stands under it.
  const first = cells.findIndex((row) => row[0] === 'Group') + 3;
  for (let row = first; typeof cells[row - 1]?.[2] === 'number'; row++) {
    const [group, , planned, moved] = cells[row - 1] as unknown[];
    moves.push({
      at: moves.length,
      row,
      group: String(group),
      planned: planned as number,
      moved: typeof moved === 'number' ? moved : undefined,
    });
  }
  return moves;
}

const MOST_ROWS = 120;
const MOST_COLUMNS = 32;

function grid(preview: PreviewPage): Promise<unknown[][]> {
  return preview.page.evaluate(
    ([rowCount, columnCount]) => {
      const { book } = window.sounderPreview.state;
      const sheetId = book.idOf('Rotation') as string;
      return Array.from({ length: rowCount as number }, (_, row) =>
        Array.from({ length: columnCount as number }, (__, col) => book.cell(sheetId, row, col).value),
      );
    },
    [MOST_ROWS, MOST_COLUMNS],
  );
}

async function cellsWith(preview: PreviewPage, text: string): Promise<number> {
  return (await grid(preview)).flat().filter((value) => value === text).length;
}

/** The third move of the first group, two days late. */
function lateMove(moves: readonly Row[]): {
  at: number;
  row: number;
  group: string;
  typed: string;
  days: number;
} {
  const group = moves[0]!.group;
  const third = moves.filter((move) => move.group === group)[2]!;
  const days = 2;
  const typed = new Date((third.planned + days - SERIAL_OF_1970) * DAY_MILLISECONDS)
    .toISOString()
    .slice(0, 10);
  return { at: third.at, row: third.row, group, typed, days };
}
