/** From what is typed in the form to the formula and the answer. Expected values by hand. */
import { describe, expect, test } from 'vitest';
import { CATALOGUE } from '../../shared/catalogue';
import { decimalComma } from '../../shared/locale/decimal-comma';
import { numberLiteral } from '../../shared/locale/number-literal';
import { readAmount } from '../../shared/locale/read-amount';
import { readTyped } from '../../shared/locale/read-typed';
import { type Argument, fromSelection } from '../../src/sidebar/panels/formulas/argument';
import { findFunctions } from '../../src/sidebar/panels/formulas/find-functions';
import { formulaText } from '../../src/sidebar/panels/formulas/formula-text';
import { cutOut, parseReference } from '../../src/sidebar/panels/formulas/reference';
import { workOut } from '../../src/sidebar/panels/formulas/work-out';

function typed(...texts: string[]): Argument[] {
  return texts.map((text) => ({ from: 'typed', text }));
}
const TO_SHEET = { separator: ';', comma: true } as const;

describe('numbers', () => {
  test('a decimal comma is asked of the locale', () => {
    expect(['en_US', 'de_DE', 'fr_FR', 'en_GB', 'nonsense locale'].map(decimalComma)).toEqual([
      false,
      true,
      true,
      false,
      true,
    ]);
  });

  test.each([
    [5, '5'],
    [-5, '-5'],
    [5.333, '5333/1000'],
    [0.05, '5/100'],
    [-0.5, '-5/10'],
    [1.724e-8, '1724/100000000000'],
    [1e21, '1000000000000000000000'],
    [1.5e21, '1500000000000000000000'],
  ])('%d is written as whole numbers', (value, literal) => {
    expect(numberLiteral(value, true)).toBe(literal);
    const [top, bottom = '1'] = literal.split('/');
    expect(Number(top) / Number(bottom)).toBeCloseTo(value, 12);
  });

  test.each([
    ['5,5', true, 5.5, '55/10'],
    ['5.5', true, 5.5, '55/10'],
    ['5.5', false, 5.5, '5.5'],
    ['16/3', false, 16 / 3, '16/3'],
    ['75%', false, 0.75, '0.75'],
    ['75%', true, 0.75, '75/100'],
    ['true', false, true, 'TRUE'],
    ['high-tensile "HT"', false, 'high-tensile "HT"', '"high-tensile ""HT"""'],
  ])('%s (comma %s)', (text, comma, value, literal) => {
    expect(readTyped(text, comma)).toEqual({ value, literal });
  });

  test('what may be a thousand or a thousandth is not guessed', () => {
    expect(readTyped('1,320', false)).toEqual({ problem: 'write 1320, without a sign between thousands' });
    expect(readTyped('1.320', true)).toEqual({ problem: 'write 1320, without a sign between thousands' });
    expect(readTyped('1,234.5', false)).toEqual({
      problem: 'write 1234.5, without a sign between thousands',
    });
    expect(readTyped('1.234,5', true)).toEqual({ problem: 'write 1234,5, without a sign between thousands' });
  });

  test.each([
    ['10', '%', 10],
    ['10 %', '%', 10],
    ['7.5%', '%', 7.5],
    ['', '%', undefined],
    ['25', 'ft', 25],
  ])('a field takes %s in %s', (text, unit, value) => {
    expect(readAmount(text, false, unit)).toEqual({ value });
  });

  test.each(['20%', '0,5 m', '½', '1 234', '1.2.3'])('a field refuses %s and says what came', (text) => {
    expect(readAmount(text, false, 'ft')).toEqual({ problem: `be a number, got “${text}”` });
  });
});

describe('the formula', () => {
  test('blanks in the middle stay, blanks at the end go', () => {
    expect(formulaText('FENCE_VOLTAGE', typed('8000', '300', '500', '4', '', '500'), TO_SHEET)).toBe(
      '=FENCE_VOLTAGE(8000;300;500;4;;500)',
    );
    expect(formulaText('FENCE_LENGTH', typed('200', '300', ''), TO_SHEET)).toBe('=FENCE_LENGTH(200;300)');
  });

  test('references go in as they are, also of tabs with awkward names', () => {
    const selection = {
      tab: "Bea's land",
      a1: 'B2:B9',
      row: 2,
      column: 2,
      rows: 8,
      columns: 1,
      values: [[1]],
    };
    expect(formulaText('X', [fromSelection(selection), ...typed('$C$2', "'My tab'!A:A")], TO_SHEET)).toBe(
      "=X('Bea''s land'!B2:B9;$C$2;'My tab'!A:A)",
    );
  });

  test('text never becomes anything else', () => {
    expect(formulaText('X', typed('=1+1', '-', 'copper'), TO_SHEET)).toBe('=X("=1+1";"-";"copper")');
  });
});

