/** "Plan the moves" in a real browser at the sidebar's width. */
import { readFileSync } from 'node:fs';
import ICAL from 'ical.js';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { WireCell, WriteBlock } from '../../shared/contract';
import { launchBrowser } from '../browser/launch';
import { planned } from '../browser/planned';
import { type FakeSheet, tab } from './fake-sheet';
import { CROWDED_PIG_ROWS, farmSheet, PADDOCK_ROWS, PIG_ROWS } from './farm';
import { checkAndShoot, type Opened, openSidebar } from './open-sidebar';

let browser: Browser | undefined;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser?.close());

async function openRotation(sheet: FakeSheet): Promise<Opened> {
  const opened = await openSidebar(browser as Browser, sheet);
  await opened.page.getByRole('button', { name: 'Plan the moves' }).click();
  return opened;
}

describe('the rotation in the sidebar', { timeout: 120_000 }, () => {
  test('lists under odd headings are found, a plan is made and shown', async ({ skip }) => {
    if (!browser) skip();
    const sheet = farmSheet();
    const opened = await openRotation(sheet);
    const { page } = opened;
    await page.getByText('9 paddocks read, 6.35 ac in all.').waitFor();
    await page.getByText('1 group read, 9 pigs in all.').waitFor();
    await page.getByText('Left out as totals').waitFor();
    await checkAndShoot(opened, 'rotation-lists');
    await planned(page);
    await page.getByRole('heading', { name: 'Next moves' }).waitFor();
    await page.getByText('Every paddock gets the rest it is due').first().waitFor();
    await checkAndShoot(opened, 'rotation-plan');
    await page.getByLabel('Name of the new tab').fill('Land');
    await page.getByText('There is already a tab of this name').waitFor();
    await page.getByLabel('Name of the new tab').fill('Moves 2026');
    await page.getByRole('button', { name: 'Write the table' }).click();
    await page.getByText('Written on “Moves 2026”').first().waitFor();
    expect(sheet.written.map(({ name, place }) => [name, place])).toEqual([
      ['SOUNDER_ROTATION', { at: 'new-tab', tab: 'Moves 2026' }],
    ]);
    await page.getByRole('button', { name: 'Write the season as a picture in cells' }).click();
    await page.getByText('Written on “Season”').waitFor();
    expect(sheet.written[1]?.name).toBe('SOUNDER_SEASON');
    await checkAndShoot(opened, 'rotation-written');
    await takeAlong(opened);
    expect(opened.errors).toEqual([]);
  });

  test('too little land is said, with what would mend it, in the page and above the table', async ({
    skip,
  }) => {
    if (!browser) skip();
    const sheet = farmSheet(PADDOCK_ROWS, CROWDED_PIG_ROWS);
    const opened = await openRotation(sheet);
    const { page } = opened;
    await page.getByText('2 groups read, 15 pigs in all.').waitFor();
    // The start for the longest stay lets the rest be had: by hand, 8 open paddocks for 2 groups and 40 days of rest
    // take stays of 40 × 2 ÷ (8 − 2) = 13.3 days.
    await planned(page);
    await page.getByText('Every paddock gets the rest it is due').first().waitFor();
    expect(await page.getByLabel('Longest stay (days)').inputValue()).toBe('14');
    await page.getByLabel('Longest stay (days)').fill('7');
    await planned(page);
    await page.getByText('Rest falls short on').first().waitFor();
    await checkAndShoot(opened, 'rotation-short');
    // An offer is taken into the form, and the plan comes anew.
    const offer = page.getByRole('button', { name: /^Use \d+ days$/ });
    const offered = /\d+/.exec((await offer.textContent()) ?? '')?.[0];
    await offer.click();
    await page.getByText('Every paddock gets the rest it is due').first().waitFor();
    await planned(page);
    expect(await page.getByLabel('Longest stay (days)').inputValue()).toBe(offered);
    expect(await offer.count()).toBe(0);
    await page.getByLabel('Longest stay (days)').fill('7');
    await page.getByText('Rest falls short on').first().waitFor();
    await planned(page);
    await page.getByRole('button', { name: 'Write the table' }).click();
    await page.getByText('Written on').first().waitFor();
    const told = sheet.written[0]?.cells
      .flat()
      .some((cell) => cell.k === 't' && /^About this plan.*: Rest falls short/.test(cell.v));
    expect(told).toBe(true);
  });

  test('a small paddock is spared where the grower will move for it, and the sheet keeps that', async ({
    skip,
  }) => {
    if (!browser) skip();
    const small = PADDOCK_ROWS.map(([name, area, ...rest]) => [
      name!,
      name === 'North 3' ? 0.08 : area!,
      ...rest,
    ]);
    const sheet = farmSheet(small.filter(([name]) => name !== 'Total'));
    const opened = await openRotation(sheet);
    const { page } = opened;
    const worst = async (): Promise<number> => {
      await planned(page);
      const words = await page.getByText('The stays to come bear').textContent();
      return Number(/and ([\d,]+) at most/.exec(words ?? '')?.[1]?.replace(/,/g, ''));
    };
    await page.getByLabel('Fewest moves').check();
    const fewest = await worst();
    await page.getByText(/more than twice the middle: North 3 from/).waitFor();
    // 9 pigs of 64 lb and more for seven days on 0.08 ac.
    expect(fewest).toBeGreaterThan((9 * 64 * 7) / 0.08);
    await page.getByRole('heading', { name: 'How hard the ground is used' }).scrollIntoViewIfNeeded();
    await checkAndShoot(opened, 'rotation-ground');
    await page.getByLabel(/^Most: /).check();
    expect(await worst()).toBeLessThan(fewest / 2);
    await page.getByRole('button', { name: 'Write the table' }).click();
    await page.getByText('Written on “Rotation”').first().waitFor();
    const table = sheet.tabs.find(({ name }) => name === 'Rotation')!;
    expect(table.values.find(([label]) => label === "Moves for the ground's sake")?.[1]).toBe('most');
    const again = await openRotation(sheet);
    await planned(again.page);
    expect(await again.page.getByLabel(/^Most: /).isChecked()).toBe(true);
    await again.page.getByText('The rest of the plan stays as it is.').waitFor();
    expect([...opened.errors, ...again.errors]).toEqual([]);
  });

  test('every problem of a bad list is told with its cell, and nothing can be planned', async ({ skip }) => {
    if (!browser) skip();
    const bad = PADDOCK_ROWS.map((row, i) =>
      i === 4 ? ['North 2', '', '', ''] : i === 5 ? ['North 2', -2, '', ''] : row,
    );
    const pigs = PIG_ROWS.map((row, i) => (i === 1 ? ['Early', -1, ...row.slice(2)] : row));
    const opened = await openRotation(farmSheet(bad, pigs));
    const { page } = opened;
    await page.getByText('Land!A5: “North 2” has nothing beside it').waitFor();
    await page.getByText('Land!B6: ').waitFor();
    await page.getByText('Pigs!B2: ').waitFor();
    await checkAndShoot(opened, 'rotation-bad-lists');
    await page.getByText('First put right what is wrong in the lists.').waitFor();
    expect(await page.getByRole('heading', { name: 'Next moves' }).count()).toBe(0);
  });

  test('a late move is typed, the rest is planned anew, and a change meanwhile is noticed', async ({
    skip,
  }) => {
    if (!browser) skip();
    const sheet = farmSheet();
    const opened = await openRotation(sheet);
    const { page } = opened;
    await page.getByText('9 paddocks read').waitFor();
    await page.getByLabel('Days of rest').fill('35');
    await planned(page);
    await page.getByRole('button', { name: 'Write the table' }).click();
    await page.getByText('Written on “Rotation”').first().waitFor();
    await page.getByText('The rest of the plan stays as it is.').waitFor();

    const first = typeMovedIn(sheet, '2026-05-04');
    await page.getByRole('button', { name: 'Write the table anew' }).click();
    await page
      .getByRole('alert')
      .filter({ hasText: 'The rotation table on “Rotation” was changed in the sheet' })
      .waitFor();
    expect(sheet.written.length).toBe(1);
    await page.getByRole('button', { name: 'Read the spreadsheet again' }).click();
    await page.getByText('1 of them with a day under').waitFor();
    await planned(page);
    await page.getByRole('heading', { name: 'What changes' }).waitFor();
    await checkAndShoot(opened, 'rotation-rebuild');
    await page.getByRole('button', { name: 'Write the table anew' }).click();
    await page.getByText('Written on “Rotation”').first().waitFor();
    const [, again] = sheet.written;
    expect(again?.place).toMatchObject({ at: 'own', area: { tab: 'Rotation', row: 1, column: 1 } });
    const kept = again?.cells.find((row) => row.some((cell) => cell.k === 'd' && cell.v === '2026-05-04'));
    expect(kept?.slice(0, 2)).toMatchObject(first.map((v) => ({ k: 't', v })));

    // Rules typed into the table's own cells count once it is read again, over what was typed here before.
    const table = sheet.tabs.find(({ name }) => name === 'Rotation')!;
    const rest = table.values.find((row) => String(row[0]).startsWith('Rest in days')) as unknown[];
    expect(rest[1]).toBe(35);
    rest[1] = 40;
    await page.getByRole('button', { name: 'Read the spreadsheet again' }).click();
    await expect.poll(() => page.getByLabel('Days of rest').inputValue()).toBe('40');
    rest[1] = 35;

    // A page opened later finds the rules and lists in the table itself.
    const later = await openRotation(sheet);
    await later.page.getByText('1 of them with a day under').waitFor();
    expect(await later.page.getByLabel('Days of rest').inputValue()).toBe('35');
    const [heads, ...rows] = PIG_ROWS as [readonly WireCell[], ...(readonly WireCell[])[]];
    const renamed = heads.map((text) => (text === 'Rotation from' ? 'Seen on farm' : text));
    sheet.tabs = sheet.tabs.map((one) => (one.name === 'Pigs' ? tab('Pigs', [renamed, ...rows]) : one));
    await later.page.getByRole('button', { name: 'Read the spreadsheet again' }).click();
    await later.page.getByText('The heading “Rotation from” stood for “in the rotation from”').waitFor();
    expect([...opened.errors, ...later.errors]).toEqual([]);
  });

  test('a new season gets a table of its own, and last season’s stays', async ({ skip }) => {
    if (!browser) skip();
    const sheet = farmSheet();
    const opened = await openRotation(sheet);
    const { page } = opened;
    await page.getByText('9 paddocks read').waitFor();
    await planned(page);
    await page.getByRole('button', { name: 'Write the table' }).click();
    await page.getByText('Written on “Rotation”').first().waitFor();
    // The page reads the file again after writing; what changes before that is no change to it.
    await page.getByText('Reading the spreadsheet…').waitFor({ state: 'hidden' });
    typeMovedIn(sheet, '2026-05-04');
    // What leaves the sheet must not be older than the sheet.
    for (const name of [
      'Download the calendar file',
      'Open the list to print',
      'Write the season as a picture in cells',
    ]) {
      await page.getByRole('button', { name }).click();
      await page
        .getByRole('alert')
        .filter({ hasText: 'The rotation table on “Rotation” was changed in the sheet' })
        .first()
        .waitFor();
      await page.getByRole('button', { name, disabled: false }).waitFor();
    }
    expect(sheet.written).toHaveLength(1);
    const [heads, first] = PIG_ROWS as [readonly WireCell[], readonly WireCell[]];
    const next = [...first.slice(0, 3), { d: '2027-04-28' }, 1.4, { d: '2027-05-02' }, { d: '2027-08-01' }];
    sheet.tabs = sheet.tabs.map((one) => (one.name === 'Pigs' ? tab('Pigs', [heads, next]) : one));
    await page.getByRole('button', { name: 'Read the spreadsheet again' }).click();
    await page.getByText('1 of them with a day under').waitFor();
    await page.getByLabel('Season starts').fill('2027-05-02');
    await page.getByLabel('Season ends').fill('2027-08-01');
    await page.getByText('This is a new season.').waitFor();
    await planned(page);
    await page.getByRole('heading', { name: 'Next moves' }).waitFor();
    await checkAndShoot(opened, 'rotation-new-season');
    await page.getByText('still show head, weight and feed as your lists are now').waitFor();
    // A list changed meanwhile is refused before last season's table is touched.
    const fuller = [next[0]!, 11, ...next.slice(2)];
    sheet.tabs = sheet.tabs.map((one) => (one.name === 'Pigs' ? tab('Pigs', [heads, fuller]) : one));
    await page.getByRole('button', { name: 'Write the table' }).click();
    await page.getByRole('alert').filter({ hasText: 'Your lists have changed: Pigs!B2.' }).waitFor();
    expect(sheet.written).toHaveLength(1);
    await page.getByRole('button', { name: 'Read the spreadsheet again' }).click();
    await page.getByText('1 group read, 11 pigs in all.').waitFor();
    await planned(page);
    await page.getByRole('button', { name: 'Write the table' }).click();
    await page.getByText('Written on “Rotation 2”').first().waitFor();
    // Last season's table is written over itself, without the lookups that would follow the lists of the new one.
    const [before, kept, fresh] = sheet.written as [WriteBlock, WriteBlock, WriteBlock];
    const lookups = ({ cells }: WriteBlock): number =>
      cells.flat().filter((cell) => cell.k === 'f' && cell.v.includes('MATCH(')).length;
    expect(lookups(before)).toBeGreaterThan(0);
    expect(kept.place).toMatchObject({ at: 'own', area: { tab: 'Rotation', row: 1, column: 1 } });
    expect(lookups(kept)).toBe(0);
    expect(kept.cells.length).toBe(before.cells.length);
    expect(fresh).toMatchObject({ place: { at: 'new-tab', tab: 'Rotation 2' }, replaces: true });
    expect(opened.errors).toEqual([]);
  });

  test('a row added under a list whose headings were chosen by hand is read', async ({ skip }) => {
    if (!browser) skip();
    const sheet = farmSheet();
    const { page } = await openRotation(sheet);
    await page.getByText('1 group read, 9 pigs in all.').waitFor();
    const groups = page.getByRole('region', { name: 'Group list' });
    await groups.getByText('Which heading stands for what').click();
    const gain = groups.getByLabel('Daily gain');
    const was = await gain.inputValue();
    await gain.selectOption({ index: 0 });
    await gain.selectOption(was);
    sheet.tabs = sheet.tabs.map((one) =>
      one.name === 'Pigs'
        ? tab('Pigs', [...PIG_ROWS, ['Late', 6, 70, { d: '2026-05-10' }, 1.4, '', '']])
        : one,
    );
    await page.getByRole('button', { name: 'Read the spreadsheet again' }).click();
    await page.getByText('2 groups read, 15 pigs in all.').waitFor();
  });

  test('a list changed after the plan was worked out is named, and nothing is written', async ({ skip }) => {
    if (!browser) skip();
    const sheet = farmSheet();
    const { page } = await openRotation(sheet);
    await page.getByText('1 group read, 9 pigs in all.').waitFor();
    await planned(page);
    await page.getByRole('heading', { name: 'Next moves' }).waitFor();
    const [heads, first] = PIG_ROWS as [readonly WireCell[], readonly WireCell[]];
    sheet.tabs = sheet.tabs.map((one) =>
      one.name === 'Pigs' ? tab('Pigs', [heads, ['Early', 14, ...first.slice(2)]]) : one,
    );
    await page.getByRole('button', { name: 'Write the table' }).click();
    await page.getByRole('alert').filter({ hasText: 'Your lists have changed: Pigs!B2.' }).waitFor();
    expect(sheet.written).toHaveLength(0);
    // The page has read the file again, and the plan comes anew.
    await page.getByRole('button', { name: 'Read the spreadsheet again' }).click();
    await page.getByText('1 group read, 14 pigs in all.').waitFor();
    await planned(page);
    await page.getByRole('button', { name: 'Write the table' }).click();
    await page.getByText('Written on “Rotation”').first().waitFor();
  });

  test('a season that ends before it starts and other bad rules are told at their fields', async ({
    skip,
  }) => {
    if (!browser) skip();
    const opened = await openRotation(farmSheet());
    const { page } = opened;
    await planned(page);
    await page.getByLabel('Season ends').fill('2026-04-01');
    await page.getByText('The season must end after it starts.').waitFor();
    await page.getByLabel('Days of rest').fill('soon');
    await page.getByText('Must be a number, got “soon”.').waitFor();
    await page.getByLabel('Longest stay (days)').fill('2');
    await page.getByText('Must be as long as the shortest stay (3) or longer, got 2.').waitFor();
    for (const day of ['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat'])
      await page.getByRole('checkbox', { name: day }).uncheck();
    await page.getByText('Choose at least one day on which pigs can be moved.').waitFor();
    await page.getByLabel('Dates with no moves').fill('4 July');
    await page.getByText('got 4').waitFor();
    await page.getByText('By month').click();
    await page.getByText('From forage growth').click();
    await checkAndShoot(opened, 'rotation-bad-rules');
    await page.getByText('First put right what is wrong in the rules below.').waitFor();
    await page.getByText('What follows is the old plan.').waitFor();
    expect(await page.getByRole('button', { name: 'Write the table' }).isDisabled()).toBe(true);
  });

  test('a file without lists says what a list needs and offers a sample farm', async ({ skip }) => {
    if (!browser) skip();
    const sheet = farmSheet([['just a note']], [[12, 13]]);
    const opened = await openRotation(sheet);
    const { page } = opened;
    await page.getByText('No paddock list was found.').waitFor();
    await checkAndShoot(opened, 'rotation-no-lists');
    await page.getByRole('button', { name: /Marrow Creek/ }).click();
    await expect.poll(() => sheet.asked.some(({ name }) => name === 'startSample')).toBe(true);
  });
});

