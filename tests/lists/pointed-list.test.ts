/** A list in words that are not known is pointed at with any of its cells. Invented, with Finnish headings. */
import { describe, expect, it } from 'vitest';
import { findLists } from '../../shared/lists/find-lists';
import type { GroupList, PaddockList } from '../../shared/lists/model';
import { pointedList } from '../../shared/lists/pointed-list';
import { readGroups } from '../../shared/lists/read-groups';
import { readPaddocks } from '../../shared/lists/read-paddocks';
import { tab } from './books/book';

const FARM = tab('Tila', [
  ['Lohkot ja siat'],
  [],
  ['Lohko', 'Ala', 'Huomio', '', 'Ryhmä', 'Määrä', 'Paino', 'Punnittu'],
  ['Koivikko', '0,4', 'kivinen', '', 'Kevät', 12, 31, '10.4.2026'],
  ['Ranta', '0,65', '', '', 'Syksy', 7, '74 kg', '10.4.2026'],
  [],
  ['Mäki', 0.5, 'jyrkkä'],
  ['Yhteensä', '=SUM(B4:B7)→1.55'],
]);

describe('a list that the grower points at', () => {
  it('is not found by its words', () => {
    expect(findLists([FARM])).toEqual([]);
  });

  it.each([
    [3, 1],
    [5, 2],
    [7, 3],
  ])('the paddocks, from the cell in row %i, column %i', (row, column) => {
    const list = pointedList('paddocks', FARM, { row, column })! as unknown as PaddockList;
    expect(list).toMatchObject({ headingRow: 3, columns: { name: 1, area: 2 }, missing: [], lastRow: 8 });
    const { paddocks, problems, leftOut } = readPaddocks(FARM, list, 'metric', true);
    expect(problems).toEqual([]);
    expect(paddocks.map(({ name, areaSquareMeters }) => [name, areaSquareMeters])).toEqual([
      ['Koivikko', 4000],
      ['Ranta', 6500],
      ['Mäki', 5000],
    ]);
    expect(leftOut).toEqual([{ cell: 'Tila!A8', text: 'Yhteensä' }]);
  });

  it('the groups beside them: heads are whole numbers, the number that is left is the weight', () => {
    const list = pointedList('groups', FARM, { row: 5, column: 6 })! as unknown as GroupList;
    expect(list.columns).toEqual({ name: 5, head: 6, weight: 7, weighedOn: 8 });
    const { groups, problems } = readGroups(FARM, list, 'metric', true, { order: 'dmy' });
    expect(problems).toEqual([]);
    expect(groups.map(({ name, head, weightKg }) => [name, head, weightKg])).toEqual([
      ['Kevät', 12, 31],
      ['Syksy', 7, 74],
    ]);
  });

  it('nothing is made up where no words stand above', () => {
    expect(
      pointedList(
        'paddocks',
        tab('T', [
          [1, 2],
          [3, 4],
        ]),
        { row: 2, column: 1 },
      ),
    ).toBeUndefined();
    expect(pointedList('paddocks', FARM, { row: 30, column: 1 })).toBeUndefined();
  });
});
