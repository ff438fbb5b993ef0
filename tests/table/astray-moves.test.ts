/** Formulas elsewhere that will point at another move are named before the table is built anew. */
import { describe, expect, test } from 'vitest';
import type { PointingCell } from '../../shared/block/pointing-cells';
import { astrayMoves } from '../../shared/table/astray-moves';

/** Title, hint and a line in rows 1 to 3, headings in 4, moves in 6 to 9, settings in 11 to 20. */
const INFO = { name: 'T', tab: 'Moves', row: 1, column: 1, rows: 20, columns: 12 };
const HEAD = ['=1', '=2', '=3', '=headings', '=anchor'];
const SETTINGS = Array.from({ length: 10 }, (_, i) => `$${i}`);
const idsOf = (moves: readonly string[]): string[] => [...HEAD, ...moves, '=space', ...SETTINGS];
const OLD = {
  info: INFO,
  values: [],
  formulas: [],
  memory: {
    kind: 'ROTATION',
    stamp: 'a',
    rows: idsOf(['#6', '#7', '#8', '#9']).map((id) => ({ stamp: 'a', id, marks: [] })),
  },
};

/** Ids of the rows of the new table: moves, each with the row where it stood before. */
const moves = (...from: readonly (number | undefined)[]) =>
  idsOf(from.map((sheetRow, i) => (sheetRow === undefined ? `#new ${i}` : `#${sheetRow}`)));

const at = (firstRow: number, lastRow = firstRow, reachesRow = lastRow): PointingCell => ({
  cell: `Sums!B${firstRow}`,
  firstRow,
  lastRow,
  reachesRow,
});

describe('cells that point at moves', () => {
  test('are fine where every move stays in its row', () => {
    expect(astrayMoves([at(6), at(9), at(7, 8), at(6, 9), at(15)], OLD, moves(6, 7, 8, 9))).toEqual([]);
  });

  test('are named where their move goes to another row or is gone', () => {
    const swapped = moves(6, 8, 7, 9);
    expect(astrayMoves([at(6), at(7), at(8), at(6, 7)], OLD, swapped)).toEqual([
      'Sums!B7',
      'Sums!B8',
      'Sums!B6',
    ]);
    expect(astrayMoves([at(9)], OLD, moves(6, 7, 8, undefined))).toEqual(['Sums!B9']);
  });

  test('over all moves must hold all of the new ones, and no settings', () => {
    const longer = moves(6, 7, 8, 9, undefined);
    const shorter = moves(6, 7, 8);
    for (const rows of [longer, shorter]) {
      expect(astrayMoves([at(6, 9)], OLD, rows)).toEqual(['Sums!B6']);
      expect(astrayMoves([at(5, 20, 500)], OLD, rows)).toEqual([]);
      expect(astrayMoves([at(12)], OLD, rows)).toEqual(['Sums!B12']);
      expect(astrayMoves([at(1), at(4)], OLD, rows)).toEqual([]);
    }
  });
});
