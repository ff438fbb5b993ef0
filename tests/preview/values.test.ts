/**
 * The stand-in's values, against what Google documents for Range.getValues, setValues and setNumberFormat
 * (developers.google.com/apps-script/reference/spreadsheet/range, as restated in the platform notes), and where the
 * documents say nothing, from memory of the real service.
 */
import { describe, expect, test } from 'vitest';
import { openWorkbook } from '../../src/headless';

describe('reading', () => {
  test('numbers, booleans, texts and dates come as such, blanks as empty text, errors as their name', async () => {
    const book = await openWorkbook({
      tabs: { A: [[1.5, true, 'North', null, '=1/0', '=NA()', '=NOSUCH(1)', { d: '2026-04-01' }]] },
    });
    expect(book.values('A')).toEqual([
      [1.5, true, 'North', '', '#DIV/0!', '#N/A', '#NAME?', new Date('2026-04-01T00:00:00Z')],
    ]);
  });

  test('the data range starts at A1 and an empty tab has a data range of one cell', async () => {
    const book = await openWorkbook({ tabs: { A: [[], [null, null, 'x']], Empty: [] } });
    expect(book.values('A')).toEqual([
      ['', '', ''],
      ['', '', 'x'],
    ]);
    expect(book.spreadsheet.getSheetByName('Empty')?.getDataRange().getA1Notation()).toBe('A1');
    expect(book.spreadsheet.getSheetByName('Empty')?.getLastRow()).toBe(0);
    expect(book.spreadsheet.getSheetByName('nowhere')).toBeNull();
  });

  test('a new tab has 1000 rows and 26 columns', async () => {
    const sheet = (await openWorkbook()).spreadsheet.insertSheet('New');
    expect([sheet.getMaxRows(), sheet.getMaxColumns()]).toEqual([1000, 26]);
  });
});

