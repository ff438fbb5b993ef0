/**
 * What of a grower's own .xlsx survives opening and saving, and what is told to be lost. The files are made and read
 * again by ExcelJS; parts that ExcelJS cannot make stand here as ECMA-376 part 1 has them (spreadsheetML, 18.3;
 * relations and part names from memory of files that Excel wrote).
 */
import ExcelJS from 'exceljs';
import { expect, test } from 'vitest';
import { openWorkbook } from '../../src/headless';
import { fileContents } from '../../src/preview/xlsx/file-contents';
import { notCarried, notCarriedSentence } from '../../src/preview/xlsx/not-carried';
import { zipParts } from '../../src/preview/xlsx/zip-parts';

async function bytesOf(file: ExcelJS.Workbook): Promise<Uint8Array> {
  return new Uint8Array(await file.xlsx.writeBuffer());
}

async function fileOf(bytes: Uint8Array): Promise<ExcelJS.Workbook> {
  const file = new ExcelJS.Workbook();
  await file.xlsx.load(bytes as unknown as ArrayBuffer);
  return file;
}

/** The sentence after opening a file and saving it at once. */
async function lossOf(bytes: Uint8Array): Promise<string> {
  return notCarriedSentence(await notCarried(bytes, await (await openWorkbook(bytes)).toXlsx()));
}

const LIST: ExcelJS.DataValidation = { type: 'list', allowBlank: true, formulae: ['"wet,dry"'] };

function growersFile(): ExcelJS.Workbook {
  const file = new ExcelJS.Workbook();
  const sheet = file.addWorksheet('Hog ground');
  file.addWorksheet('Lists').getCell('A1').value = 'north';
  sheet.getCell('A1').value = 'Paddock';
  sheet.getCell('A2').value = { text: 'Soil map', hyperlink: 'https://example.org/map?a=1&b=2' };
  sheet.getCell('C2').value = 0.5;
  sheet.getColumn('C').hidden = true;
  sheet.getColumn('H').hidden = true;
  sheet.getCell('B2').dataValidation = LIST;
  sheet.getCell('B3').dataValidation = LIST;
  sheet.getCell('D2').dataValidation = {
    type: 'list',
    formulae: ['Lists!$A$1:$A$4'],
    showErrorMessage: true,
  };
  sheet.getCell('E2').dataValidation = { type: 'decimal', operator: 'between', formulae: [0.5, 12] };
  sheet.getCell('F2').dataValidation = {
    type: 'date',
    operator: 'greaterThan',
    formulae: [new Date('2026-04-21T00:00:00Z')],
  };
  sheet.getCell('G2').dataValidation = { type: 'custom', formulae: ['G2>IFNA(C2,1)'] };
  return file;
}

test('hidden columns, links, drop-down lists and other checks survive opening and saving', async () => {
  const bytes = await bytesOf(growersFile());
  expect(await lossOf(bytes)).toBe('');
  const saved = (await fileOf(await (await openWorkbook(bytes)).toXlsx())).worksheets[0]!;
  const hidden = ['A', 'B', 'C', 'D', 'G', 'H'].map((letter) => saved.getColumn(letter).hidden);
  expect(hidden).toEqual([false, false, true, false, false, true]);
  expect(saved.getCell('A2').value).toEqual({
    text: 'Soil map',
    hyperlink: 'https://example.org/map?a=1&b=2',
  });
  expect(saved.getCell('B2').dataValidation).toMatchObject({ type: 'list', formulae: ['"wet,dry"'] });
  expect(saved.getCell('B3').dataValidation).toMatchObject({ type: 'list', formulae: ['"wet,dry"'] });
  expect(saved.getCell('B4').dataValidation).toBeUndefined();
  expect(saved.getCell('D2').dataValidation).toMatchObject({
    type: 'list',
    formulae: ["'Lists'!$A$1:$A$4"],
    errorStyle: 'stop',
  });
  expect(saved.getCell('E2').dataValidation).toMatchObject({ operator: 'between', formulae: [0.5, 12] });
  expect(saved.getCell('F2').dataValidation).toMatchObject({
    type: 'date',
    operator: 'greaterThan',
    formulae: [new Date('2026-04-21T00:00:00Z')],
  });
  expect(saved.getCell('G2').dataValidation).toMatchObject({ type: 'custom', formulae: ['G2>IFNA(C2,1)'] });
});