describe('references', () => {
  test.each([
    ['B5', { top: 4, left: 1, bottom: 4, right: 1 }],
    ['$B$5:AA7', { top: 4, left: 1, bottom: 6, right: 26 }],
    ['C:C', { top: 0, left: 2, right: 2 }],
    ['C2:C', { top: 1, left: 2, right: 2 }],
    ["'It''s'!A1", { tab: "It's", top: 0, left: 0, bottom: 0, right: 0 }],
  ])('%s', (text, reference) => {
    expect(parseReference(text)).toEqual(reference);
  });

  test.each(['US', 'copper', '5', '2026-04-20', '', 'A0', '16/3'])('%s is none', (text) => {
    expect(parseReference(text)).toBeUndefined();
  });

  test('an open end stops with the tab', () => {
    const cells = [
      ['a', 1],
      ['b', 2],
      ['c', 3],
    ];
    expect(cutOut(cells, parseReference('B2:B')!)).toEqual([[2], [3]]);
  });
});

describe('the answer in the page', () => {
  const entry = (name: string) => CATALOGUE.find((candidate) => candidate.name === name)!;

  test('waits until everything needed is filled in', () => {
    expect(workOut(entry('FENCE_LENGTH'), typed('200', '', ''), false)).toEqual({
      kind: 'unfinished',
      missing: ['length'],
    });
  });

  test('says to which field a refusal belongs', () => {
    const refused = workOut(entry('FENCE_LENGTH'), typed('200', '-1', ''), false);
    expect(refused).toMatchObject({ kind: 'refused', argument: 'length' });
  });

  test('every example of the catalogue gives its answer through the form', () => {
    for (const { name, params, examples } of CATALOGUE) {
      for (const { args, gives, tolerance } of examples) {
        const filled = params.map((_, i): Argument => {
          const arg = args[i];
          if (Array.isArray(arg)) return { from: 'cells', reference: 'A1:Z9', cells: arg };
          return { from: 'typed', text: arg === undefined ? '' : String(arg) };
        });
        const outcome = workOut(entry(name), filled, false);
        expect(outcome.kind, `${name} ${JSON.stringify(outcome)}`).toBe('answer');
        if (outcome.kind === 'answer' && typeof gives === 'number') {
          const off = Math.abs((outcome.answer as number) - gives);
          expect(off, name).toBeLessThanOrEqual(tolerance ?? Math.abs(gives) * 1e-9);
        }
      }
    }
  });
});

describe('finding a function', () => {
  const names = (search: string) =>
    findFunctions(CATALOGUE, search).flatMap(({ entries }) => entries.map(({ name }) => name));

  test('all of them without a search, each once', () => {
    expect(names('').sort()).toEqual(CATALOGUE.map(({ name }) => name).sort());
  });

  test('by words of name, summary or arguments', () => {
    expect(names('feed')).toContain('FEED_NEEDED');
    expect(names('fence length')).toContain('FENCE_LENGTH');
    expect(names('zebra')).toEqual([]);
  });

  // What each is for: the functions' own summaries in the contract.
  test.each([
    ['how much feed', 'FEED_NEEDED'],
    ['How many posts do I need?', 'POST_COUNT'],
    ['hot day', 'WATER_NEEDED'],
    ['how heavy', 'PIG_WEIGHT'],
    ['what do they weigh', 'PIG_WEIGHT'],
    ['manure', 'NUTRIENT_LOAD'],
    ['acres', 'BOUNDARY_AREA'],
    ['grass', 'REGROWTH_DAYS'],
    ['when to move', 'STAY_DAYS'],
    ['how high', 'STRAND_HEIGHTS'],
  ])('by everyday words: %s', (search, name) => {
    expect(names(search)).toContain(name);
    expect(names(search).length).toBeLessThan(10);
  });
});
