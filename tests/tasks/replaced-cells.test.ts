/** Values of a table that give way to others are named. No source: invented tables. */
import { describe, expect, it } from 'vitest';
import { BLANK, date, formula, number, text } from '../../shared/block/cells';
import type { BlockContent } from '../../shared/block/read-block';
import type { WireCell } from '../../shared/contract';
import { replacedCells } from '../../shared/tasks/replaced-cells';

function content(values: readonly (readonly WireCell[])[]): BlockContent {
  const info = { name: 'SOUNDER_X', tab: 'X', row: 11, column: 2, rows: values.length, columns: 4 };
  return { info, values, formulas: values.map((row) => row.map(() => '')) };
}

const NEXT = [
  [text('Stays of the lists, 7 days each.'), BLANK, BLANK, BLANK],
  [text('Hot day'), number(32), text('°C'), text('Your own.')],
  [text('Reds'), text('Oak'), date(20_000), number(7)],
  [text('Blacks'), text('Hill'), date(20_007), formula('=D14+1')],
];

describe('replacedCells', () => {
  it('names another name, date and number in a row that stands again', () => {
    const old = content([
      ['Stays of the lists, 7 days each.', '', '', ''],
      ['Hot day', 32, '°C', 'Your own.'],
      ['Reds', 'Creek', { d: '2024-10-05' }, 9],
      ['Blacks', 'Hill', { d: '2024-10-11' }, 5],
    ]);
    // 4 October 2024 is day 20,000 after 1 January 1970 (54 years of 365 days, 13 leap days, 277 days).
    expect(replacedCells(old, NEXT)).toEqual(['C13 (“Creek”)', 'D13 (2024-10-05)', 'E13 (9)']);
  });

  it('names a name that stands in no row any more, and one of which there are fewer', () => {
    const old = content([
      ['Reds', 'Oak', '', ''],
      ['Reds', 'Oak', '', ''],
      ['ring Bea', 'Hill', '', ''],
    ]);
    expect(replacedCells(old, NEXT)).toEqual(['B12 (“Reds”)', 'B13 (“ring Bea”)']);
  });

  it('leaves out sentences that stand alone, settings, and cells that functions fill', () => {
    const old = content([
      ['Stays of the lists, 5 days each.', '', '', ''],
      ['Hot day', 35, '°C', 'Your own.'],
      ['Blacks', 'Hill', { d: '2024-10-11' }, 12],
      ['posts', 8, '', ''],
      ['clips', 16, '', ''],
    ]);
    const formulas = old.formulas.map((row, r) => (r === 3 ? ['=PEN()', '', '', ''] : row));
    expect(replacedCells({ ...old, formulas }, NEXT)).toEqual([]);
  });
});