test('a link reads as its text, and links and lists move with inserted rows', async () => {
  const book = await openWorkbook(await bytesOf(growersFile()));
  const tab = 'Hog ground';
  expect(book.value(tab, 'A2')).toBe('Soil map');
  expect(book.formula(tab, 'A2')).toBe('');
  book.insertRows(tab, 1, 3);
  const saved = (await fileOf(await book.toXlsx())).worksheets[0]!;
  expect(saved.getCell('A5').hyperlink).toBe('https://example.org/map?a=1&b=2');
  expect(saved.getCell('B2').dataValidation).toBeUndefined();
  expect(saved.getCell('B6').dataValidation).toMatchObject({ formulae: ['"wet,dry"'] });
});

test('what is lost is told in one sentence', async () => {
  const file = growersFile();
  file.addWorksheet("Ray's");
  const sheet = file.worksheets[0]!;
  sheet.getCell('A3').note = 'wet after rain';
  sheet.getCell('A4').value = { text: 'Seed list', hyperlink: 'file:///seeds.xlsx' };
  sheet.getCell('A5').value = { richText: [{ text: 'not ' }, { font: { bold: true }, text: 'here' }] };
  sheet.getCell('B5').dataValidation = { type: 'list', formulae: ['INDIRECT(A1)'] };
  sheet.getCell('B6').dataValidation = { ...LIST, promptTitle: 'Ground', prompt: 'wet or dry' };
  sheet.getCell('B7').dataValidation = { type: 'textLength', operator: 'lessThan', formulae: [9] };
  sheet.addConditionalFormatting({
    ref: 'C2:C9',
    rules: [{ type: 'colorScale', priority: 1, cfvo: [{ type: 'min' }, { type: 'max' }], color: [] }],
  });
  sheet.autoFilter = 'A1:C1';
  await sheet.protect('', {});
  expect(await lossOf(await bytesOf(file))).toBe(
    'Not carried over from this file: 1 note, 1 link, 1 drop-down list, 1 other check on what is typed, ' +
      '1 help text for a cell, 1 cell with partly bold or coloured text, 1 colour rule, ' +
      '1 apostrophe in the name of a tab, 1 filter, 1 protected tab. They will be missing if you save it from here.',
  );
  const one = new ExcelJS.Workbook();
  one.addWorksheet('A').getCell('A1').note = 'x';
  expect(await lossOf(await bytesOf(one))).toBe(
    'Not carried over from this file: 1 note. It will be missing if you save it from here.',
  );
});

test('looks that are lost are counted by cells, those that are kept are not', async () => {
  const file = new ExcelJS.Workbook();
  const sheet = file.addWorksheet('A');
  sheet.getCell('A1').value = 'kept';
  sheet.getCell('A1').font = { bold: true, italic: true, color: { argb: 'FFFF0000' } };
  sheet.getCell('A1').fill = { type: 'pattern', pattern: 'solid', fgColor: { argb: 'FFFFFF00' } };
  expect(await lossOf(await bytesOf(file))).toBe('');
  sheet.getCell('A2').border = { top: { style: 'thin' } };
  sheet.getCell('A3').border = { left: { style: 'double' } };
  sheet.getCell('B2').font = { size: 18 };
  sheet.getCell('B3').font = { color: { theme: 5 } };
  sheet.getCell('B4').fill = { type: 'pattern', pattern: 'solid', fgColor: { theme: 4 } };
  for (const cell of ['A2', 'A3', 'B2', 'B3', 'B4']) sheet.getCell(cell).value = 'x';
  expect(await lossOf(await bytesOf(file))).toBe(
    'Not carried over from this file: 2 cells with borders, 1 cell background in a theme colour or pattern, ' +
      '1 cell in a font or size of its own, 1 text in a theme colour. ' +
      'They will be missing if you save it from here.',
  );
});

