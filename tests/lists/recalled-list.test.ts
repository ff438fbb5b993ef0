/** A list is found again by the words of its headings, wherever rows and columns were put in since. */
import { describe, expect, test } from 'vitest';
import type { WireCell } from '../../shared/contract';
import { findLists } from '../../shared/lists/find-lists';
import { withColumn } from '../../shared/lists/list-columns';
import { lostHeadings } from '../../shared/lists/lost-headings';
import type { FoundList, GrowerList } from '../../shared/lists/model';
import { headingTexts, recalledList } from '../../shared/lists/recalled-list';
import { savedLists } from '../../shared/table/saved-lists';
import { tab } from '../sidebar/fake-sheet';

const ROWS: WireCell[][] = [
  ['Strip', 'Acres', 'Days to grow back', 'Rest days'],
  ['One', 0.6, 50, 30],
  ['Two', 0.5, 60, 35],
];

function found(rows: readonly (readonly WireCell[])[]): FoundList[] {
  return findLists([tab('Fields', rows)]).filter(({ kind }) => kind === 'paddocks');
}

/** As a table remembers it: without headings, by letters and words. */
function remembered(list: FoundList): GrowerList {
  const { kind, tab: name, headingRow, firstRow, lastRow, columns, units } = list;
  return {
    kind,
    tab: name,
    headingRow,
    firstRow,
    lastRow,
    columns,
    units,
    texts: headingTexts(list),
  } as GrowerList;
}

describe('a list used before', () => {
  const chosen = withColumn(found(ROWS)[0]!, 'restDays', 3);

  test('keeps a column chosen by hand', () => {
    expect(chosen.columns).toMatchObject({ name: 1, area: 2, restDays: 3 });
    expect(recalledList(found(ROWS), remembered(chosen))?.columns).toEqual(chosen.columns);
    expect(recalledList(found(ROWS), chosen)?.columns).toEqual(chosen.columns);
  });

  // 2026-11: a column put into the list made the next reading take gates for acres and acres for days of rest.
  test.each(['remembered', 'chosen here'])('follows a column that was put in (%s)', (how) => {
    const wider = ROWS.map((row, r) => [row[0]!, r === 0 ? 'Gates' : r, ...row.slice(1)]);
    const before = how === 'remembered' ? remembered(chosen) : chosen;
    expect(recalledList(found(wider), before)?.columns).toEqual({ name: 1, area: 3, restDays: 4 });
  });

  // 2026-11: open dates put into the list after the table was built were never read.
  test('takes in a column under a heading of ours, unless it was left out on the page', () => {
    const shut = ROWS.map((row, r) => [...row, r === 0 ? 'Open from' : { d: '2026-05-01' }]);
    expect(recalledList(found(shut), remembered(chosen))?.columns).toEqual({
      ...chosen.columns,
      openFrom: 5,
    });
    expect(recalledList(found(shut), chosen)?.columns).toEqual(chosen.columns);
    const other = shut.map((row, r) => (r === 0 ? [...row.slice(0, 4), 'Opens'] : row));
    expect(recalledList(found(other), remembered(chosen))?.columns).toEqual(chosen.columns);
  });

  test('follows rows put in above, and takes a heading that is gone as found', () => {
    const lower = [['Our land', '', '', ''], ...ROWS];
    expect(recalledList(found(lower), remembered(chosen))).toMatchObject({
      headingRow: 2,
      columns: chosen.columns,
    });
    const renamed = [['Strip', 'Hectares', 'Days to grow back', 'Rest days'], ...ROWS.slice(1)];
    const now = recalledList(found(renamed), remembered(chosen));
    expect(now).toMatchObject({ columns: chosen.columns, units: { area: 'ha' } });
  });

  // 2026-11: a tab that got another name made the page forget which heading was the day of arrival.
  test('is found on a tab that has another name by now', () => {
    expect(recalledList(found(ROWS), { ...remembered(chosen), tab: 'Elsewhere' })).toMatchObject({
      tab: 'Fields',
      columns: chosen.columns,
    });
    const little = [
      ['Strip', 'Hectares', 'Days'],
      ['One', 1, 2],
      ['Two', 1, 2],
    ];
    expect(recalledList(found(little), { ...remembered(chosen), tab: 'Elsewhere' })).toBeUndefined();
  });

  test('says which heading it misses', () => {
    const renamed = [['Strip', 'Acres', 'Weeks to grow back', 'Notes'], ...ROWS.slice(1)];
    const [now] = found(renamed);
    expect(lostHeadings(remembered(chosen), recalledList(found(renamed), remembered(chosen)))).toEqual([
      expect.stringContaining('The heading “Days to grow back” stood for “rest”'),
    ]);
    expect(lostHeadings(remembered(chosen), chosen)).toEqual([]);
    expect(lostHeadings(undefined, now)).toEqual([]);
    expect(lostHeadings({ ...remembered(chosen), tab: 'Before' }, chosen)).toEqual([
      'The table was made from the list on “Before”; that on “Fields” is read now.',
    ]);
  });

  test('without any of its headings, is another list', () => {
    const other = [
      ['Paddock', 'Area (ac)'],
      ['Ash', 1],
      ['Elm', 2],
    ];
    expect(recalledList(found([['', ''], ...other]), remembered(chosen))).toBeUndefined();
  });

  test('stands in the settings with its words', () => {
    const values = [
      'Fields',
      'headings in row 1, list in rows 2 to 3',
      'name = A: Strip',
      'area = B, ac: Acres: ours',
      'restDays = C',
    ];
    expect(savedLists(new Map([['paddockList', { values } as never]])).paddocks).toMatchObject({
      columns: { name: 1, area: 2, restDays: 3 },
      units: { area: 'ac' },
      texts: { name: 'Strip', area: 'Acres: ours' },
    });
  });
});
