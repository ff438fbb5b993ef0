/** "Draw the paddocks" in a real browser beside a stand-in for the spreadsheet. */
import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { launchBrowser } from '../browser/launch';
import { SAMPLE_MAP } from '../tasks/map/sample-map';
import { FakeSheet, tab } from './fake-sheet';
import { checkAndShoot, type Opened, openSidebar } from './open-sidebar';

let browser: Browser | undefined;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser?.close());

const KML = `<?xml version="1.0" encoding="UTF-8"?>
<kml xmlns="http://www.opengis.net/kml/2.2"><Document><Folder><name>Farm</name>
<Placemark><name>Oak &amp; ash &lt;img src=x onerror="window.hacked=1"&gt;</name><description><![CDATA[<script>window.hacked=1</script>]]></description>
<Polygon><outerBoundaryIs><LinearRing><coordinates>
-92.0,44.0,0 -91.999,44.0,0 -91.999,44.0009,0 -92.0,44.0009,0 -92.0,44.0,0
</coordinates></LinearRing></outerBoundaryIs></Polygon></Placemark>
<Placemark><name>House well</name><Point><coordinates>-92.001,44.0004</coordinates></Point></Placemark>
</Folder></Document></kml>`;

async function openMap(sheet = new FakeSheet([tab('Notes', [['']])])) {
  const opened = await openSidebar(browser as Browser, sheet);
  await opened.page.getByRole('button', { name: 'Draw the paddocks' }).click();
  await opened.page.getByText('Corners from').waitFor();
  return { ...opened, sheet };
}

async function choose(page: Page, name: string, content: string | Buffer): Promise<void> {
  const path = join(mkdtempSync(join(tmpdir(), 'sounder-map-')), name);
  writeFileSync(path, content);
  await page.getByLabel('Map file').setInputFiles(path);
}

/** Smaller than this is not read at arm's length. Judgement. */
const LEAST_PIXELS = 9.5;

/** Words of the drawing that come out too small on the screen, or run out of it. */
function smallWords(page: Page): Promise<string[]> {
  return page.evaluate((least) => {
    const svg = document.querySelector<SVGSVGElement>('.sketch svg')!;
    const frame = svg.getBoundingClientRect();
    const scale = frame.width / svg.viewBox.baseVal.width;
    return [...svg.querySelectorAll('text')]
      .filter((text) => {
        const { left, right } = text.getBoundingClientRect();
        const size = Number.parseFloat(getComputedStyle(text).fontSize) * scale;
        return text.textContent !== '' && (size < least || left < frame.left || right > frame.right);
      })
      .map((text) => text.textContent ?? '');
  }, LEAST_PIXELS);
}

/** The drawing as its window shows it. */
async function showLarge({ page }: Opened, svg: string): Promise<void> {
  const large = await page.context().newPage();
  await large.setViewportSize({ width: 1040, height: 720 });
  await large.setContent(svg);
  expect(await large.locator('svg text').allTextContents()).toContain('Pond field');
  await large.screenshot({ path: 'test-output/sidebar/map-large.png' });
  await large.close();
}

