/** Which formulas of the grower's mean another row once a block is written anew. Rows are counted by hand. */
import { describe, expect, test } from 'vitest';
import { RECORD_ID } from '../../shared/block/compose-block';
import type { PointingCell } from '../../shared/block/pointing-cells';
import type { BlockContent } from '../../shared/block/read-block';
import { astrayCells } from '../../shared/tasks/merge/astray-cells';

/** A block from row 1, whose rows have these ids; undefined for a row that was put in. */
function block(...ids: (string | undefined)[]): BlockContent {
  return {
    info: { name: 'SOUNDER_X', tab: 'Farm', row: 1, column: 2, rows: ids.length, columns: 2 },
    values: [],
    formulas: [],
    memory: {
      kind: 'X',
      stamp: 'a',
      rows: ids.map((id) => (id === undefined ? undefined : { stamp: 'a', id, marks: [] })),
    },
  };
}

/** Sheet rows, from 1, that a formula pointing at each alone finds moved. */
function moved(old: BlockContent, ids: string[]): number[] {
  const pointing = Array.from({ length: old.info.rows }, (_, r) => at(r + 1));
  return astrayCells(pointing, old, ids).map((cell) => Number(cell.slice(1)));
}

const at = (firstRow: number, lastRow = firstRow, reachesRow = lastRow): PointingCell => ({
  cell: `B${firstRow}`,
  firstRow,
  lastRow,
  reachesRow,
});

describe('rows that have moved', () => {
  const OLD = block('Materials', 'Posts', 'Posts+1', 'Total', 'Gap');

  test('none where everything stands again', () => {
    expect(moved(OLD, ['Materials', 'Posts', 'Posts+1', 'Total', 'Gap'])).toEqual([]);
  });

  test('those below a new row, not those above it', () => {
    expect(moved(OLD, ['Materials', 'Posts', 'Posts+1', 'Posts+2', 'Total', 'Gap'])).toEqual([4, 5]);
  });

  test('those that are gone, and one that was put in', () => {
    expect(moved(OLD, ['Materials', 'Poles', 'Poles+1', 'Total', 'Gap'])).toEqual([2, 3]);
    expect(moved(block('Materials', undefined, 'Posts'), ['Materials', 'Posts'])).toEqual([2, 3]);
  });

  test('the first row never, whatever its title is now', () => {
    expect(moved(OLD, ['Fence', 'Posts', 'Posts+1', 'Total', 'Gap'])).toEqual([]);
  });

  test('a range counts by its first and last row, and each cell is named once', () => {
    const longer = ['Materials', 'Posts', 'Posts+1', 'Posts+2', 'Total', 'Gap'];
    expect(astrayCells([at(2, 3), at(1, 4), at(4, 5), at(4), at(1)], OLD, longer)).toEqual(['B1', 'B4']);
  });

  test('a range that ends below the block has to hold the new one', () => {
    const longer = ['Materials', 'Posts', 'Posts+1', 'Posts+2', 'Total', 'Gap'];
    expect(astrayCells([at(2, 5, Number.POSITIVE_INFINITY)], OLD, longer)).toEqual([]);
    expect(astrayCells([at(1, 5, 6)], OLD, longer)).toEqual([]);
    expect(astrayCells([at(4, 5, 100)], OLD, longer)).toEqual(['B4']);
    expect(astrayCells([at(1, 5, 6)], OLD, [...longer, 'More', 'Still more'])).toEqual(['B1']);
  });
});

/** Title, hint and a line in rows 1 to 3, headings in 4, records in 6 to 9, settings in 11 to 20. */
describe('cells that point at records', () => {
  const around = (records: readonly string[]): string[] => [
    ...['=1', '=2', '=3', '=headings', '=anchor'],
    ...records.map((id) => RECORD_ID + id),
    '=space',
    ...Array.from({ length: 10 }, (_, i) => `$${i}`),
  ];
  const OLD = block(...around(['6', '7', '8', '9']));

  test('are fine where every record stays in its row', () => {
    const same = around(['6', '7', '8', '9']);
    expect(astrayCells([at(6), at(9), at(7, 8), at(6, 9), at(15)], OLD, same)).toEqual([]);
  });

  test('are named where their record goes to another row or is gone', () => {
    const swapped = around(['6', '8', '7', '9']);
    expect(astrayCells([at(6), at(7), at(8), at(6, 7)], OLD, swapped)).toEqual(['B7', 'B8', 'B6']);
    expect(astrayCells([at(9)], OLD, around(['6', '7', '8', 'new']))).toEqual(['B9']);
  });

  test('over all records must hold all of the new ones, and no settings', () => {
    for (const records of [
      ['6', '7', '8', '9', 'new'],
      ['6', '7', '8'],
    ]) {
      const next = around(records);
      expect(astrayCells([at(6, 9)], OLD, next)).toEqual(['B6']);
      expect(astrayCells([at(5, 20, 500)], OLD, next)).toEqual([]);
      expect(astrayCells([at(12)], OLD, next)).toEqual(['B12']);
      expect(astrayCells([at(1), at(4)], OLD, next)).toEqual([]);
    }
  });
});