describe('writing', () => {
  test('data must be rows that fit the range exactly', async () => {
    const book = await openWorkbook({ tabs: { A: [] } });
    const range = book.range('A', 'A1:B2');
    expect(() => range.setValues([[1, 2]])).toThrow(
      'The number of rows in the data does not match the number of rows in the range. The data has 1 but the range has 2.',
    );
    expect(() => range.setValues([[1, 2], [3]])).toThrow(
      'The number of columns in the data does not match the number of columns in the range. The data has 1 but the range has 2.',
    );
    expect(() => range.setValues([1, 2])).toThrow(
      "don't match the method signature for SpreadsheetApp.Range.setValues",
    );
    expect(book.values('A')).toEqual([['']]);
  });

  test('texts are read as if typed: formulas, numbers, dates, TRUE', async () => {
    // Google's own sample for setValues has '1,000,000' and '$2.99'; '01234' became 1234 in a public issue.
    const book = await openWorkbook({ tabs: { A: [] } });
    book
      .range('A', 'A1:H1')
      .setValues([['1,000,000', '$2.99', '01234', '=1+2', 'true', '5%', '2026-04-01', "'007"]]);
    expect(book.values('A')).toEqual([
      [1_000_000, 2.99, 1234, 3, true, 0.05, new Date('2026-04-01T00:00:00Z'), '007'],
    ]);
  });

  test('a leading + or - that is no number starts a formula', async () => {
    const book = await openWorkbook({ tabs: { A: [] } });
    book.range('A', 'A1:D1').setValues([['+5', '-5', '+A1', '-pigs']]);
    expect(book.values('A')).toEqual([[5, -5, 5, expect.stringMatching(/^#/)]]);
    expect(book.formulas('A')[0]?.slice(2)).toEqual(['=+A1', '=-pigs']);
  });

  test('in cells formatted as plain text everything stays text, whatever it begins with', async () => {
    const book = await openWorkbook({ tabs: { A: [] } });
    const texts = [
      '=1+1',
      '+x',
      '-x',
      '@x',
      '007',
      '2026-04-01',
      'TRUE',
      '#N/A',
      "'quoted",
      '1e5',
      'a\nb',
      '[a](b)',
    ];
    const range = book.range('A', 'A1:L1');
    range.setNumberFormat('@').setValues([texts]);
    expect(range.getValues()).toEqual([texts]);
    expect(range.getFormulas()).toEqual([texts.map(() => '')]);
    expect(range.getDisplayValues()).toEqual([texts]);
    // Later turned back to automatic, the cells keep their text (a public issue of sheetquery says so).
    range.setNumberFormat('General');
    expect(range.getValues()).toEqual([texts]);
  });

  test('null and undefined clear a cell; NaN is an error', async () => {
    const book = await openWorkbook({ tabs: { A: [[1, 2, 3]] } });
    book.range('A', 'A1:C1').setValues([[null, undefined, Number.NaN]]);
    expect(book.values('A')).toEqual([['', '', '#NUM!']]);
  });

  test('what is outside the tab or the grid is refused', async () => {
    const book = await openWorkbook({ tabs: { A: [] } });
    const sheet = book.spreadsheet.getSheetByName('A')!;
    expect(() => sheet.getRange(0, 1)).toThrow('The starting row of the range is too small.');
    expect(() => sheet.getRange(1, 1, 0, 1)).toThrow('The number of rows in the range must be at least 1.');
    expect(() => sheet.getRange(1000, 1, 2, 1)).toThrow('outside the dimensions of the sheet');
    expect(() => sheet.getRange('nonsense')).toThrow('Range not found');
    expect(() => book.spreadsheet.insertSheet('a')).toThrow('A sheet with the name "a" already exists');
  });

  test('cells hidden under a merge take nothing', async () => {
    const book = await openWorkbook({ tabs: { A: [['Title']] }, merges: { A: ['A1:C1'] } });
    book.range('A', 'A1:C1').setValues([['New title', 'lost', 'lost']]);
    expect(book.values('A')).toEqual([['New title']]);
  });

  test('formats, colours, notes, names, frozen rows and colour rules are kept and read back', async () => {
    const book = await openWorkbook({ tabs: { A: [[5, 6]] } });
    const range = book.range('A', 'A1:B1');
    range
      .setNumberFormats([['0.00', '@']])
      .setBackgrounds([['#ff0000', null]])
      .setFontWeights([['bold', 'normal']]);
    range.setNotes([['a note', '']]);
    expect(range.getNumberFormats()).toEqual([['0.00', '@']]);
    expect(range.getBackgrounds()).toEqual([['#ff0000', '#ffffff']]);
    expect(range.getFontWeights()).toEqual([['bold', 'normal']]);
    expect(range.getNotes()).toEqual([['a note', '']]);
    expect(book.shownValues('A')[0]?.[0]).toBe('5.00');
    book.spreadsheet.setNamedRange('HERD', range);
    expect(book.spreadsheet.getRangeByName('HERD')?.getA1Notation()).toBe('A1:B1');
    expect(book.spreadsheet.getRangeByName('NOBODY')).toBeNull();
    const sheet = book.spreadsheet.getSheetByName('A')!;
    sheet.setFrozenRows(1);
    expect(sheet.getFrozenRows()).toBe(1);
    expect(() => range.setBackground('#12')).toThrow('Invalid color: #12');
  });

  test('a merge never lies across the edge of what stands still', async () => {
    const book = await openWorkbook({ tabs: { A: [['Title']] }, merges: { A: ['A1:C1'] } });
    const sheet = book.spreadsheet.getSheetByName('A')!;
    expect(() => sheet.setFrozenColumns(2)).toThrow('only part of a merged cell');
    sheet.setFrozenColumns(3);
    expect(sheet.getFrozenColumns()).toBe(3);
    expect(() => book.range('A', 'C2:D2').merge()).toThrow('frozen and non-frozen');
    sheet.setFrozenColumns(0);
    book.range('A', 'C2:D2').merge();
    expect(sheet.getFrozenColumns()).toBe(0);
  });

  test('inserted rows move references, names and formats', async () => {
    const book = await openWorkbook({ tabs: { A: [[1], [2], ['=SUM(A1:A2)']] }, names: { HERD: 'A!A1:A2' } });
    book.insertRows('A', 2, 1);
    expect(book.formulas('A').at(-1)).toEqual(['=SUM(A1:A3)']);
    expect(book.value('A', 'A4')).toBe(3);
    expect(book.spreadsheet.getRangeByName('HERD')?.getA1Notation()).toBe('A1:A3');
  });
});

test('a copy holds the same values, formulas, formats and names, and lives on its own', async () => {
  const book = await openWorkbook({
    tabs: { A: [[{ text: '=x' }, '=1+1', { d: '2026-04-01' }]] },
    names: { HERD: 'A!A1' },
  });
  const copy = await book.copy();
  expect(copy.values('A')).toEqual(book.values('A'));
  expect(copy.formulas('A')).toEqual(book.formulas('A'));
  expect(copy.shownValues('A')).toEqual(book.shownValues('A'));
  expect(copy.spreadsheet.getRangeByName('HERD')?.getA1Notation()).toBe('A1');
  copy.type('A', 'A1', 'changed');
  expect(book.value('A', 'A1')).toBe('=x');
});
