/** The nasty habits of the real service that the stand-in can be given: each on and off. */
import { describe, expect, test } from 'vitest';
import { openWorkbook, type WorkbookOptions } from '../../src/headless';
import { codeJs } from './fixture';

const open = (modes: WorkbookOptions['modes'] = {}, rows: unknown[][] = [['old', 1]]) =>
  openWorkbook({
    tabs: { A: rows as string[][], Chart: [] },
    codeJs,
    modes: { lateRefusals: 'no', loadingReads: 0, ...modes },
  });

describe('writes that are refused late', () => {
  const protectedRefusal = /You are trying to edit a protected cell/;

  test('at once: the write itself throws', async () => {
    const book = await open();
    book.protectByOther('A', 'B1');
    expect(book.call('writeThenFlush', 'A1:B1', [['new', 2]])).toMatch(/^You are trying/);
  });

  test('told late: the write passes, flush throws, nothing was written', async () => {
    const book = await open({ lateRefusals: 'told' });
    book.protectByOther('A', 'B1');
    expect(book.call('writeThenFlush', 'A1:B1', [['new', 2]])).toMatch(/^written; You are trying/);
    expect(book.values('A')).toEqual([['old', 1]]);
  });

  test('told late: the next read throws, and what was queued behind is dropped', async () => {
    const book = await open({ lateRefusals: 'told' });
    book.failOn('setValues');
    expect(() => book.call('writeThenRead', 'A1:B1', [['new', 2]])).toThrow('Service Spreadsheets failed');
    expect(book.values('A')).toEqual([['old', 1]]);
    expect(book.range('A', 'B1').getNumberFormat()).not.toBe('0.0');
  });

  test('told late: with nothing to wait for, the end of the script throws', async () => {
    const book = await open({ lateRefusals: 'told' });
    book.protectByOther('A');
    expect(() => book.call('writeOnly')).toThrow(protectedRefusal);
  });

  test('lost: nobody is told', async () => {
    const book = await open({ lateRefusals: 'lost' });
    book.protectByOther('A', 'B1');
    expect(book.call('writeThenFlush', 'A1:B1', [['new', 2]])).toBe('written; flushed');
    expect(book.values('A')).toEqual([['old', 1]]);
  });
});

describe('a call that is killed', () => {
  // Calls of writeOnly: active spreadsheet, its tab, a range, setValues.
  test.each([
    ['before', 'old'],
    ['after', 'new'],
  ] as const)('%s it took effect', async (how, left) => {
    const book = await open();
    book.resetCounts();
    book.killAt(3, how);
    expect(() => book.call('writeOnly')).toThrow('Service Spreadsheets failed');
    expect(book.value('A', 'A1')).toBe(left);
    book.call('writeOnly');
    expect(book.value('A', 'A1')).toBe('new');
  });

  test('for good: no later call works either', async () => {
    const book = await open();
    book.resetCounts();
    book.killAt(1, 'for good');
    expect(() => book.call('writeOnly')).toThrow('Service Spreadsheets failed');
    expect(() => book.call('writeOnly')).toThrow('Service Spreadsheets failed');
  });
});

describe('answers that are still loading', () => {
  test('are seen for as many reads as asked for, in spilled cells too, and then the answers', async () => {
    const book = await open({ loadingReads: 1 }, [[1], [2]]);
    const seen = book.call('writeThenRead', 'B1:B2', [['=DOUBLE_TEST(A1:A2)'], ['']]);
    expect(seen).toEqual(['[["Loading..."],["Loading..."]]', '[[2],[4]]']);
  });

  test('may never come', async () => {
    const book = await open({ loadingReads: Number.POSITIVE_INFINITY }, [[1]]);
    const seen = book.call('writeThenRead', 'B1', [['=DOUBLE_TEST(A1)']]);
    expect(seen).toEqual(['[["Loading..."]]', '[["Loading..."]]']);
  });

  test('are no matter where no cell function was written', async () => {
    const book = await open({ loadingReads: 9 }, [[1]]);
    expect(book.call('writeThenRead', 'B1', [['=A1*2']])).toEqual(['[[2]]', '[[2]]']);
  });
});

