/**
 * Number formats of a grower's own .xlsx: those that the engine cannot show go back as they came, and one that is
 * lost is told. Patterns: built-in ones from ECMA-376 part 1, 18.8.30, others as spreadsheet programs offer them.
 */
import ExcelJS from 'exceljs';
import { expect, test } from 'vitest';
import { openWorkbook, type Workbook } from '../../src/headless';
import { fileContents } from '../../src/preview/xlsx/file-contents';
import { notCarried, notCarriedSentence } from '../../src/preview/xlsx/not-carried';
import { codeJs } from './fixture';

const PATTERNS = [
  ...['0', '0.00', '#,##0', '#,##0.00', '0%', '0.0%', '0.00%', '0.00E+00', '##0.0E+0', '# ?/?', '# ??/??'],
  ...[
    'mm-dd-yy',
    'd-mmm-yy',
    'd-mmm',
    'mmm-yy',
    'h:mm AM/PM',
    'h:mm:ss AM/PM',
    'h:mm',
    'h:mm:ss',
    'm/d/yy h:mm',
  ],
  ...['#,##0 ;(#,##0)', '#,##0 ;[Red](#,##0)', '#,##0.00 ;(#,##0.00)', '#,##0.00;(#,##0.00)'],
  ...['#,##0_);[Red](#,##0)', '#,##0.00_);(#,##0.00)', 'mm:ss', '[h]:mm:ss', 'mmss.0', 'mm:ss.0', '@'],
  ...['[h]:mm', '[hh]:mm', '[mm]:ss', '[$-F400]h:mm:ss AM/PM', '[$-409]h:mm AM/PM;@', 'hh:mm', 'hh:mm:ss'],
  ...[
    'yyyy-mm-dd',
    'dd/mm/yyyy',
    'd/m/yy h:mm',
    'd/mm/yyyy;@',
    'dd.mm.yyyy',
    'yyyy-mm-dd hh:mm',
    'DD/MM/YYYY',
  ],
  ...[
    '[$-1409]d mmmm yyyy;@',
    '[$-F800]dddd, mmmm dd, yyyy',
    'ddd d mmm',
    'mmmm yyyy',
    'mmmmm',
    'd "of" mmmm',
  ],
  ...['"NZ$"#,##0.00;[Red]-"NZ$"#,##0.00', '_-* #,##0.00_-;-* #,##0.00_-', '$#,##0.00', '[$€-407] #,##0.00'],
  ...['_-"$"* #,##0.00_-;-"$"* #,##0.00_-;_-"$"* "-"??_-;_-@_-', '#,##0.00 [$€-407]', '[$£-809]#,##0.00'],
  ...[
    '[<50]"low";"ok"',
    '[Red][<0]-0.0;[Blue]0.0',
    '0.0" ha"',
    '0" head"',
    '#,##0 "lb/ac"',
    '0.0"h"',
    'General" ha"',
  ],
  ...[
    '0.###',
    '#.00',
    '00000',
    '000-0000',
    '#,##0,',
    '0.0,,"M"',
    '0;-0;;@',
    ';;;',
    '0.00_ ;[Red]-0.00 ',
    '+0;-0;0',
  ],
];

async function bytesOf(file: ExcelJS.Workbook): Promise<Uint8Array> {
  return new Uint8Array(await file.xlsx.writeBuffer());
}

async function firstTab(bytes: Uint8Array): Promise<ExcelJS.Worksheet> {
  const file = new ExcelJS.Workbook();
  await file.xlsx.load(bytes as unknown as ArrayBuffer);
  return file.worksheets[0]!;
}

/** Each pattern on a row of its own: on a number, a blank cell, a text and a formula. */
function fileWith(patterns: readonly string[]): ExcelJS.Workbook {
  const file = new ExcelJS.Workbook();
  const sheet = file.addWorksheet('Herd');
  patterns.forEach((pattern, index) => {
    const row = index + 1;
    sheet.getCell(row, 1).value = 46_300.25;
    sheet.getCell(row, 3).value = 'a text';
    sheet.getCell(row, 4).value = { formula: `A${row}*2`, result: 92_600.5 };
    for (const column of [1, 2, 3, 4]) sheet.getCell(row, column).numFmt = pattern;
  });
  return file;
}

async function lossOf(bytes: Uint8Array, book?: Workbook): Promise<string> {
  return notCarriedSentence(await notCarried(bytes, await (book ?? (await openWorkbook(bytes))).toXlsx()));
}

test.each(PATTERNS)('%s comes back as it was and is not told as lost', async (pattern) => {
  const bytes = await bytesOf(fileWith([pattern]));
  const book = await openWorkbook(bytes);
  expect(await lossOf(bytes, book)).toBe('');
  const saved = await firstTab(await book.toXlsx());
  for (const cell of ['A1', 'B1', 'C1', 'D1']) expect(saved.getCell(cell).numFmt).toBe(pattern);
  expect(book.value('Herd', 'A1')).toEqual(expect.anything());
});

// The file library knows format 22 by this text, in which the hour is no hour.
test('the built-in format of a day with its time shows the time and stays', async () => {
  const bytes = await bytesOf(fileWith(['m/d/yy "h":mm']));
  const book = await openWorkbook(bytes);
  expect(book.shownValues('Herd')[0]?.[0]).toBe('10/5/26 06:00');
  expect(await lossOf(bytes, book)).toBe('');
  expect((await firstTab(await book.toXlsx())).getCell('A1').numFmt).toBe('m/d/yy h:mm');
});

