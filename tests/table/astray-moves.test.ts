/** Formulas elsewhere that will point at another move are named before the table is built anew. */
import { describe, expect, test } from 'vitest';
import type { PointingCell } from '../../shared/block/pointing-cells';
import { astrayMoves } from '../../shared/table/astray-moves';
import type { OldRow } from '../../shared/table/model';
import type { TableRow } from '../../shared/table/table-rows';

/** Title, hint and a line in rows 1 to 3, headings in 4, moves in 6 to 9, settings in 11 to 20. */
const INFO = { name: 'T', tab: 'Moves', row: 1, column: 1, rows: 20, columns: 12 };
const SETTINGS = Array.from({ length: 10 }, (_, i) => `setting ${i}`);
const OLD = {
  info: INFO,
  headRows: 3,
  rows: [6, 7, 8, 9].map((sheetRow) => ({ sheetRow }) as OldRow),
  firstColumn: [...Array<string>(10).fill(''), ...SETTINGS],
};

/** New moves, each with the row where it stood before, and the settings a blank row below them. */
const moves = (...from: readonly (number | undefined)[]) => ({
  rows: from.map((sheetRow) => ({ ...(sheetRow !== undefined && { kept: { sheetRow } }) }) as TableRow),
  firstColumn: [...Array<string>(6 + from.length).fill(''), ...SETTINGS],
});

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

  test('are named where a line kept below the moves pushes the settings down', () => {
    const { rows, firstColumn } = moves(6, 7, 8, 9);
    const pushed = [...firstColumn.slice(0, 10), 'Kept', 'a line', '', ...SETTINGS];
    expect(astrayMoves([at(7), at(12), at(6, 9), at(14, 16)], OLD, { rows, firstColumn: pushed })).toEqual([
      'Sums!B12',
      'Sums!B14',
    ]);
  });
});
