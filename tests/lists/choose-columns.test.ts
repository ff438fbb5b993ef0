/** Columns that compete for one field: the better by words and content is taken, and a close choice is asked. */
import { describe, expect, test } from 'vitest';
import { dayFromIso } from '../../shared/core/calendar/day';
import { columnDoubts } from '../../shared/lists/column-doubts';
import { findLists } from '../../shared/lists/find-lists';
import { withColumn } from '../../shared/lists/list-columns';
import { tab } from './books/book';

const TODAY = dayFromIso('2026-04-20')!;

function found(rows: (string | number)[][]) {
  const sheet = tab('Book', rows);
  return { sheet, list: findLists([sheet], [], TODAY)[0]! };
}

describe('a metric New Zealand book', () => {
  const { list } = found([
    ['Mob', 'Hd', 'Avg kg', 'Works weight', 'Weighed', 'Paddock', 'In since', 'Off to works'],
    ['Blacks', 14, 38, 95, '10/04/26', 'Rata', '12/04/26', '20/09/26'],
    ['Spots', 9, 61, 95, '10/04/26', 'Kauri', '14/04/26', '01/07/26'],
  ]);

  test('takes the weight of now for the weight, and that of the works for the end', () => {
    expect(list.columns).toEqual({
      name: 1,
      head: 2,
      weight: 3,
      untilWeight: 4,
      weighedOn: 5,
      paddock: 6,
      since: 7,
      until: 8,
    });
    expect(list.doubts).toEqual([]);
  });

  test('knows when pigs were last there', () => {
    const land = found([
      ['Paddock', 'Ha', 'Last had pigs', 'Fence'],
      ['Rata', 0.8, '12/01/26', 'two wires'],
      ['Kauri', 1.1, '03/02/26', 'netting'],
    ]);
    expect(land.list.columns).toEqual({ name: 1, area: 2, lastUsed: 3 });
  });
});

test.each([
  ['Weight at arrival (kg)', 'Weight now (kg)', 4],
  ['Einstallgewicht kg', 'Gewicht aktuell kg', 4],
  ['Poids moyen (kg)', 'Poids total (kg)', 3],
  ['Peso objetivo (kg)', 'Peso medio (kg)', 4],
  ['Slaktvikt kg', 'Medelvikt kg', 4],
])('%s beside %s: column %i', (first, second, column) => {
  const { list } = found([
    ['Group', 'Head', first, second],
    ['Reds', 12, 55, 56],
    ['Blues', 9, 48, 49],
  ]);
  expect(list.columns).toMatchObject({ weight: column });
  expect(list.doubts).toEqual([]);
});

describe('two weights that are as good', () => {
  const { sheet, list } = found([
    ['Group', 'Head', 'Weight A (kg)', 'Weight B (kg)'],
    ['Reds', 12, 30, 55],
    ['Blues', 9, 28, 48],
  ]);

  test('are asked, with what stands in them', () => {
    expect(columnDoubts(sheet, list).map(({ sentence }) => sentence)).toEqual([
      'Book!C1: which is the weight, “Weight A (kg)” (30 · 28) or “Weight B (kg)” (55 · 48)?',
    ]);
  });

  test('are asked no more once one is chosen', () => {
    for (const column of [3, 4]) expect(columnDoubts(sheet, withColumn(list, 'weight', column))).toEqual([]);
  });

  test('a column without figures is no rival', () => {
    const { list: one } = found([
      ['Group', 'Head', 'Weight A (kg)', 'Weight B (kg)'],
      ['Reds', 12, '', 55],
      ['Blues', 9, '', 48],
    ]);
    expect(one.columns).toMatchObject({ weight: 4 });
    expect(one.doubts).toEqual([]);
  });
});