test.each([
  ['"NZ$"#,##0.00;[Red]-"NZ$"#,##0.00', 'NZ$46,300.25'],
  ['_-* #,##0.00_-;-* #,##0.00_-', '46,300.25'],
  ['#,##0.00 [$€-407]', '46,300.25 €'],
  ['[$-1409]d mmmm yyyy', '5 October 2026'],
  ['0.0" ha"', '46300.3 ha'],
  ['[h]:mm', '1111206:00'],
  ['DD/MM/YYYY', '05/10/2026'],
  ['0.00E+00', '4.63e+04'],
  ['# ?/?', '46300.25'],
])('%s is shown as %s', async (pattern, shown) => {
  const book = await openWorkbook(await bytesOf(fileWith([pattern])));
  expect(book.shownValues('Herd')[0]?.[0]).toBe(shown);
});

test('a format that the engine cannot show moves with its cell, and gives way to another one', async () => {
  const pattern = '[<50]"low";"ok"';
  const book = await openWorkbook(await bytesOf(fileWith([pattern, '# ?/?', pattern])));
  book.range('Herd', 'A2').setNumberFormat('0.000');
  book.range('Herd', 'A3').clearFormat();
  book.insertRows('Herd', 1, 2);
  const saved = await firstTab(await book.toXlsx());
  expect(['A3', 'A4', 'B4', 'A5'].map((cell) => saved.getCell(cell).numFmt)).toEqual([
    pattern,
    '0.000',
    '# ?/?',
    undefined,
  ]);
});

test('cells covered by a merge keep formats of their own', async () => {
  const file = fileWith(['0.00']);
  const sheet = file.worksheets[0]!;
  sheet.mergeCells('F1:G1');
  sheet.getCell('F1').style = { numFmt: '0.00' };
  sheet.getCell('G1').style = { numFmt: '0.000' };
  const bytes = await bytesOf(file);
  expect(await lossOf(bytes)).toBe('');
  const saved = await firstTab(await (await openWorkbook(bytes)).toXlsx());
  expect(['F1', 'G1'].map((cell) => saved.getCell(cell).numFmt)).toEqual(['0.00', '0.000']);
  expect(saved.getCell('G1').master.address).toBe('F1');
});

test('hours in all and half days that a script sets are saved as other programs read them', async () => {
  const book = await openWorkbook({ codeJs, tabs: { Tab: [[1.5, 0.75]] } });
  book.range('Tab', 'A1').setNumberFormat('[h]:mm');
  book.range('Tab', 'B1').setNumberFormat('hh:mm am/pm');
  expect(book.shownValues('Tab')[0]).toEqual(['36:00', '06:00 PM']);
  const saved = await firstTab(await book.toXlsx());
  expect(saved.getCell('A1').numFmt).toBe('[h]:mm');
  expect(saved.getCell('B1').numFmt).toBe('hh:mm AM/PM');
});

// The file library takes the backslash for nothing: "0.0\h" becomes an hour.
test('a format that does not come back is told by cells', async () => {
  const bytes = await bytesOf(fileWith(['0.0\\h', '0.00']));
  expect(await lossOf(bytes)).toBe(
    'Not carried over from this file: 4 number or date formats of cells. ' +
      'They will be missing if you save it from here.',
  );
});

test('formats are compared by what they mean, not by how they are written', () => {
  const codesOf = (formats: string, ids: number[]): (string | undefined)[] => {
    const parts = new Map([
      ['xl/workbook.xml', '<workbook><sheets><sheet name="A" r:id="r0"/></sheets></workbook>'],
      [
        'xl/_rels/workbook.xml.rels',
        '<Relationships><Relationship Id="r0" Type="http://x/worksheet" Target="worksheets/sheet1.xml"/></Relationships>',
      ],
      [
        'xl/worksheets/sheet1.xml',
        `<worksheet><sheetData>${ids.map((_, index) => `<c r="A${index + 1}" s="${index}"/>`).join('')}</sheetData></worksheet>`,
      ],
      [
        'xl/styles.xml',
        `<styleSheet><numFmts>${formats}</numFmts><cellXfs>${ids.map((id) => `<xf numFmtId="${id}"/>`).join('')}</cellXfs></styleSheet>`,
      ],
    ]);
    const { items } = fileContents(parts);
    return ids.map((_, index) => items.find(({ place }) => place === `A${index + 1}`)?.how);
  };
  const written = (code: string, id: number) => `<numFmt numFmtId="${id}" formatCode="${code}"/>`;
  const [builtIn, own, escaped, plain, quoted, hours, points, escapedPoints, none, general] = codesOf(
    written('0.00', 164) +
      written('0.0\\ \\-', 165) +
      written('0.0 -', 166) +
      written('0.0&quot; -&quot;', 167) +
      written('0.0\\h', 168) +
      written('dd.mm.yyyy', 169) +
      written('DD\\.MM\\.YYYY', 170) +
      written('General', 171),
    [2, 164, 165, 166, 167, 168, 169, 170, 0, 171],
  );
  expect(builtIn).toBeDefined();
  expect(own).toBe(builtIn);
  expect([escaped, quoted]).toEqual([plain, plain]);
  expect(hours).not.toBe('0.0h');
  expect(escapedPoints).toBe(points);
  expect([none, general]).toEqual([undefined, undefined]);
});
