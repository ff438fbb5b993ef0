/**
 * A weight that the list works out with NOW(): Google Sheets calls no cell function that refers to such a cell, directly
 * or through others (reports of its message), so the table takes the figure itself.
 */
import { expect, it, vi } from 'vitest';
import { openWorkbook, type StartCell } from '../../src/headless';
import { shownMoves } from '../hard-use/check-table';
import { buildRotation } from '../hard-use/rotation-task';
import { scriptText } from '../tasks/script-text';

vi.setConfig({ testTimeout: 120_000 });

// 2026-04-01 is day 46113 from 1899-12-30: 60 lb by that day.
const TABS: Record<string, StartCell[][]> = {
  Farm: [
    ['Paddock', 'Acres', '', 'Group', 'Head', 'Weight (lb)', 'Weighed on', 'ADG (lb/day)', 'Until'],
    ['North', 0.5, '', 'Reds', 10, '=INT(NOW())-46053', { d: '2026-04-01' }, 1.5, { d: '2026-04-30' }],
    ['South', 0.4],
    ['Oak', 0.6],
  ],
};

it('is written as a figure, and what follows from it has answers', async () => {
  const book = await openWorkbook({ tabs: TABS, codeJs: await scriptText(), today: '2026-04-01' });
  book.type('Farm', 'K1', '=STOCKING_DENSITY(10; 0.5; F2; "US")');
  expect(book.value('Farm', 'K1')).toBe('#ERROR!');
  const outcome = await buildRotation(book);
  if (outcome.kind !== 'written') throw new Error(JSON.stringify(outcome));
  const moves = shownMoves(book, outcome.info);
  expect(moves[0]?.cell('Weight in')).toBe(60);
  for (const move of moves) expect(move.cell('Weight out')).toBeGreaterThan(60);
});
