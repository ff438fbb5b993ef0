/** "List the fence materials" in a real browser at the sidebar's width. */
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { launchBrowser } from '../browser/launch';
import { FakeSheet, tab } from './fake-sheet';
import { farmSheet } from './farm';
import { checkAndShoot, type Opened, type OpenOptions, openSidebar, shootWindow } from './open-sidebar';

let browser: Browser | undefined;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser?.close());

async function openMaterials(sheet: FakeSheet, options?: OpenOptions): Promise<Opened> {
  const opened = await openSidebar(browser as Browser, sheet, options);
  await opened.page.getByRole('button', { name: 'List the fence materials' }).click();
  return opened;
}

/** A lane of three under the grower's own headings; the middle one has its fence length only. */
function laneSheet(): FakeSheet {
  return new FakeSheet([
    tab('Ground', [
      ['Field name', 'Breadth (ft)', 'Long side (ft)', 'Fence length (ft)', 'Size (acres)'],
      ['Ash', 200, 300, '', 1.38],
      ['Birch', '', '', 900, 1.1],
      ['Cedar', 150, 300, '', 1.03],
    ]),
  ]);
}

/** Two groups, two paddocks side by side, and what lies in the shed. */
function shedSheet(): FakeSheet {
  return new FakeSheet([
    tab('Ground', [
      ['Paddock', 'Width (ft)', 'Length (ft)', 'Acres'],
      ['Ash', 200, 300, 1.38],
      ['Birch', 150, 300, 1.03],
    ]),
    tab('Pigs', [
      ['Group', 'Head', 'Weight (lb)'],
      ['Reds', 8, 90],
      ['Blacks', 6, 140],
    ]),
    tab('Shed', [
      ['What lies in the shed', '', '', ''],
      ['', '', '', ''],
      ['Item', 'How many', 'Length ft', 'Paid each'],
      ['hog nets', 10, 100, '$145'],
      ['step-in posts', 60, '', 2.6],
      ['fencer 3 J', 1, '', 289],
      ['old bath', 1, '', ''],
    ]),
  ]);
}

