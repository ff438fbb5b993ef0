/** Notes typed into the budget are private as those of the other tables are. No source: an invented budget. */
import { expect, it } from 'vitest';
import type { WireCell } from '../../../shared/contract';
import { BUDGET_BLOCK, LOAD_HEADINGS } from '../../../shared/tasks/budget/budget-block';
import { findPrivate } from '../../../shared/tasks/share/find-private';

it('finds the notes beside the paddocks of a budget, and nothing below them', () => {
  const at = LOAD_HEADINGS.indexOf('Typed note');
  const row = (first: string, note: string): WireCell[] =>
    LOAD_HEADINGS.map((_, c) => (c === 0 ? first : c === at ? note : ''));
  const values: WireCell[][] = [
    row('Feed and water', ''),
    [...LOAD_HEADINGS],
    row('Oak', ''),
    row('Creek', 'bought of a neighbour'),
    row('Settings', ''),
    row('Hot day', 'no note of a paddock'),
  ];
  const info = { name: BUDGET_BLOCK, tab: 'Feed', row: 3, column: 2, rows: 6, columns: values[0]!.length };
  const formulas = values.map((cells) => cells.map(() => ''));
  const [found, ...others] = findPrivate([{ info, values, formulas }]);
  expect(others).toEqual([]);
  expect(found).toMatchObject({ kind: 'notes', filled: 1, area: { tab: 'Feed', row: 6, rows: 1 } });
  expect(found?.area.column).toBe(2 + at);
});