/** The calendar file is saved and the list opens in a window of its own, with the same first move. */
async function takeAlong({ page }: Opened): Promise<void> {
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Download the calendar file' }).click();
  const file = await download;
  expect(file.suggestedFilename()).toBe('pig-moves.ics');
  const calendar = new ICAL.Component(ICAL.parse(readFileSync(await file.path(), 'utf8')));
  const popup = page.waitForEvent('popup');
  await page.getByRole('button', { name: 'Open the list to print' }).click();
  const list = await popup;
  await list.getByRole('table').waitFor();
  const rows = await list.getByRole('row').allInnerTexts();
  expect(rows.length - 1).toBe(calendar.getAllSubcomponents('vevent').length);
  expect(rows[1]).toContain('2026-05-02');
  await list.screenshot({ path: 'test-output/sidebar/print-list.png' });
  await list.close();
}

/** Types a day under "Moved in" of the first move in the table; gives its group and paddock. */
function typeMovedIn(sheet: FakeSheet, day: string): string[] {
  const content = sheet.tabs.find(({ name }) => name === 'Rotation');
  const head = content?.values.findIndex((row) => row.includes('Moved in')) ?? -1;
  const column = content?.values[head]?.indexOf('Moved in') ?? -1;
  const row = content?.values.slice(head + 1).find((cells) => cells[0] !== '');
  if (!row) throw new Error('The table has no moves');
  row[column] = { d: day };
  return row.slice(0, 2).map(String);
}