// 2026-11: a row without any value lost how its cells look, and the loss was told of files that came from here.
test('rows without a value keep how their cells look, and stay hidden', async () => {
  const file = new ExcelJS.Workbook();
  const sheet = file.addWorksheet('A');
  sheet.getCell('A1').value = 'above';
  sheet.getCell('B2').fill = { type: 'pattern', pattern: 'solid', fgColor: { argb: 'FFDFE8D8' } };
  sheet.getCell('B2').font = { color: { argb: 'FF202124' } };
  sheet.getCell('C2').numFmt = '0.00';
  sheet.getRow(2).hidden = true;
  sheet.getCell('A3').value = 'below';
  const bytes = await bytesOf(file);
  expect(await lossOf(bytes)).toBe('');
  const saved = (await fileOf(await (await openWorkbook(bytes)).toXlsx())).worksheets[0]!;
  expect(saved.getCell('B2').fill).toMatchObject({ pattern: 'solid', fgColor: { argb: 'FFDFE8D8' } });
  expect(saved.getCell('B2').font).toEqual({ color: { argb: 'FF202124' } });
  expect(saved.getCell('C2').numFmt).toBe('0.00');
  expect([1, 2, 3].map((row) => saved.getRow(row).hidden)).toEqual([false, true, false]);
});

test('a theme colour in a row without a value is told', async () => {
  const file = new ExcelJS.Workbook();
  const sheet = file.addWorksheet('A');
  sheet.getCell('A1').value = 'above';
  sheet.getCell('A2').fill = { type: 'pattern', pattern: 'solid', fgColor: { theme: 4 } };
  sheet.getCell('A3').value = 'below';
  expect(await lossOf(await bytesOf(file))).toBe(
    'Not carried over from this file: 1 cell background in a theme colour or pattern. ' +
      'It will be missing if you save it from here.',
  );
});

test('a formula that the engine does not know is told, saved as it came and calculated anew elsewhere', async () => {
  const file = new ExcelJS.Workbook();
  const sheet = file.addWorksheet('A');
  const formulas = ['_xlfn.LET(_xlpm.x,2,_xlpm.x*3)', '_xlfn.IFS(TRUE,"IFS(x)")', 'SUM(1,2)', '1/0'];
  formulas.forEach((formula, index) => {
    sheet.getCell(index + 1, 1).value = { formula, result: index === 3 ? { error: '#DIV/0!' } : 6 };
  });
  const bytes = await bytesOf(file);
  expect(await lossOf(bytes)).toBe('1 formula of this file shows an error here and is saved unchanged.');
  const saved = await (await openWorkbook(bytes)).toXlsx();
  const column = (await fileOf(saved)).worksheets[0]!;
  expect(formulas.map((_, index) => column.getCell(index + 1, 1).formula)).toEqual(formulas);
  expect((await zipParts(saved)).get('xl/workbook.xml')).toContain('fullCalcOnLoad="1"');
});

test('text set higher, turned or indented stays so; other ways to place it are told by cells', async () => {
  const file = new ExcelJS.Workbook();
  const sheet = file.addWorksheet('A');
  const kept: Partial<ExcelJS.Alignment>[] = [
    { vertical: 'top' },
    { vertical: 'middle', horizontal: 'center', wrapText: true },
    { textRotation: 90 },
    { textRotation: -45 },
    { horizontal: 'left', indent: 2 },
    { vertical: 'bottom' },
  ];
  kept.forEach((alignment, index) => {
    sheet.getCell(index + 1, 1).value = 'x';
    sheet.getCell(index + 1, 1).alignment = alignment;
  });
  const bytes = await bytesOf(file);
  expect(await lossOf(bytes)).toBe('');
  const saved = (await fileOf(await (await openWorkbook(bytes)).toXlsx())).worksheets[0]!;
  kept.forEach((alignment, index) => {
    expect(saved.getCell(index + 1, 1).alignment).toEqual(alignment);
  });
  sheet.getCell('B1').alignment = { textRotation: 'vertical' };
  sheet.getCell('B2').alignment = { horizontal: 'center', shrinkToFit: true };
  sheet.getCell('B3').alignment = { vertical: 'justify' };
  expect(await lossOf(await bytesOf(file))).toBe(
    'Not carried over from this file: 3 cells with stacked, spread or shrunk text. ' +
      'They will be missing if you save it from here.',
  );
});

