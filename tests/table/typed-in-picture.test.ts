/** A season picture is drawn anew as a whole, so what was typed into it must be told. */
import { describe, expect, it } from 'vitest';
import type { WireCell } from '../../shared/contract';
import { typedInPicture } from '../../shared/table/typed-in-picture';

describe('what was typed into a picture', () => {
  const info = { name: 'SOUNDER_SEASON', tab: 'Season', row: 1, column: 1, rows: 5, columns: 3 };
  const values: WireCell[][] = [
    ['Paddocks by week, 2026-04-06 to 2026-04-19', '', ''],
    ['A Reds, B Blacks; · no pigs, × closed all week', '', ''],
    ['Week from', { d: '2026-04-06' }, { d: '2026-04-13' }],
    ['North', 'A', '·'],
    ['South', 'B 27', '×'],
  ];
  const blank = values.map((row) => row.map(() => ''));

  it('is told from marks, weeks and names', () => {
    expect(typedInPicture({ info, values, formulas: blank })).toEqual([]);
    const typed = values.map((row) => [...row]);
    typed[0]![0] = 'My season';
    typed[1]![1] = 'seen by Jo';
    typed[3]![2] = 'rain';
    typed[4]![1] = 12;
    expect(typedInPicture({ info, values: typed, formulas: blank })).toEqual([
      'A1 (“My season”)',
      'B2 (“seen by Jo”)',
      'C4 (“rain”)',
      'B5 (“12”)',
    ]);
  });
});
