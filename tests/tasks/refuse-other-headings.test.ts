/** A heading that was typed over is named alone. No source: an invented table. */
import { describe, expect, it } from 'vitest';
import { BLANK, number, text } from '../../shared/block/cells';
import { composeBlock } from '../../shared/block/compose-block';
import type { WireCell } from '../../shared/contract';
import { refuseOtherHeadings } from '../../shared/tasks/refuse-other-headings';

const NEXT = composeBlock([
  { cells: [text('To buy')], style: 'title' },
  { cells: ['Item', 'Needed', 'On hand'].map(text), style: 'heading' },
  { cells: [text('Posts'), number(30), BLANK] },
]);

function refuse(...values: WireCell[][]): void {
  const info = { name: 'SOUNDER_X', tab: 'X', row: 5, column: 3, rows: values.length, columns: 3 };
  refuseOtherHeadings({ info, values, formulas: values.map((row) => row.map(() => '')) }, NEXT);
}

describe('headings of the table that stands', () => {
  it('are fine as they were written, with other rows between', () => {
    expect(() =>
      refuse(['To buy', '', ''], ['my own line', '', ''], ['Item', 'Needed', 'On hand'], ['Posts', 9, '']),
    ).not.toThrow();
  });

  it('are refused by cell where one was typed over', () => {
    expect(() => refuse(['To buy', '', ''], ['Item', 'How many', 'On hand'])).toThrow(
      'D6 must be the heading “Needed”, got “How many”. Put it back first. Nothing was written.',
    );
  });

  it('are left to the other checks where one is blank or several differ', () => {
    expect(() => refuse(['To buy', '', ''], ['Item', '', 'On hand'])).not.toThrow();
    expect(() => refuse(['To buy', '', ''], ['Thing', 'How many', 'On hand'])).not.toThrow();
  });
});