test('a check for whole numbers stays one, until another check stands there', async () => {
  const file = new ExcelJS.Workbook();
  const sheet = file.addWorksheet('A');
  const whole = { type: 'whole', operator: 'between', formulae: [1, 9] } as const;
  sheet.getCell('A1').value = 'Head';
  sheet.getCell('B1').dataValidation = { ...whole, formulae: [...whole.formulae] };
  sheet.getCell('B2').dataValidation = { type: 'decimal', operator: 'between', formulae: [1, 9] };
  const bytes = await bytesOf(file);
  const book = await openWorkbook(bytes);
  expect(await lossOf(bytes)).toBe('');
  const saved = (await fileOf(await book.toXlsx())).worksheets[0]!;
  expect(saved.getCell('B1').dataValidation).toMatchObject(whole);
  expect(saved.getCell('B2').dataValidation).toMatchObject({ ...whole, type: 'decimal' });
  const weaker = new ExcelJS.Workbook();
  const other = weaker.addWorksheet('A');
  other.getCell('B1').dataValidation = { type: 'decimal', operator: 'between', formulae: [1, 9] };
  other.getCell('B2').dataValidation = { type: 'decimal', operator: 'between', formulae: [1, 9] };
  expect((await notCarried(bytes, await bytesOf(weaker))).counts).toEqual({ validation: 1 });
});

test('heights of rows, page setup and well hidden tabs are told', async () => {
  const file = new ExcelJS.Workbook();
  const sheet = file.addWorksheet('A', { properties: { defaultRowHeight: 15.75 } });
  for (const row of [1, 2, 3]) sheet.getCell(row, 1).value = 'x';
  // As high as every row of the tab.
  sheet.getRow(1).height = 15.75;
  file.addWorksheet('Hidden', { state: 'hidden' });
  expect(await lossOf(await bytesOf(file))).toBe('');
  sheet.getRow(2).height = 40;
  sheet.getRow(3).height = 41;
  sheet.pageSetup.orientation = 'landscape';
  file.addWorksheet('Codes', { state: 'veryHidden' });
  expect(await lossOf(await bytesOf(file))).toBe(
    'Not carried over from this file: 1 tab that programs do not offer to show (kept as a hidden one), ' +
      '2 rows with heights of their own, 1 page setup of a tab. They will be missing if you save it from here.',
  );
});

test.each<[string, Partial<ExcelJS.PageSetup>, number | undefined]>([
  ['upright, 100 %', { orientation: 'portrait', scale: 100, paperSize: 9 }, undefined],
  ['across', { orientation: 'landscape' }, 1],
  ['smaller', { scale: 80 }, 1],
  ['on one page', { fitToPage: true, fitToWidth: 1, fitToHeight: 1 }, 1],
  ['an area to be printed', { printArea: 'A1:B2' }, 1],
  ['rows on each page', { printTitlesRow: '1:1' }, 1],
  // As LibreOffice writes them unasked, read from a file of its version 7.
  [
    'usual margins',
    {
      margins: {
        left: 0.7875,
        right: 0.7875,
        top: 1.05277777777778,
        bottom: 1.05277777777778,
        header: 0.7875,
        footer: 0.7875,
      },
    },
    undefined,
  ],
  [
    'narrow margins',
    { margins: { left: 0.25, right: 0.25, top: 0.75, bottom: 0.75, header: 0.3, footer: 0.3 } },
    1,
  ],
])('page setup: %s', async (_, setup, lost) => {
  const file = new ExcelJS.Workbook();
  const sheet = file.addWorksheet('Herd');
  sheet.getCell('A1').value = 'x';
  Object.assign(sheet.pageSetup, setup);
  const bytes = await bytesOf(file);
  const { counts } = await notCarried(bytes, await (await openWorkbook(bytes)).toXlsx());
  expect(counts).toEqual(lost === undefined ? {} : { pageSetup: lost });
});

