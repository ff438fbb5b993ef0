/** Calls of menu items and the sidebar: scope, boundary, counting, made failures, locks, protection. */
import { describe, expect, test } from 'vitest';
import { openWorkbook } from '../../src/headless';
import { codeJs, sidebarHtml } from './fixture';

const open = () =>
  openWorkbook({
    tabs: { A: [['old', 1]] },
    codeJs,
    sidebarHtml,
    modes: { lateRefusals: 'no' },
  });
const write = { rows: [['new', 2]] };

describe('scope', () => {
  test('every call starts afresh, and nothing of a browser or of Node is there', async () => {
    const book = await open();
    expect([book.call('countCalls'), book.call('countCalls')]).toEqual([1, 1]);
    expect(book.call('whatIsThere')).toBe(Array(9).fill('undefined').join());
  });

  test('menus, sidebar and alerts are shown', async () => {
    const book = await open();
    book.call('onOpen');
    book.call('openSidebar');
    book.call('sayHello');
    expect(book.shown.menus[0]?.caption).toBe('Fixture');
    expect(book.shown.sidebars[0]).toEqual({ title: 'Fixture', content: sidebarHtml });
    expect(book.shown.alerts).toEqual([{ title: 'Hello', text: 'From the script', buttons: 'OK' }]);
  });

  test('private and unknown functions cannot be called', async () => {
    const book = await open();
    expect(() => book.call('hidden_')).toThrow('Script function not found: hidden_');
    expect(() => book.host.callFromPage('nothing', [])).toThrow('Script function not found: nothing');
  });
});

describe('the page boundary', () => {
  test('JSON text passes both ways', async () => {
    const book = await open();
    expect(book.ask('overview')).toEqual({
      ok: true,
      data: { title: 'Untitled spreadsheet', activeCell: 'A1' },
    });
    expect(book.ask('nope')).toEqual({ ok: false, error: 'unknown call nope' });
  });

  test.each([
    ['a Date', [new Date()], '0'],
    ['a function', [{ inner: () => 1 }], '0.inner'],
    ['undefined inside', [[1, undefined]], '0.1'],
    ['NaN', ['x', Number.NaN], '1'],
  ])('%s as an argument is refused', async (_what, values, path) => {
    const book = await open();
    expect(() => book.host.callFromPage('answerSidebar', values)).toThrow(
      `Failed due to illegal value in property: ${path}`,
    );
  });

  test('a Date in a result gives the page null', async () => {
    expect((await open()).host.callFromPage('returnDate', [])).toBeNull();
  });
});

describe('counting and failing', () => {
  test('each service call of the script counts once; reading for the test does not', async () => {
    const book = await open();
    book.values('A');
    book.ask('write', write);
    expect(book.callCounts).toEqual({
      'SpreadsheetApp.getActiveSpreadsheet': 1,
      'Spreadsheet.getSheets': 1,
      'Sheet.getRange': 1,
      'Range.setValues': 1,
    });
    expect(book.callTotal).toBe(4);
    book.resetCounts();
    expect(book.callTotal).toBe(0);
  });

  test('each call in turn can fail before it takes effect', async () => {
    for (let index = 0; index < 4; index += 1) {
      const book = await open();
      book.failOn(index, 'made to fail');
      expect(book.ask('write', write)).toEqual({ ok: false, error: 'made to fail' });
      expect(book.values('A')).toEqual([['old', 1]]);
      book.clearFailures();
      expect(book.ask('write', write)).toEqual({ ok: true, data: null });
      expect(book.values('A')).toEqual([['new', 2]]);
    }
  });

  test('by name, after taking effect, and for good', async () => {
    const book = await open();
    book.failOn('setValues', 'too late', { after: true });
    expect(book.ask('write', write)).toEqual({ ok: false, error: 'too late' });
    expect(book.values('A')).toEqual([['new', 2]]);
    book.clearFailures();
    book.failOn('Spreadsheet.getSheets', 'Exceeded maximum execution time', { forGood: true });
    book.ask('write', write);
    expect(() => book.range('A', 'A1').setValue(1)).toThrow('Exceeded maximum execution time');
  });

  test('a protected range, a held lock', async () => {
    const book = await open();
    book.protectByOther('A', 'B1:B2');
    expect(book.ask('write', write)).toEqual({
      ok: false,
      error: expect.stringContaining('You are trying to edit a protected cell or object.'),
    });
    expect(book.values('A')).toEqual([['old', 1]]);
    expect(() => book.range('A', 'A1').setValue('free')).not.toThrow();
  });
});
