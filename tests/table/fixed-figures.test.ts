/** Figures of a list that a table cannot look up are told. No source: an invented list. */
import { describe, expect, it } from 'vitest';
import type { WireCell } from '../../shared/contract';
import type { GrowerList } from '../../shared/lists/model';
import { fixedFiguresNotes } from '../../shared/table/fixed-figures';

const LIST = {
  kind: 'paddocks',
  tab: 'Land',
  headingRow: 1,
  firstRow: 2,
  lastRow: 5,
  columns: { name: 1, area: 2, openFrom: 3 },
  units: {},
} as unknown as GrowerList;

function notes(
  rows: readonly (readonly WireCell[])[],
  list = LIST,
  formulaAt: Record<string, string> = {},
): readonly string[] {
  const values = [['Paddock', 'Area', 'Open from'], ...rows].map((row) => [...row]);
  const formulas = values.map((row) => row.map((_, c) => formulaAt[`${row[0]} ${c}`] ?? ''));
  return fixedFiguresNotes({ tab: { name: 'Land', values, formulas }, list }, 'US');
}

describe('figures that reach a table as fixed values', () => {
  it('are none where numbers and dates are plain, blanks among them', () => {
    expect(
      notes([
        ['Oak', 0.4, { d: '2026-05-01' }],
        ['Creek', 0.5, ''],
      ]),
    ).toEqual([]);
  });

  it('are texts, and all of a name that cannot be looked up', () => {
    const [note = '', ...others] = notes([
      ['Oak', '0,4', { d: '2026-05-01' }],
      ['Creek', 0.5, 'May 1'],
      [3, 0.6, ''],
      ['New*', 0.7, { d: '2026-05-01' }],
    ]);
    expect(others).toEqual([]);
    expect(note).toContain(': Land!B2, Land!C3, Land!B4, Land!B5, Land!C5.');
  });

  it('are all of a column in which one changes with NOW() or RAND()', () => {
    const made = (formula: string): readonly string[] =>
      notes(
        [
          ['Oak', 0.4, ''],
          ['Creek', 0.5, ''],
        ],
        LIST,
        { 'Creek 1': formula },
      );
    for (const formula of ['=NOW()-46000', '=0.3+rand()/9', '=RANDBETWEEN(1;9)/9']) {
      expect(made(formula).join()).toContain(': Land!B2, Land!B3.');
    }
    for (const formula of ['=TODAY()-46000', '=SNOW(1)+BRAND(2)', '=ROUND(D1;0)'])
      expect(made(formula)).toEqual([]);
  });

  it('are those in another unit than the table', () => {
    const inHectares = { ...LIST, units: { area: 'ha' } } as unknown as GrowerList;
    expect(notes([['Oak', 0.4, '']], inHectares).join()).toContain(': Land!B2.');
  });
});