test('a chart tab has a type and no cells', async () => {
  const book = await open();
  book.makeChartTab('Chart');
  const tab = book.spreadsheet.getSheetByName('Chart')!;
  expect(tab.getType()).toBe('OBJECT');
  expect(book.spreadsheet.getSheetByName('A')!.getType()).toBe('GRID');
  for (const read of [() => tab.getDataRange(), () => tab.getLastRow(), () => tab.getRange(1, 1)]) {
    expect(read).toThrow('not supported for OBJECT sheet');
  }
});

test('a typed column takes values and no number formats', async () => {
  const book = await open();
  book.typeColumns('A', 'A1:A5');
  book.range('A', 'A1').setValue('text');
  expect(() => book.range('A', 'A3:B3').setNumberFormat('0.0')).toThrow(
    "You can't set the number format of cells in a typed column.",
  );
  book.range('A', 'B1').setNumberFormat('0.0');
});

test('the format of an automatic cell, set as it was read, is no longer automatic; General is', async () => {
  const book = await open();
  const cell = book.range('A', 'D1');
  expect(cell.getNumberFormat()).toBe('0.###############');
  cell.setNumberFormat(cell.getNumberFormat());
  book.type('A', 'D1', '2026-04-21');
  // 2026-04-21 is day 46133 from 1899-12-30, where Sheets' serial numbers begin.
  expect(book.shownValues('A')[0]?.[3]).toMatch(/^46133/);
  cell.setNumberFormat('General');
  book.type('A', 'D1', '2026-04-21');
  expect(book.value('A', 'D1')).toEqual(new Date('2026-04-21T00:00:00Z'));
});

test.each([
  [true, '0.00'],
  [false, '0.###############'],
])('cleared formats leave the number format: %s', async (clearFormatKeepsNumberFormats, left) => {
  const book = await open({ clearFormatKeepsNumberFormats });
  const cell = book.range('A', 'B1').setNumberFormat('0.00').setFontWeight('bold');
  for (const cleared of [cell.clearFormat(), cell.clear()]) {
    expect([cleared.getNumberFormat(), cleared.getFontWeights()[0]?.[0]]).toEqual([left, 'normal']);
  }
});

describe('blank references', () => {
  const rows = [['', '=A1', '=INDEX(A1:A2,1)', '=ISNUMBER(B1)', '=IF(B1="","none",1)', '=B1+1']];

  test('not kept: 0', async () => {
    expect((await open({ blankStaysBlank: false }, rows)).values('A')[0]?.slice(1, 4)).toEqual([0, 0, true]);
  });

  test('plain: kept blank, also for formulas that look there, and in a copy of the file', async () => {
    const book = await open({}, rows);
    const blank = [['', '', '', false, 'none', 1]];
    expect(book.values('A')).toEqual(blank);
    expect((await book.copy()).values('A')).toEqual(blank);
    book.type('A', 'A1', '7');
    expect(book.values('A')).toEqual([[7, 7, 7, true, 1, 8]]);
  });
});

describe('SUMPRODUCT over text', () => {
  // 2 × 3 by hand where the row with text is left out; text times a number is an error.
  const rows = [
    [2, 3, '=SUMPRODUCT(A1:A2*B1:B2)', '=SUMPRODUCT(A1:A1;B1:B1)'],
    ['text', 4],
  ];
  test('lenient: leaves the row out', async () => {
    expect((await open({ sumproductPassesErrors: false }, rows)).values('A')[0]).toEqual([2, 3, 6, 6]);
  });
  test('plain: passes the error on', async () => {
    expect((await open({}, rows)).values('A')[0]).toEqual([2, 3, '#VALUE!', 6]);
  });
});

describe('onEdit', () => {
  test('runs after a typed edit with what was typed and what stood there', async () => {
    const book = await open();
    book.type('A', 'A1', 'stamp me');
    expect(book.values('A')).toEqual([['stamp me', 'was old']]);
  });

  test('does not run for what a script writes', async () => {
    const book = await open();
    book.range('A', 'A1').setValue('stamp me');
    expect(book.value('A', 'B1')).toBe(1);
  });
});

test('waits are reads and flush; places and queued writes are none', async () => {
  const book = await open();
  book.resetCounts();
  book.call('writeThenFlush', 'A1:B1', [['new', 2]]);
  // Seen by Google: the tab by its name, flush.
  expect(book.waits).toBe(2);
  book.call('writeThenRead', 'A1:B1', [['new', 2]]);
  // The tab and two readings.
  expect(book.waits).toBe(5);
});
