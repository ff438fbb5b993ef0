/** What is looked up in a list and stands blank there is blank in the table: a daily gain of 0 would mean "does not grow". */
import { expect, it, vi } from 'vitest';
import { openWorkbook, type StartCell } from '../../src/headless';
import { shownMoves } from '../hard-use/check-table';
import { buildRotation } from '../hard-use/rotation-task';
import { scriptText } from '../tasks/script-text';

vi.setConfig({ testTimeout: 120_000 });

const TABS: Record<string, StartCell[][]> = {
  Farm: [
    ['Paddock', 'Acres', '', 'Group', 'Head', 'Weight (lb)', 'Weighed on', 'ADG (lb/day)', 'Until'],
    ['North', 0.5, '', 'Reds', 10, 60, { d: '2026-03-28' }, 1.5, { d: '2026-04-30' }],
    ['South', 0.4],
    ['Oak', 0.6],
  ],
};

it('a gain, a head count and a day of weighing that are cleared in the list', async () => {
  const book = await openWorkbook({ tabs: TABS, codeJs: await scriptText(), today: '2026-04-01' });
  const outcome = await buildRotation(book);
  if (outcome.kind !== 'written') throw new Error(JSON.stringify(outcome));
  const first = () => shownMoves(book, outcome.info)[0]!;
  expect(first().cell('Weight in')).toBe(66);
  book.type('Farm', 'H2', '');
  // The cell function itself, with a true blank: growth by the table.
  book.type('Farm', 'K1', '=PIG_WEIGHT(60; 4; ; "US")');
  expect(first().cell('Daily gain')).toBe('');
  expect(first().cell('Weight in')).toBeCloseTo(Number(book.value('Farm', 'K1')), 9);
  book.type('Farm', 'E2', '');
  expect(first().cell('Head')).toBe('');
  book.type('Farm', 'G2', '');
  expect(first().cell('Since weighed')).toBe('');
});
