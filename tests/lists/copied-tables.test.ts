/** Copies of our own tables are no lists of the grower's: a copied tab has lost the name of the block. */
import { describe, expect, it } from 'vitest';
import type { TabContent, WireCell } from '../../shared/contract';
import { findLists } from '../../shared/lists/find-lists';
import { copiedMovesNotes } from '../../shared/lists/own-headings';
import { COLUMNS, headingOf } from '../../shared/table/columns';
import { STAY_HEADINGS } from '../../shared/tasks/budget/stay-columns';

function tabOf(name: string, values: WireCell[][]): TabContent {
  return { name, values, formulas: values.map((row) => row.map(() => '')) };
}

const land = tabOf('Land', [
  ['Paddock', 'Area (ha)'],
  ['North', 1],
]);
const headings = COLUMNS.map((column) => headingOf(column, 'metric'));
const moves = tabOf('Copy of Rotation', [
  ['Moves of pigs'],
  [],
  headings,
  headings.map((_, i) => (i < 2 ? `name ${i}` : 1)),
  headings.map((_, i) => (i < 2 ? `name ${i}` : 1)),
]);
const stays = tabOf('Copy of Budget', [[...STAY_HEADINGS], STAY_HEADINGS.map((_, i) => (i < 2 ? 'x' : 1))]);

describe('a copied tab', () => {
  it('is not read as a list, and the list is', () => {
    const found = findLists([moves, stays, land]);
    expect(found.map(({ kind, tab, items }) => ({ kind, tab, items }))).toEqual([
      { kind: 'paddocks', tab: 'Land', items: 1 },
    ]);
  });

  it('is named where it holds moves', () => {
    expect(copiedMovesNotes([moves, stays, land], [])).toEqual([
      '“Copy of Rotation” holds a rotation table without its name, as a copied tab does (headings in row 3). It is not read as a list and cannot be written anew: bring the tab that it was copied from back, or write a new table.',
    ]);
  });

  it('is told to count for nothing where the table itself is in the file', () => {
    const itself = { name: 'SOUNDER_ROTATION', tab: 'Rotation', row: 1, column: 1, rows: 5, columns: 9 };
    expect(copiedMovesNotes([moves, land], [itself], true)).toEqual([
      '“Copy of Rotation” holds another rotation table, a copy or an earlier one (headings in row 3). What is typed there does not count.',
    ]);
  });

  it('offers no list where it says where its lists stand', () => {
    const words = [
      'Paddock list',
      'Land',
      'headings in row 1, list in rows 2 to 9',
      'name = A: Paddock',
      'area = B: Area',
    ];
    expect(findLists([tabOf('Copy of Rotation', [...moves.values, words, ['x', 'y', 'z', 1, 2]])])).toEqual(
      [],
    );
  });

  it('is told from the table itself, and lists beside that are found', () => {
    const block = { name: 'SOUNDER_ROTATION', tab: 'Copy of Rotation', row: 1, column: 1, rows: 5 };
    const own = [{ ...block, columns: headings.length }];
    expect(copiedMovesNotes([moves], own)).toEqual([]);
    const values = moves.values.map((row, r) => [
      ...row,
      ...new Array<WireCell>(headings.length - row.length + 1).fill(''),
      ...(r === 2 ? ['Paddock', 'Area'] : r === 3 ? ['North', 1] : ['', '']),
    ]);
    expect(findLists([tabOf('Copy of Rotation', values)], own).map(({ columns }) => columns)).toEqual([
      { name: headings.length + 2, area: headings.length + 3 },
    ]);
  });
});
