import { describe, expect, it } from 'vitest';
import { shiftFormula } from '../../shared/table/shift-formula';

describe('shiftFormula', () => {
  // What copying a cell three rows down does in every spreadsheet: relative rows move, the rest stays.
  it.each([
    ['=E12*2', '=E15*2'],
    ['=$E12+E$12+$E$12', '=$E15+E$12+$E$12'],
    ['=SUM(A1:B2;C3)', '=SUM(A4:B5;C6)'],
    ['="A1"&A1&"say ""B2"""', '="A1"&A4&"say ""B2"""'],
    ["='It''s A1'!B2+Other!C3:C4+D5", "='It''s A1'!B2+Other!C3:C4+D8"],
    ['=LOG10(A1)+ATAN2(B1;C1)', '=LOG10(A4)+ATAN2(B4;C4)'],
    ['=A1_total+XA1B+SEASON1', '=A1_total+XA1B+SEASON1'],
    ['=1E5+A1', '=1E5+A4'],
  ])('%s', (before, after) => {
    expect(shiftFormula(before, 3)).toBe(after);
  });

  it('stays where a row would be above the first', () => {
    expect(shiftFormula('=A1+A5', -3)).toBe('=A1+A2');
  });
});
