/** .xlsx files out and in again, and read by ExcelJS in between. */
import ExcelJS from 'exceljs';
import { expect, test } from 'vitest';
import { openWorkbook } from '../../src/headless';
import { fileLocale } from '../../src/preview/xlsx/file-locale';
import { codeJs } from './fixture';

test('a saved file says in which locale its days are written; one that says none has none', async () => {
  const file = new ExcelJS.Workbook();
  expect(fileLocale(file)).toBeUndefined();
  const book = await openWorkbook({ tabs: { A: [[1]] }, locale: 'de_DE' });
  await file.xlsx.load((await book.toXlsx()) as unknown as ArrayBuffer);
  expect(fileLocale(file)).toBe('de_DE');
});

test('texts, dates, formulas with our functions, names, merges and colours survive', async () => {
  const book = await openWorkbook({
    codeJs,
    tabs: {
      'My tab': [
        [
          { text: '00123' },
          '=FENCE_TEST(1;2)',
          '=IF(A1="";"no ""q""";"yes ""q""")',
          { d: '2026-04-01' },
          '=NA()',
        ],
        [{ text: '=x' }, true, '50%', '=1+', { text: '[a](b)' }],
        ['Ünï', { text: 'a\nb' }, { text: '#N/A' }, '=DOUBLE_TEST(E3:E4)', 4],
      ],
    },
    names: { HERD: "'My tab'!A1:B2" },
    merges: { 'My tab': ['A6:C6'] },
  });
  book.range('My tab', 'A1').setBackground('#ff0000').setFontWeight('bold');
  const bytes = await book.toXlsx();
  const again = await openWorkbook(bytes, { codeJs });
  expect(again.values('My tab')).toEqual(book.values('My tab'));
  expect(again.formulas('My tab')).toEqual(book.formulas('My tab'));
  expect(again.range('My tab', 'A1').getBackground()).toBe('#ff0000');
  expect(again.spreadsheet.getRangeByName('HERD')?.getA1Notation()).toBe('A1:B2');
  expect(again.range('My tab', 'A6').isPartOfMerge()).toBe(true);

  const file = new ExcelJS.Workbook();
  await file.xlsx.load(bytes as unknown as ArrayBuffer);
  const sheet = file.getWorksheet('My tab')!;
  expect(sheet.getCell('A1').value).toBe('00123');
  expect(sheet.getCell('B1').value).toMatchObject({ formula: 'FENCE_TEST(1,2)', result: 6 });
  expect(sheet.getCell('D1').value).toEqual(new Date('2026-04-01T00:00:00Z'));
  // What spilled is not written, or it would stand in the formula's way.
  expect(sheet.getCell('D4').value).toBeNull();
});

test('a spill into cells with their own formats, and a name as wide as its tab, survive save and open', async () => {
  const book = await openWorkbook({ codeJs, tabs: { Tab: [[1.5, '=DOUBLE_TEST(A1:A3)'], [2], [3]] } });
  book.range('Tab', 'B1:B3').setNumberFormat('0.00');
  book.range('Tab', 'B2:B3').setBackground('#ff0000');
  const tab = book.spreadsheet.getSheetByName('Tab')!;
  book.spreadsheet.setNamedRange('WIDE', tab.getRange(1, 1, 5, tab.getMaxColumns()));
  const wide = book.spreadsheet.getRangeByName('WIDE')!;
  const bytes = await book.toXlsx();

  const file = new ExcelJS.Workbook();
  await file.xlsx.load(bytes as unknown as ArrayBuffer);
  const written = file.getWorksheet('Tab')!.getCell('B2');
  expect([written.value, written.numFmt]).toEqual([null, '0.00']);

  const again = await openWorkbook(bytes, { codeJs });
  const doubled = () => ['B1', 'B2', 'B3'].map((cell) => again.value('Tab', cell));
  expect(doubled()).toEqual([3, 4, 6]);
  again.type('Tab', 'A2', '10');
  expect(doubled()).toEqual([3, 20, 6]);
  expect(again.shownValues('Tab')[1]?.[1]).toBe('20.00');
  expect(again.range('Tab', 'B2').getBackground()).toBe('#ff0000');
  const name = again.spreadsheet.getRangeByName('WIDE');
  expect(name?.getNumColumns()).toBe(wide.getNumColumns());
  expect(name?.getA1Notation()).toBe(wide.getA1Notation());
});

test('a file made elsewhere opens: shared formulas, rich text, links, frozen rows', async () => {
  const file = new ExcelJS.Workbook();
  const sheet = file.addWorksheet('Data', { views: [{ state: 'frozen', ySplit: 1 }] });
  sheet.getCell('A1').value = { richText: [{ text: 'Pad' }, { text: 'dock' }] };
  sheet.getCell('A2').value = { text: 'a link', hyperlink: 'https://example.org/' };
  sheet.fillFormula('B1:B3', 'ROW()*2', [2, 4, 6]);
  sheet.getCell('C1').value = { formula: '_xlfn.IFS(TRUE,"x")', result: 'x' } as ExcelJS.CellFormulaValue;
  sheet.getCell('D1').value = 0.25;
  sheet.getCell('D1').numFmt = '0%';
  const book = await openWorkbook(new Uint8Array(await file.xlsx.writeBuffer()));
  expect(book.values('Data')).toEqual([
    ['Paddock', 2, 'x', 0.25],
    ['a link', 4, '', ''],
    ['', 6, '', ''],
  ]);
  expect(book.shownValues('Data')[0]?.[3]).toBe('25%');
  expect(book.spreadsheet.getSheetByName('Data')?.getFrozenRows()).toBe(1);
});

test('what is no .xlsx is refused', async () => {
  await expect(openWorkbook(new TextEncoder().encode('not a workbook'))).rejects.toThrow();
});

// 2026-11: cells with a number format of their own kept a spilled answer as a value, and the formula could not spill again.
test('a spill over formatted cells stays a spill, and a name as wide as its tab stays a name', async () => {
  const book = await openWorkbook({
    codeJs,
    tabs: { Only: [[1, '=DOUBLE_TEST(A1:A2)'], [2]] },
  });
  book.range('Only', 'B1:B2').setNumberFormat('0.0');
  const wide = book.spreadsheet.getSheetByName('Only')!;
  book.spreadsheet.setNamedRange('SOUNDER_WIDE', wide.getRange(1, 1, 2, wide.getMaxColumns()));
  const again = await openWorkbook(await book.toXlsx(), { codeJs });
  expect(
    again
      .values('Only')
      .slice(0, 2)
      .map((row) => row.slice(0, 2)),
  ).toEqual([
    [1, 2],
    [2, 4],
  ]);
  again.type('Only', 'A2', '5');
  expect(again.value('Only', 'B2')).toBe(10);
  expect(again.range('Only', 'B2').getNumberFormat()).toBe('0.0');
  expect(again.spreadsheet.getRangeByName('SOUNDER_WIDE')?.getRow()).toBe(1);
});
