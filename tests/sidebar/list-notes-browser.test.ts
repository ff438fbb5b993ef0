/** What the page says about lists that are read otherwise than they may be meant, at the sidebar's width. */
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { WireCell } from '../../shared/contract';
import { launchBrowser } from '../browser/launch';
import { planned } from '../browser/planned';
import { FakeSheet, tab } from './fake-sheet';
import { checkAndShoot, openSidebar } from './open-sidebar';

let browser: Browser | undefined;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser?.close());

const d = (iso: string): WireCell => ({ d: iso });

function sheet(area: string, rows: WireCell[][], pigs: WireCell[][]): FakeSheet {
  const land = tab('Land', [['Paddock', area, 'Open from', 'Rest'], ...rows]);
  const formulas = land.formulas.map((row, r) =>
    row.map((formula, c) => (land.values[r]?.[0] === 'Summe' && c === 1 ? '=SUM(B2:B5)' : formula)),
  );
  const headings = ['Group', 'Head', 'Weight (kg)', 'Weighed on', 'Daily gain (kg/day)', 'In', 'Out'];
  const made = new FakeSheet([{ ...land, formulas }, tab('Pigs', [headings, ...pigs])]);
  made.locale = 'de_DE';
  return made;
}

const LAND: WireCell[][] = [
  ['North', '0,5', '', ''],
  ['South', '1,25', '', ''],
  ['West', 1, d('2027-05-01'), ''],
  ['East', 1, '', ''],
  ['Summe', 3.75, '', ''],
];

describe('notes about the lists', { timeout: 120_000 }, () => {
  test('a remark in the place of a unit, a total of another name, a wrong year', async ({ skip }) => {
    if (!browser) skip();
    const pigs: WireCell[][] = [
      ['Reds', 10, 30, d('2026-04-20'), 0.6, d('2026-04-20'), d('2026-10-31')],
      ['Old', 10, 30, d('2024-04-20'), 0.6, d('2024-04-20'), d('2024-10-31')],
      ['Typo', 10, 30, d('2027-04-20'), 0.6, d('2026-04-20'), ''],
    ];
    const opened = await openSidebar(browser as Browser, sheet('Area (approx)', LAND, pigs));
    const { page } = opened;
    await page.getByRole('button', { name: 'Plan the moves' }).click();
    await page.getByText('4 paddocks read, 3.75 ha in all.').waitFor();
    await page.getByText('Left out as totals: Land!A6 (“Summe”).').waitFor();
    await page.getByText('"Area (approx)" names no unit that is known here').waitFor();
    await page.getByLabel('Season starts').fill('2026-04-20');
    await page.getByText('Land!C4: “West” opens on 2027-05-01').waitFor();
    await page.getByText('Pigs!G3: “Old” leaves on 2024-10-31').waitFor();
    await page.getByText('Pigs!D4: “Typo” was weighed on 2027-04-20').waitFor();
    await checkAndShoot(opened, 'list-notes');
    await planned(page);
    expect(opened.errors).toEqual([]);
  });

  test('units, weights and numbers that cannot be read stop the plan, each with its cell', async ({
    skip,
  }) => {
    if (!browser) skip();
    const rows: WireCell[][] = [['North', '1.234', '', ''], ...LAND.slice(1)];
    const made = sheet('Area (morgen)', rows, [['Reds', 10, 300, d('2026-04-20'), 0.6, '', '']]);
    const pigs = made.tabs[1]!;
    pigs.values[0]![2] = 'Total weight (kg)';
    const opened = await openSidebar(browser as Browser, made);
    const { page } = opened;
    await page.getByRole('button', { name: 'Plan the moves' }).click();
    await page.getByText('3 things to put right in the sheet').waitFor();
    await page.getByText('Land!B1: the unit "morgen" in "Area (morgen)" is not known for area').waitFor();
    await page.getByText('Land!B2: area must be typed as a number (ha): write 1234 or 1,234').waitFor();
    await page.getByText('"Total weight (kg)" in Pigs!C1 is the weight of all pigs together').waitFor();
    await checkAndShoot(opened, 'list-problems');
    expect(await page.getByRole('heading', { name: 'Next moves' }).count()).toBe(0);
  });
});