describe('materials in the sidebar', { timeout: 90_000 }, () => {
  test('a block of rows and columns, everything at once: 3,240 ft as FENCE_GRID’s example', async ({
    skip,
  }) => {
    if (!browser) skip();
    const sheet = new FakeSheet([tab('Notes', [['']])]);
    const opened = await openMaterials(sheet);
    const { page } = opened;
    await page.getByLabel('All of them').check();
    await page.getByLabel(/^Rows of paddocks/).fill('2');
    await page.getByLabel(/^Paddocks in a row/).fill('4');
    await page.getByLabel(/^Width of a paddock/).fill('120');
    await page.getByLabel(/^Length of a paddock \(/).fill('180');
    await page.getByText('Outer fence 1,680 ft').waitFor();
    await page.getByText('Dividing fence 1,560 ft').waitFor();
    await checkAndShoot(opened, 'materials-grid');
    await page.getByLabel(/^Wire allowance/).fill('-1');
    await page.getByText('Wire allowance must be 0 or more, got -1').waitFor();
    await checkAndShoot(opened, 'materials-settings');
    await page.getByLabel(/^Wire allowance/).fill('0');
    await page.getByRole('button', { name: 'Write the materials list' }).click();
    await page.getByText('Written on “Fence materials”').waitFor();
    expect(sheet.written[0]?.name).toBe('SOUNDER_MATERIALS');
    await page.getByRole('button', { name: 'Write the materials list anew' }).waitFor();
    // Read once, on arrival: the write gave back what stands.
    const asked = sheet.asked.map(({ name }) => name).filter((name) => name !== 'overview');
    expect(asked).toEqual(['readFile', 'writeBlock']);
    await checkAndShoot(opened, 'materials-written');
    expect(opened.errors).toEqual([]);
  });

  test('the grower’s own list, moved with the pigs; written anew it keeps stock and price', async ({
    skip,
  }) => {
    if (!browser) skip();
    const sheet = laneSheet();
    const opened = await openMaterials(sheet);
    const { page } = opened;
    // By hand: 1000 + 900 alone beside each other; Birch has no side to share.
    await page.getByText('1,900 ft', { exact: true }).waitFor();
    await checkAndShoot(opened, 'materials-list');
    await page.getByRole('button', { name: 'Write the materials list' }).click();
    await page.getByText('Written on “Fence materials”').waitFor();
    const written = sheet.tabs.find(({ name }) => name === 'Fence materials');
    const row = written?.values.findIndex((cells) => cells[0] === 'Rolls of wire') ?? -1;
    const values = written?.values[row] as unknown[];
    values[3] = 2;
    values[5] = 79.5;
    await page.getByRole('button', { name: 'Read the spreadsheet again' }).click();
    await page.getByText('It stands on “Fence materials”').waitFor();
    await page.getByRole('button', { name: 'Write the materials list anew' }).click();
    await expect.poll(() => sheet.written.length).toBe(2);
    const again = sheet.written[1]?.cells[row];
    expect(again?.[3]).toMatchObject({ k: 'n', v: 2 });
    expect(again?.[5]).toMatchObject({ k: 'n', v: 79.5 });

    // What was typed over a figure of ours stays until ours is asked for.
    await page.getByText('Written on “Fence materials”').waitFor();
    await page.getByText('Reading the spreadsheet…').waitFor({ state: 'hidden' });
    const standing = sheet.tabs.find(({ name }) => name === 'Fence materials')!;
    (standing.values[row] as unknown[])[1] = 77;
    (standing.formulas[row] as string[])[1] = '';
    await page.getByRole('button', { name: 'Read the spreadsheet again' }).click();
    await page.getByText(/What you typed over cells of the table stays: B\d+ \(77\)/).waitFor();
    await page.getByRole('button', { name: 'Put ours back' }).click();
    await page.getByText(/Ours stands again in place of what you had typed: B\d+ \(77\)/).waitFor();
    expect(sheet.written.pop()?.cells[row]?.[1]).toMatchObject({ k: 'f' });

    // A setting changed in the sheet is never set back by an answer that was given before.
    await page.getByText('Written on “Fence materials”').waitFor();
    // The page reads the file again after writing; what changes before that is no change to it.
    await page.getByText('Reading the spreadsheet…').waitFor({ state: 'hidden' });
    const gap = sheet.tabs
      .find(({ name }) => name === 'Fence materials')
      ?.values.find((cells) => cells[0] === 'Gap between posts, at most') as unknown[];
    expect(gap[1]).toBe(25);
    await page.getByLabel(/^Gap between posts, at most/).fill('20');
    gap[1] = 12;
    await page.getByRole('button', { name: 'Write the materials list anew' }).click();
    await page
      .getByRole('alert')
      .filter({ hasText: 'changed in the sheet after the page had read it' })
      .waitFor();
    expect(sheet.written.length).toBe(2);
    await page.getByRole('button', { name: 'Read the spreadsheet again' }).click();
    await expect.poll(() => page.getByLabel(/^Gap between posts, at most/).inputValue()).toBe('12');
    await page.getByRole('button', { name: 'Write the materials list anew' }).click();
    await expect.poll(() => sheet.written.length).toBe(3);

    // Nor does a list changed meanwhile go into the table unseen.
    await page.getByText('Written on “Fence materials”').waitFor();
    await page.getByText('Reading the spreadsheet…').waitFor({ state: 'hidden' });
    const ground = sheet.tabs.find(({ name }) => name === 'Ground')?.values as unknown[][];
    ground[3] = ['Cedar', 170, 300, '', 1.03];
    await page.getByRole('button', { name: 'Write the materials list anew' }).click();
    await page.getByRole('alert').filter({ hasText: 'Your lists have changed: Ground!B4.' }).waitFor();
    expect(sheet.written.length).toBe(3);
    expect(opened.errors).toEqual([]);
  });

  test('formulas elsewhere that point at rows which move are named, and only then', async ({ skip }) => {
    if (!browser) skip();
    const sheet = laneSheet();
    const opened = await openMaterials(sheet);
    const { page } = opened;
    await page.getByText('1,900 ft', { exact: true }).waitFor();
    await page.getByRole('button', { name: 'Write the materials list' }).click();
    await page.getByText('Written on “Fence materials”').waitFor();
    await page.getByText('Reading the spreadsheet…').waitFor({ state: 'hidden' });
    const rows = sheet.tabs.find(({ name }) => name === 'Fence materials')?.values as unknown[][];
    const rowOf = (label: string): number => rows.findIndex(([first]) => first === label) + 1;
    const sums = tab('Sums', [
      ['Fence', ''],
      ['Rolls', ''],
      ['To buy', ''],
    ]);
    (sums.formulas[1] as string[])[1] = `='Fence materials'!B${rowOf('Rolls of wire')}`;
    (sums.formulas[2] as string[])[1] = `='Fence materials'!G${rowOf('To buy, together')}`;
    sheet.tabs.push(sums);
    const warning = page.getByText('Rows of the table have moved.');
    await page.getByRole('button', { name: 'Write the materials list anew' }).click();
    await expect.poll(() => sheet.written.length).toBe(2);
    await page.getByText('Written on “Fence materials”').waitFor();
    await page.getByText('Reading the spreadsheet…').waitFor({ state: 'hidden' });
    expect(await warning.count()).toBe(0);

    // An item of the grower's in the first free row: as many rows are free again, so the total moves down by one.
    const now = sheet.tabs.find(({ name }) => name === 'Fence materials')?.values as unknown[][];
    const free = now[rowOf('Fence tester')] as unknown[];
    expect(free[0]).toBe('');
    free.splice(0, 3, 'Wire strainer', 2, 'each');
    await page.getByRole('button', { name: 'Read the spreadsheet again' }).click();
    await page.getByText('Reading the spreadsheet…').waitFor({ state: 'hidden' });
    await page.getByText('Rows of the table will move.').waitFor();
    await page.getByRole('button', { name: 'Write the materials list anew' }).click();
    await expect.poll(() => sheet.written.length).toBe(3);
    await warning.waitFor();
    expect(await warning.textContent()).toContain('may now mean another row: Sums!B3. Look at them');
    await checkAndShoot(opened, 'materials-rows-moved');
    expect(opened.errors).toEqual([]);
  });

  test('nets in the shed: the list says what is there, the form what is left to buy and its cost', async ({
    skip,
  }) => {
    if (!browser) skip();
    const sheet = shedSheet();
    const look = await openMaterials(shedSheet(), { isFolded: true });
    await look.page.getByText('3,200 ft', { exact: true }).waitFor();
    await shootWindow(look, 'materials-first-nets');
    await look.page.getByText('What it is made of').click();
    await look.page.getByLabel('Wire on posts').check();
    await look.page.getByText('What it is made of').click();
    await look.page.evaluate(() => scrollTo(0, 0));
    await shootWindow(look, 'materials-first-wire');
    const opened = await openMaterials(sheet);
    const { page } = opened;
    // By hand: 1,000 + 900 less the common 300 = 1,600 ft for each of two groups.
    await page
      .getByText('for each of 2 groups the longest 2 in a row, as your list goes (Ash, Birch), 1,600 ft.')
      .waitFor();
    // Nets of 100 ft: 10 for Ash, 600 ft or 6 for Birch, twice: 32, ten of them there. 22 × 145 = 3,190; a second
    // energizer 289: 3,479.
    const row = (name: string) =>
      page.getByRole('row').filter({ hasText: name }).getByRole('cell').allTextContents();
    await page.getByText('Cost 3,479').waitFor();
    expect(await row('Nets')).toEqual(['22 of 32', '3,190']);
    expect(await row('Energizer')).toEqual(['1 of 2', '289']);
    // Two rods of 6 ft, for no less than 3 m each: twice.
    expect(await row('Ground rods')).toEqual(['4', '?']);
    await page.getByText(', without the 6 things that have no price yet (?).').waitFor();
    await checkAndShoot(opened, 'materials-nets');
    await page.getByLabel(/^Guy lines with pegs: price each/).fill('2.5');
    // Six corners a set, twice: 12 × 2.50 more.
    await page.getByText('Cost 3,509').waitFor();
    await page.getByText(', without the 5 things that have no price yet (?).').waitFor();
    await page.getByRole('button', { name: 'Write the materials list' }).click();
    await page.getByText('Written on “Fence materials”').waitFor();
    const cells = sheet.written[0]!.cells;
    const written = (name: string) => cells.find(([first]) => first?.k === 't' && first.v === name);
    expect(written('Nets')?.[3]).toMatchObject({ k: 'n', v: 10 });
    expect(written('Nets')?.[5]).toMatchObject({ k: 'n', v: 145 });
    expect(written('Guy lines with pegs')?.[5]).toMatchObject({ k: 'n', v: 2.5 });
    expect(written('Kind of fence')?.[1]).toMatchObject({ v: 'Netting, with its posts in it' });
    expect(written('Rolls of wire')).toBeUndefined();

    // Over to wire and back: nothing that was typed is lost.
    await page.getByText('Reading the spreadsheet…').waitFor({ state: 'hidden' });
    await page.getByLabel('Wire on posts').check();
    await page.getByRole('button', { name: 'Write the materials list anew' }).click();
    await expect.poll(() => sheet.written.length).toBe(2);
    const wire = sheet.written[1]!.cells;
    const nets = wire.find(([first]) => first?.k === 't' && first.v === 'Nets');
    expect(nets?.[1]).toMatchObject({ v: '=0' });
    expect(nets?.[3]).toMatchObject({ k: 'n', v: 10 });
    expect(opened.errors).toEqual([]);
  });

  test('a field cut into strips in a metric, decimal-comma file', async ({ skip }) => {
    if (!browser) skip();
    const sheet = new FakeSheet([tab('Notizen', [['']])]);
    sheet.locale = 'de_DE';
    const opened = await openMaterials(sheet);
    const { page } = opened;
    await page.getByLabel('One field, cut into paddocks').check();
    await page.getByLabel('All of them').check();
    await page.getByLabel(/^Width of the field/).fill('100,5');
    await page.getByLabel(/^Length of the field/).fill('60');
    await page.getByLabel(/^Paddocks to cut it into/).fill('4');
    // 2 × (100.5 + 60) = 321; three sides of 60.
    await page.getByText('Outer fence 321 m').waitFor();
    await page.getByText('Dividing fence 180 m').waitFor();
    await checkAndShoot(opened, 'materials-field');
  });

  test('areas without sides are said to be guessed, and a bad cell is named', async ({ skip }) => {
    if (!browser) skip();
    const opened = await openMaterials(farmSheet());
    await opened.page.getByText('9 paddocks with an area but no sides').waitFor();
    const broken = laneSheet();
    (broken.tabs[0]?.values[1] as unknown[])[1] = -5;
    const second = await openMaterials(broken);
    await second.page
      .getByText(/Ground!B2: width must be more than 0 ft, got -5/)
      .first()
      .waitFor();
    await checkAndShoot(second, 'materials-bad-cell');
    expect(
      await second.page
        .getByRole('button', { name: 'Write the materials list' })
        .getAttribute('aria-disabled'),
    ).toBe('true');
  });
});
