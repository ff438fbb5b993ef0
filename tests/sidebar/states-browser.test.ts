/**
 * What a task shows where something is wrong: each state in a picture 300 px wide, clean for axe, in plain words, with
 * nothing running out of the page. How a failing call is told in words: failures-browser.test.ts.
 */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { WireCell } from '../../shared/contract';
import * as script from '../../src/script/words';
import { launchBrowser } from '../browser/launch';
import type { FakeSheet, Trouble } from './fake-sheet';
import { farmSheet, PADDOCK_ROWS, PIG_ROWS } from './farm';
import { checkAndShoot, openSidebar, shootWindow } from './open-sidebar';

let browser: Browser | undefined;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser?.close());

interface State {
  readonly sheet?: () => FakeSheet;
  /** Of the write that the main button asks for. */
  readonly trouble?: Trouble;
  readonly task: string;
  readonly told: RegExp;
  readonly more?: (page: Page, sheet: FakeSheet) => Promise<void>;
}

const refused = (sentence: string): Trouble => ({ kind: 'refused', sentence });
const thrown = (message: string): Trouble => ({ kind: 'thrown', message });

/** A paddock with another area. */
function withArea(name: string, cell: WireCell): FakeSheet {
  return farmSheet(PADDOCK_ROWS.map((row) => (row[0] === name ? [name, cell, ...row.slice(2)] : row)));
}

function withChart(): FakeSheet {
  const sheet = farmSheet();
  sheet.passedOver = ['Rainfall'];
  return sheet;
}

const NEEDED = script.tableNeeds('A1:H20', 'Training pen');

const STATES: Readonly<Record<string, State>> = {
  'list-problem': {
    sheet: () => withArea('North 2', 'much'),
    task: 'Plan the moves',
    told: /1 thing to put right.*Land!B5: area must be a number/,
    more: async (page, sheet) => {
      await page.getByRole('button', { name: 'Land!B5' }).first().press('Enter');
      await page.getByRole('status').filter({ hasText: 'Land!B5 is selected' }).waitFor();
      expect(sheet.asked.find(({ name }) => name === 'showCell')?.request).toEqual({
        tab: 'Land',
        row: 5,
        column: 2,
      });
    },
  },
  'no-list': { sheet: () => farmSheet([], []), task: 'Plan the moves', told: /No paddock list was found/ },
  'no-groups': {
    sheet: () => farmSheet(PADDOCK_ROWS, PIG_ROWS.slice(0, 1)),
    task: 'Keep the herd log',
    told: /group list/,
  },
  calculating: {
    sheet: () => withArea('North 1', 'Loading...'),
    task: 'Plan the moves',
    told: /Land!B4: area must be a number .*still works it out/,
  },
  'chart-tab': { sheet: withChart, task: 'Budget feed, water and ground', told: /Rainfall/ },
  'no-table': {
    task: 'What happened',
    told: /no rotation table yet/,
    more: async (page) => {
      await page.getByRole('button', { name: 'Plan the moves' }).press('Enter');
      await page
        .getByRole('heading', { name: 'Plan the moves', level: 1 })
        .and(page.locator(':focus'))
        .waitFor();
    },
  },
  'no-table-today': { task: 'See today at a glance', told: /no rotation table yet/ },
  'protected-cell': {
    task: 'Train the pigs',
    trouble: refused(script.cellsProtected(NEEDED, 'B4 and 3 more cells')),
    told: /cells are protected in B4/,
  },
  'refused-block': {
    task: 'Train the pigs',
    trouble: refused(script.somethingStands(NEEDED, 'C7')),
    told: /something stands in C7/,
  },
  'failed-write': {
    task: 'Train the pigs',
    trouble: thrown('We are sorry, a server error occurred.'),
    told: /on Google’s side.*Look at the sheet first/,
  },
  'read-only': {
    task: 'Train the pigs',
    trouble: refused(script.notAllowed('You do not have permission')),
    told: /only view this file/,
  },
  'no-answer': { task: 'Train the pigs', trouble: { kind: 'silent' }, told: /has not answered/ },
  'other-version': {
    task: 'Train the pigs',
    trouble: { kind: 'text', text: '{' },
    told: /different versions.*Look at the sheet first/,
  },
};

/** Longer than the page waits for a write. */
const PATIENCE = 151_000;

test.each(Object.entries(STATES))(
  '%s',
  async (name, { sheet: makeSheet = farmSheet, trouble, task, told, more }) => {
    if (!browser) return;
    const sheet = makeSheet();
    const isSilent = trouble?.kind === 'silent';
    const opened = await openSidebar(browser, sheet, { isFolded: true }, async (page) => {
      if (isSilent) await page.clock.install();
    });
    const { page } = opened;
    await page.getByRole('button', { name: task }).press('Enter');
    await page.getByText('Reading the spreadsheet…').waitFor({ state: 'hidden' });
    if (trouble) {
      sheet.trouble.set('writeBlock', trouble);
      await page.locator('main button.main').press('Enter');
      if (isSilent) {
        await page.getByRole('button', { name: 'Writing…' }).waitFor();
        await page.clock.fastForward(PATIENCE);
      }
      await page.getByRole('alert').filter({ hasText: told }).waitFor();
      // The button can be pressed again, and whoever works by keyboard is still on it.
      await page.locator('main button.main:focus:not([aria-disabled])').waitFor();
    } else await page.getByText(told).first().waitFor();
    await shootWindow(opened, `state-${name}`);
    await checkAndShoot(opened, `state-${name}-whole`);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(300);
    await more?.(page, sheet);
    expect(opened.errors).toEqual([]);
  },
  120_000,
);
