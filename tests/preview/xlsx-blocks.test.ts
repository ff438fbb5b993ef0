/** The sample farms with every block that there is, saved by the preview and opened again: nothing is lost, nothing is said to be. */
import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { openWorkbook, type Workbook } from '../../src/headless';
import { notCarried, notCarriedSentence } from '../../src/preview/xlsx/not-carried';
import { buildEveryBlock } from '../hard-use/every-block';
import { scriptText } from '../tasks/script-text';

const FOLDER = 'sample-sheets';
const SAMPLES = readdirSync(FOLDER).filter((name) => name.endsWith('.xlsx'));
const TODAY = '2026-04-20';

async function opened(bytes: Uint8Array): Promise<Workbook> {
  return openWorkbook(bytes, { codeJs: await scriptText(), today: TODAY });
}

/** Formulas, what shows, and how each cell looks, tab by tab. */
function picture(book: Workbook): unknown {
  return book.spreadsheet.getSheets().map((sheet) => {
    const tab = sheet.getName();
    const range = sheet.getDataRange();
    const looks = [range.getBackgrounds(), range.getFontColors(), range.getFontWeights()];
    const boxes = range.getDataValidations().map((row) => row.map((rule) => rule?.getCriteriaType()));
    return [tab, book.formulas(tab), book.shownValues(tab), range.getNumberFormats(), boxes, ...looks];
  });
}

test('there are sample sheets', () => {
  expect(SAMPLES).not.toEqual([]);
});

test.each(SAMPLES)(
  '%s with every block comes back as it was saved',
  async (name) => {
    const book = await opened(readFileSync(`${FOLDER}/${name}`));
    await buildEveryBlock(book, name.startsWith('metric') ? 'metric' : 'US');
    const saved = await book.toXlsx();
    const again = await opened(saved);
    expect(notCarriedSentence(await notCarried(saved, await again.toXlsx()))).toBe('');
    expect(picture(again)).toEqual(picture(book));
    expect(JSON.stringify(picture(again))).toContain('"CHECKBOX"');
  },
  120_000,
);
