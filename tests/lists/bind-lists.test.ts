/** What was worked out from a list is not written once the list stands otherwise in the sheet. */
import { describe, expect, test } from 'vitest';
import type { TabContent, WholeFile, WireCell } from '../../shared/contract';
import { bindLists } from '../../shared/lists/bind-lists';
import { findLists } from '../../shared/lists/find-lists';
import type { ListSource, PaddockList } from '../../shared/lists/model';
import { tab } from '../sidebar/fake-sheet';

const ROWS: WireCell[][] = [
  ['Strip', 'Acres', 'Gates'],
  ['One', 0.6, 1],
  ['Two', 0.5, 2],
];

function bookOf(...tabs: TabContent[]) {
  const overview = {
    blocks: [],
    tabs: [],
    locale: 'en_US',
    today: '2026-05-01',
  } as unknown as WholeFile['overview'];
  return { overview, tabs };
}

function sourceOf(rows: readonly (readonly WireCell[])[]): ListSource<PaddockList> {
  const content = tab('Fields', rows);
  const [list] = findLists([content]).filter(({ kind }) => kind === 'paddocks');
  if (!list) throw new Error('No list found in the test’s own rows.');
  return { tab: content, list: list as unknown as PaddockList };
}

describe('a list as the page read it', () => {
  const source = sourceOf(ROWS);
  const refusal = (rows: readonly (readonly WireCell[])[]): string => {
    try {
      bindLists({ paddocks: source }, bookOf(tab('Fields', rows)));
      return '';
    } catch (error) {
      return (error as Error).message;
    }
  };

  test('may stand as it did, and elsewhere on its tab', () => {
    expect(refusal(ROWS)).toBe('');
    expect(refusal([['Our land', '', ''], ...ROWS])).toBe('');
    expect(refusal(ROWS.map((row) => ['', ...row]))).toBe('');
  });

  test('may change in columns that are not read', () => {
    expect(refusal([...ROWS.slice(0, 2), ['Two', 0.5, 9]])).toBe('');
  });

  test('names the cells that changed', () => {
    expect(refusal([...ROWS.slice(0, 2), ['Two', 0.8, 2]])).toContain('Your lists have changed: Fields!B3.');
    expect(refusal([...ROWS, ['Three', 0.7, 2]])).toContain('Your lists have changed: Fields!A4, Fields!B4.');
    expect(refusal(ROWS.slice(0, 2))).toContain('Your lists have changed: Fields!A3, Fields!B3.');
  });

  test('that is gone, or has lost a heading, is told by its heading', () => {
    expect(refusal([['Strip'], ['One']])).toContain('Your lists have changed: Fields!A1.');
    expect(() => bindLists({ paddocks: source }, bookOf())).toThrow('Your lists have changed: Fields!A1.');
  });
});