describe('the map panel', { timeout: 120_000 }, () => {
  test('a GeoJSON file: drawing, numbers, list into the sheet and anew', async ({ skip }) => {
    if (!browser) skip();
    const opened = await openMap();
    const { page, sheet, errors } = opened;
    await checkAndShoot(opened, 'map-start');
    await choose(page, 'farm.geojson', JSON.stringify(SAMPLE_MAP));
    await page.getByText('6 shapes read, 4 paddocks').waitFor();
    // What was asked for has come, and the keyboard goes on from there.
    await page.locator('.answer:focus').filter({ hasText: 'in 4 paddocks' }).waitFor();
    await page.getByRole('img', { name: /Map of 4 paddocks to scale/ }).waitFor();
    const row = page.getByRole('row', { name: /^Middle/ });
    expect(await row.textContent()).toContain('North, Pond field');
    await page.getByText(/Far has a hole in it/).waitFor();
    await page.getByText(/North Carolina guideline/).waitFor();
    await checkAndShoot(opened, 'map-read');
    expect(await smallWords(page), 'words of the drawing as they are shown').toEqual([]);
    await page.getByRole('button', { name: 'Open it large, to print' }).click();
    await expect.poll(() => sheet.drawings.length).toBe(1);
    await showLarge(opened, sheet.drawings[0]!.svg);

    await page.getByRole('button', { name: 'Write the map table' }).click();
    await page.getByText('Written on “Map”').waitFor();
    expect(sheet.written[0]?.name).toBe('SOUNDER_MAP');
    expect(sheet.written[0]?.place).toEqual({ at: 'new-tab', tab: 'Map' });
    const names = sheet.written[0]?.cells.map((cells) => cells[0]).filter((cell) => cell?.k === 't');
    expect(names).toContainEqual({ k: 't', v: 'Pond field' });

    await page.getByLabel(/Marrow creek/).selectOption('other');
    await page.getByRole('button', { name: 'Write the map table anew' }).click();
    await page.getByText('Written on “Map”').waitFor();
    await expect.poll(() => sheet.written.length).toBe(2);
    expect(sheet.written[1]?.place).toMatchObject({ at: 'own', area: { row: 1, column: 1 } });

    // A corner put right in the sheet is never set back by the file that was read before.
    await page.getByText('Written on “Map”').waitFor();
    // The page reads the file again after writing; what changes before that is no change to it.
    await page.getByText('Reading the spreadsheet…').waitFor({ state: 'hidden' });
    const values = sheet.tabs.find(({ name }) => name === 'Map')?.values as unknown[][];
    const corners = values.findIndex((row) => row.includes('latitude'));
    const corner = values[corners + 1]!;
    const moved = Number(corner[2]) + 0.0001;
    corner[2] = moved;
    const anew = page.getByRole('button', { name: 'Write the map table anew' });
    await anew.click();
    await page
      .getByRole('alert')
      .filter({ hasText: 'changed in the sheet after the page had read it' })
      .waitFor();
    await page.getByRole('button', { name: 'Read the spreadsheet again' }).click();
    await page.getByText('Names or corners were changed in the map table').waitFor();
    await page.getByText('of the table that stands').waitFor();
    await anew.click();
    await expect.poll(() => sheet.written.length).toBe(3);
    expect(sheet.written[2]?.cells.flat()).toContainEqual(expect.objectContaining({ k: 'n', v: moved }));
    expect(errors).toEqual([]);
  });

  test('KML with HTML in every text shows it as text', async ({ skip }) => {
    if (!browser) skip();
    const { page, errors } = await openMap();
    await choose(page, 'farm.kml', KML);
    await page.getByText('2 shapes read, 1 paddock among them').waitFor();
    expect(await page.getByRole('rowheader').first().textContent()).toContain('<img src=x');
    expect(await page.evaluate(() => (window as unknown as { hacked?: number }).hacked)).toBeUndefined();
    expect(await page.locator('main img, main script').count()).toBe(0);
    expect(errors).toEqual([]);
  });

  test('what must not be read is refused in words, at once', async ({ skip }) => {
    if (!browser) skip();
    const opened = await openMap();
    const { page, errors } = opened;
    const cases: [string, string | Buffer, RegExp][] = [
      ['big.geojson', Buffer.alloc(20_000_000, 'x'), /The file is 20 MB; the most that is read is 5 MB/],
      ['deep.json', '['.repeat(1_000_000), /1000000 levels deep/],
      ['broken.json', '{"type":', /broken/],
      ['map.kmz', Buffer.from([0x50, 0x4b, 3, 4, 0, 0]), /zipped/],
      ['evil.kml', '<!DOCTYPE kml [<!ENTITY a SYSTEM "https://sidebar.test/x">]><kml>&a;</kml>', /DOCTYPE/],
      ['cut.kml', '<kml><Document><Placemark><name>A</name>', /This KML is broken/],
      ['none.kml', '<kml><Document></Document></kml>', /Nothing in this map can be used/],
      ['photo.jpg', Buffer.from([0xff, 0xd8, 0xff, 0, 0]), /not a text file|neither GeoJSON/],
    ];
    for (const [name, content, words] of cases) {
      const began = Date.now();
      await choose(page, name, content);
      await page.getByRole('alert').filter({ hasText: words }).waitFor();
      expect(Date.now() - began, name).toBeLessThan(10_000);
    }
    await checkAndShoot(opened, 'map-refused');
    expect(errors).toEqual([]);
  });

  test('typed corners, pasted text, and the table that stands', async ({ skip }) => {
    if (!browser) skip();
    const { page, sheet, errors } = await openMap();
    sheet.selection = {
      tab: 'Corners',
      a1: 'A2:B5',
      row: 2,
      column: 1,
      rows: 4,
      columns: 2,
      values: [
        [44, -92],
        [44, -91.999],
        [44.001, -91.999],
        [44.001, '−92'],
      ],
    };
    await page.getByLabel('Latitudes and longitudes typed').check();
    await page.getByRole('button', { name: 'Use the selected cells' }).click();
    await page.getByRole('alert').filter({ hasText: 'B5 must be decimal degrees' }).waitFor();
    sheet.selection.values[3] = [44.001, -92];
    await page.getByRole('button', { name: 'Use the selected cells' }).click();
    await page.getByText('1 shape read').waitFor();
    await page.getByRole('button', { name: 'Write the map table' }).click();
    await page.getByText('Written on “Map”').waitFor();

    await page.getByLabel('The map table that stands in this file').check();
    await page.getByText('of the table that stands').waitFor();
    await page.getByText('1 shape read').waitFor();
    await page.getByLabel('Pasted GeoJSON or KML').check();
    await page.getByLabel('GeoJSON or KML text').fill(JSON.stringify(SAMPLE_MAP));
    await page.getByRole('button', { name: 'Read the text' }).click();
    await page.getByText('6 shapes read').waitFor();
    expect(errors).toEqual([]);
  });
});
