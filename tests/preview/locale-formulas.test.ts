/**
 * Formulas in locales. Public reports agree that `;` works everywhere and that `,` between arguments fails where the
 * comma is the decimal sign; the details are from memory.
 */
import { describe, expect, test } from 'vitest';
import { openWorkbook } from '../../src/headless';
import { toEngineFormula, toSheetsFormula } from '../../src/preview/engine/formula-text';
import { localeOf } from '../../src/preview/engine/locale';

describe('with a decimal point', () => {
  test('both separators work and read back as commas', async () => {
    const book = await openWorkbook({ tabs: { A: [] } });
    book.range('A', 'A1:B1').setFormulas([['=SUM(1;2)', '=SUM(1,2)']]);
    expect(book.values('A')).toEqual([[3, 3]]);
    expect(book.formulas('A')).toEqual([['=SUM(1,2)', '=SUM(1,2)']]);
  });
});

describe('with a decimal comma', () => {
  test('the semicolon works, a comma between arguments is a formula parse error', async () => {
    const book = await openWorkbook({ tabs: { A: [[2]] }, locale: 'de_DE' });
    book.range('A', 'B1:E1').setFormulas([['=SUM(A1;2)', '=SUM(A1,A1)', '=A1*1,5', '=A1*1.5']]);
    expect(book.values('A')[0]).toEqual([2, 4, '#ERROR!', 3, '#ERROR!']);
    expect(book.message('A', 'C1')).toBe('Formula parse error.');
    expect(book.formulas('A')[0]).toEqual(['', '=SUM(A1;2)', '=SUM(A1,A1)', '=A1*1,5', '=A1*1.5']);
  });

  test('typed numbers and dates are read by the locale', async () => {
    const book = await openWorkbook({
      tabs: { A: [['1,5', '1.000,5', '1.4.2026', '2026-04-01', '1,5%']] },
      locale: 'de_DE',
    });
    const april = new Date('2026-04-01T00:00:00Z');
    expect(book.values('A')).toEqual([[1.5, 1000.5, april, april, 0.015]]);
    expect(book.shownValues('A')[0]?.[0]).toBe('1,5');
  });
});

test.each([
  ['=IF(A1="";"a;b";"c,d")', '=IF(A1="","a;b","c,d")'],
  ['=IF(A1="x""y";1;2)', '=IF(A1="x\\"y",1,2)'],
  ["='O''Brien; x'!A1", "='O''Brien; x'!A1"],
  ['=SUM({1,5\\2;3\\4})', '=SUM({1.5,2;3,4})'],
])('%s crosses to the engine and back', (sheets, engine) => {
  expect(toEngineFormula(sheets, true)).toBe(engine);
  expect(toSheetsFormula(engine, true)).toBe(sheets);
});

test('a quote inside a text is one quote in the cell', async () => {
  const book = await openWorkbook({ tabs: { A: [['="say ""oink"""']] } });
  expect(book.value('A', 'A1')).toBe('say "oink"');
  expect(book.formula('A', 'A1')).toBe('="say ""oink"""');
});

test.each([
  // Separators and orders as the Unicode CLDR gives them.
  ['en_US', '.', ',', 'm/d/yyyy'],
  ['en_GB', '.', ',', 'dd/mm/yyyy'],
  ['de_DE', ',', '.', 'd.m.yyyy'],
  ['fr_FR', ',', ' ', 'dd/mm/yyyy'],
  ['sv_SE', ',', ' ', 'yyyy-mm-dd'],
  ['ar_EG', '.', ',', 'd/m/yyyy'],
])('%s', (code, decimal, thousands, date) => {
  const locale = localeOf(code);
  expect([locale.decimalSeparator, locale.thousandsSeparator, locale.dateFormat]).toEqual([
    decimal,
    thousands,
    date,
  ]);
});
