/** A paddock or a group that is in no list, typed on a move: no error value anywhere, and told by its name. */
import { expect, it } from 'vitest';
import type { StartCell, Workbook } from '../../src/headless';
import { cellUnder } from '../cell-under';
import { buildRotation } from '../hard-use/rotation-task';
import { writtenFarm } from '../hard-use/written-farm';

const FARM: StartCell[][] = [
  ['Paddock', 'Acres', 'Closed from', '', 'Group', 'Head', 'Weight (lb)', 'Weighed on', 'ADG (lb/day)'],
  ['North', 0.5, '', '', 'Reds', 10, 60, { d: '2026-03-28' }, 1.5],
  ['South', 0.4],
  ['Oak', 0.6, { d: '2026-12-01' }],
  ['Hill', 0.5],
];

it.each([
  ['to come', ''],
  ['of the past', '2026-04-08'],
])(
  'on a move %s',
  async (_, movedIn) => {
    const { book, moves } = await writtenFarm(FARM);
    const { row } = moves()[1]!;
    book.type('Rotation', cellUnder(book, 'Paddock', row), 'Nowhere');
    if (movedIn) book.type('Rotation', cellUnder(book, 'Moved in', row), movedIn);
    expect(moves()[1]!.cell('Check')).toBe('Paddock or its area not in your list');
    expect(errors(book)).toEqual([]);
    expect(await buildRotation(book)).toMatchObject({ kind: 'written' });
    expect(errors(book)).toEqual([]);
    expect(moves()[1]!.cell('Paddock')).toBe('Nowhere');
    expect(book.shownValues('Rotation').slice(0, 4).flat().join()).toContain('“Nowhere” (row');
  },
  120_000,
);

it('a group', async () => {
  const { book, moves } = await writtenFarm(FARM);
  book.type('Rotation', cellUnder(book, 'Group', moves()[1]!.row), 'Blues');
  expect(errors(book)).toEqual([]);
}, 60_000);

function errors(book: Workbook): string[] {
  const shown = book.shownValues('Rotation').flat();
  return shown.filter((text) => /^#(N\/A|VALUE|REF)/.test(text));
}
