/** Undo and redo in the preview: as in Sheets (from memory) all that one call of the script wrote is one step. */
import { describe, expect, test } from 'vitest';
import { openWorkbook, type Workbook } from '../../src/headless';

const codeJs = `
function makeTable() {
  const book = SpreadsheetApp.getActiveSpreadsheet();
  const sheet = book.insertSheet('Table');
  sheet.getRange(1, 1, 3, 2).setValues([['Paddock', 'Days'], ['North', 4], ['South', '=B2*2']]);
  sheet.getRange('A1:B1').setBackground('#ffff00').setFontWeight('bold');
  sheet.getRange('B2:B3').setNumberFormat('0.00');
  sheet.setFrozenRows(1);
  sheet.setColumnWidth(1, 200);
  book.setNamedRange('TABLE', sheet.getRange('A1:B3'));
  const list = book.getSheetByName('List');
  list.insertRowsBefore(1, 2);
  list.getRange('A1').setValue('From the script');
  list.getRange('A1:C1').merge();
}
function writeOften() {
  const list = SpreadsheetApp.getActiveSpreadsheet().getSheetByName('List');
  for (let row = 1; row <= 150; row += 1) list.getRange(row, 5).setValue(row);
}
function failHalfway() {
  SpreadsheetApp.getActiveSpreadsheet().getSheetByName('List').getRange('A1').setValue('half');
  throw new Error('no further');
}
function writeNothing() {}
`;

const open = (): Promise<Workbook> =>
  openWorkbook({
    codeJs,
    tabs: {
      List: [
        ['North', 1, '=B1+1'],
        ['South', 2],
      ],
    },
    names: { HERD: 'List!A1:B2' },
  });

/** All that the engine would save, without its counter of changes. */
function contents(book: Workbook): unknown {
  const { revisionId: _, ...rest } = structuredClone(book.state.book.snapshot()) as Record<string, unknown>;
  return rest;
}

function undo(book: Workbook): boolean {
  return book.state.book.run({ type: 'REQUEST_UNDO' }).isSuccessful;
}
function redo(book: Workbook): boolean {
  return book.state.book.run({ type: 'REQUEST_REDO' }).isSuccessful;
}

describe('one call of the script is one step', () => {
  test('undo takes the whole table back, redo makes it again, with its values', async () => {
    const book = await open();
    const before = contents(book);
    book.call('makeTable');
    const after = contents(book);
    expect(book.value('Table', 'B3')).toBe(8);
    expect(undo(book)).toBe(true);
    expect(contents(book)).toEqual(before);
    expect(book.values('List')[0]).toEqual(['North', 1, 2]);
    expect(redo(book)).toBe(true);
    expect(contents(book)).toEqual(after);
    expect(book.value('Table', 'B3')).toBe(8);
    expect(undo(book)).toBe(true);
    expect(contents(book)).toEqual(before);
  });

  test('what was typed before and after stays a step of its own', async () => {
    const book = await open();
    book.type('List', 'B1', '5');
    book.call('makeTable');
    book.type('List', 'B4', '7');
    expect(book.value('List', 'C3')).toBe(6);
    undo(book);
    expect(book.value('List', 'B4')).toBe(2);
    expect(book.value('List', 'A1')).toBe('From the script');
    undo(book);
    expect(book.values('List')[0]).toEqual(['North', 5, 6]);
    undo(book);
    expect(book.values('List')[0]).toEqual(['North', 1, 2]);
  });

  test('two calls are two steps, and a call that writes nothing is none', async () => {
    const book = await open();
    book.call('makeTable');
    book.call('writeOften');
    book.call('writeNothing');
    undo(book);
    expect(book.value('List', 'E1')).toBe('');
    expect(book.value('List', 'A1')).toBe('From the script');
    book.type('List', 'D9', 'new');
    undo(book);
    undo(book);
    expect(book.value('List', 'A1')).toBe('North');
  });

  test('more writes than the engine keeps steps are taken back as well', async () => {
    const book = await open();
    const before = contents(book);
    book.call('writeOften');
    expect(book.value('List', 'E150')).toBe(150);
    undo(book);
    expect(contents(book)).toEqual(before);
  });

  test('a call that failed is taken back as far as it came', async () => {
    const book = await open();
    expect(() => book.call('failHalfway')).toThrow('no further');
    expect(book.value('List', 'A1')).toBe('half');
    book.type('List', 'A2', 'typed');
    undo(book);
    expect(book.value('List', 'A1')).toBe('half');
    undo(book);
    expect(book.value('List', 'A1')).toBe('North');
  });
});
