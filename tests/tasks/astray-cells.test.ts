/** Which formulas of the grower's mean another row once a block is written anew. Rows are counted by hand. */
import { describe, expect, test } from 'vitest';
import { BLANK, date, formula, number, text } from '../../shared/block/cells';
import type { PointingCell } from '../../shared/block/pointing-cells';
import type { BlockContent } from '../../shared/block/read-block';
import type { BlockCell } from '../../shared/contract';
import { astrayCells } from '../../shared/tasks/astray-cells';

const TOP = 3;

/** A block whose first column holds these values, or formulas that show them. */
function block(
  ...firsts: (string | number | { d: string } | { shown: string; formula: string })[]
): BlockContent {
  const info = { name: 'SOUNDER_X', tab: 'Farm', row: TOP, column: 2, rows: firsts.length, columns: 2 };
  return {
    info,
    values: firsts.map((first) => [typeof first === 'object' && 'shown' in first ? first.shown : first, 1]),
    formulas: firsts.map((first) => [typeof first === 'object' && 'shown' in first ? first.formula : '', '']),
  };
}

function cells(...firsts: BlockCell[]): BlockCell[][] {
  return firsts.map((first) => [first, number(1)]);
}

/** The rows, from 0 in the block, that a formula pointing at each alone finds moved. */
function moved(old: BlockContent, next: BlockCell[][]): number[] {
  const pointing = old.values.map((_, r) => at(String(r), r));
  return astrayCells(pointing, old, next).map(Number);
}

function at(cell: string, first: number, last = first, reaches = last): PointingCell {
  return { cell, firstRow: TOP + first, lastRow: TOP + last, reachesRow: TOP + reaches };
}

const OLD = block('Materials', 'Posts', '', 'Total', 'Gap');
const LONGER = cells(text('Materials'), text('Posts'), BLANK, BLANK, text('Total'), text('Gap'));

describe('rows that have moved', () => {
  test('none where everything stands again', () => {
    const same = cells(text('Materials'), text('Posts'), BLANK, text('Total'), text('Gap'));
    expect(moved(OLD, same)).toEqual([]);
  });

  test('those below a new row, not those above it', () => {
    expect(moved(OLD, LONGER)).toEqual([3, 4]);
  });

  test('a label that is gone, with the rows of no label under it', () => {
    expect(moved(OLD, cells(text('Materials'), text('Poles'), BLANK, text('Total'), text('Gap')))).toEqual([
      1, 2,
    ]);
  });

  test('a row of no label whose place a labelled one takes', () => {
    expect(moved(OLD, cells(text('Materials'), text('Posts'), text('Total'), text('Gap')))).toEqual([
      2, 3, 4,
    ]);
  });

  test('the first row never, whatever its title is now', () => {
    const other = cells(text('Fence'), text('Posts'), BLANK, text('Total'), text('Gap'));
    expect(moved(OLD, other)).toEqual([]);
  });

  test('the second of two alike is told from the first', () => {
    const twice = block('Stays', 'Sows', 'Barrows', 'Sows');
    expect(moved(twice, cells(text('Stays'), text('Sows'), text('Sows'), text('Barrows')))).toEqual([2, 3]);
  });

  test('rows with a day or a number go with the label above', () => {
    const log = block('Log', 'Day', { d: '2026-04-01' }, 7);
    expect(moved(log, cells(text('Log'), text('Day'), date(20544), number(7)))).toEqual([]);
    expect(moved(log, cells(text('Log'), text('Hint'), text('Day'), date(20544), number(7)))).toEqual([
      1, 2, 3,
    ]);
  });

  test('a label by formula stays with the same formula, however the sheet writes it', () => {
    const linked = block(
      'Stays',
      { shown: 'Sows', formula: '=Rotation!A12' },
      { shown: 'Gilts', formula: '=Rotation!A13' },
    );
    expect(
      moved(linked, cells(text('Stays'), formula("='Rotation'!A12"), formula("='Rotation'!A13"))),
    ).toEqual([]);
    expect(
      moved(linked, cells(text('Stays'), formula("='Rotation'!A12"), formula("='Rotation'!A14"))),
    ).toEqual([2]);
    expect(moved(linked, cells(text('Stays'), text('Sows'), text('Barrows')))).toEqual([2]);
  });
});

describe('cells that point at another row', () => {
  test('a range counts by its first and last row, and each cell is named once', () => {
    const pointing = [at('A', 1, 2), at('B', 1, 3), at('C', 3, 4), at('C', 3), at('D', 0)];
    expect(astrayCells(pointing, OLD, LONGER)).toEqual(['B', 'C']);
  });

  test('a range that ends below the block only has to hold the new one', () => {
    // The new block ends one row further down, in its row 5.
    const pointing = [
      at('open', 1, 4, Number.POSITIVE_INFINITY),
      at('enough', 0, 4, 5),
      at('its end', 0, 4, 4),
      at('begins at the total', 3, 4, 100),
    ];
    expect(astrayCells(pointing, OLD, LONGER)).toEqual(['its end', 'begins at the total']);
    const farLonger = [...LONGER, ...cells(text('More'), text('Still more'))];
    expect(astrayCells([at('enough', 0, 4, 5)], OLD, farLonger)).toEqual(['enough']);
  });
});
