/** A paddock or a group that is in no list, typed on a move: no error value anywhere, and told by its name. */
import { expect, it } from 'vitest';
import { standingRotation } from '../../shared/tasks/rotation/rotation-standing';
import { openWorkbook } from '../../src/headless';
import { shownMoves } from '../hard-use/check-table';
import { buildRotation, readBook } from '../hard-use/rotation-task';
import { scriptText } from '../tasks/script-text';

const FARM = [
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
    const book = await openWorkbook({
      tabs: { Farm: FARM },
      codeJs: await scriptText(),
      today: '2026-04-01',
    });
    expect(await buildRotation(book)).toMatchObject({ kind: 'written' });
    const moves = () => shownMoves(book, standingRotation(readBook(book))!.block.info);
    const { row } = moves()[1]!;
    const errors = () =>
      book
        .shownValues('Rotation')
        .flat()
        .filter((text) => /^#(N\/A|VALUE|REF)/.test(text));
    book.type('Rotation', `B${row}`, 'Nowhere');
    if (movedIn) book.type('Rotation', `D${row}`, movedIn);
    expect(moves()[1]!.cell('Check')).toBe('Paddock or its area not in your list');
    expect(errors()).toEqual([]);
    expect(await buildRotation(book)).toMatchObject({ kind: 'written' });
    expect(errors()).toEqual([]);
    expect(moves()[1]!.cell('Paddock')).toBe('Nowhere');
    expect(book.shownValues('Rotation').slice(0, 4).flat().join()).toContain('“Nowhere” (row');
  },
  120_000,
);

it('a group', async () => {
  const book = await openWorkbook({ tabs: { Farm: FARM }, codeJs: await scriptText(), today: '2026-04-01' });
  expect(await buildRotation(book)).toMatchObject({ kind: 'written' });
  const { row } = shownMoves(book, standingRotation(readBook(book))!.block.info)[1]!;
  book.type('Rotation', `A${row}`, 'Blues');
  expect(
    book
      .shownValues('Rotation')
      .flat()
      .filter((text) => text.startsWith('#N/A')),
  ).toEqual([]);
}, 60_000);