test('parts that ExcelJS leaves out are seen in the file itself', () => {
  const relations = (...targets: [type: string, target: string][]) =>
    `<Relationships>${targets
      .map(
        ([type, target], index) =>
          `<Relationship Id="r${index}" Type="http://x/${type}" Target="${target}"/>`,
      )
      .join('')}</Relationships>`;
  const parts = new Map([
    [
      'xl/workbook.xml',
      '<workbook><sheets><sheet name="A" sheetId="7" r:id="r0"/></sheets><definedNames>' +
        '<definedName name="HERD">A!$A$1</definedName><definedName name="_xlnm.Print_Area">A!$A$1</definedName>' +
        '</definedNames></workbook>',
    ],
    ['xl/_rels/workbook.xml.rels', relations(['worksheet', 'worksheets/sheet1.xml'])],
    ['xl/worksheets/_rels/sheet1.xml.rels', relations(['table', '../tables/table1.xml'])],
    [
      'xl/worksheets/sheet1.xml',
      '<worksheet><cols><col min="2" max="3" hidden="1"/></cols><sheetData><row r="1" outlineLevel="1"><c r="A1">' +
        '<f t="array" ref="A1:A2">ROW(A1:A2)</f><v>1</v></c><c r="B1" t="inlineStr"><is><r><rPr><b/></rPr>' +
        '<t>x</t></r></is></c></row></sheetData><hyperlinks><hyperlink ref="D4" location="B!A1"/></hyperlinks>' +
        '<headerFooter><oddHeader>Farm</oddHeader></headerFooter><extLst><x14:dataValidation type="list">' +
        '<x14:formula1><xm:f>B!A1:A3</xm:f></x14:formula1><xm:sqref>C1:C9</xm:sqref></x14:dataValidation>' +
        '<x14:sparkline><xm:f>A1:A9</xm:f><xm:sqref>E1</xm:sqref></x14:sparkline></extLst></worksheet>',
    ],
    ['xl/tables/table1.xml', ''],
    ['xl/charts/chart1.xml', ''],
    ['xl/charts/colors1.xml', ''],
    ['xl/drawings/drawing1.xml', '<xdr:wsDr><xdr:pic></xdr:pic><xdr:sp></xdr:sp></xdr:wsDr>'],
    ['xl/pivotTables/pivotTable1.xml', ''],
    ['xl/vbaProject.bin', ''],
  ]);
  const kinds = fileContents(parts).items.map(({ kind, place }) => `${kind} ${place}`);
  expect(kinds.sort()).toEqual(
    [
      'arrayFormula A1',
      'chart xl/charts/chart1.xml',
      'formula A1',
      'group A1',
      'hiddenColumn column 2',
      'hiddenColumn column 3',
      'link D4',
      'list C1:C9',
      'macros xl/vbaProject.bin',
      'name HERD',
      'pageSetup A1',
      'picture xl/drawings/drawing1.xml 0',
      'pivot xl/pivotTables/pivotTable1.xml',
      'printing A1',
      'richText B1',
      'shape xl/drawings/drawing1.xml 0',
      'sparkline <xm:f>A1:A9</xm:f><xm:sqref>E1</xm:sqref>',
      'table xl/tables/table1.xml',
    ].sort(),
  );
});

test('the sample farms lose nothing', async () => {
  const { readFile, readdir } = await import('node:fs/promises');
  const names = (await readdir('sample-sheets')).filter((name) => name.endsWith('.xlsx'));
  expect(names.length).toBeGreaterThan(0);
  for (const name of names) {
    const { counts } = await notCarried(
      await readFile(`sample-sheets/${name}`),
      await (await openWorkbook(await readFile(`sample-sheets/${name}`))).toXlsx(),
    );
    expect([name, counts]).toEqual([name, {}]);
  }
});
