/** A group that got another name in the list while its moves are under way: asked, and no past figure is lost. */
import { expect, it } from 'vitest';
import { standingRotation } from '../../../shared/tasks/rotation/rotation-standing';
import { ROTATION_TASK } from '../../../shared/tasks/rotation/rotation-task';
import { openWorkbook, portOf, runTask } from '../../../src/headless';
import { cellUnder } from '../../cell-under';
import { shownMoves } from '../../hard-use/check-table';
import { buildRotation, readBook } from '../../hard-use/rotation-task';
import { scriptText } from '../script-text';

const FARM = [
  ['Paddock', 'Acres', '', 'Group', 'Head', 'Weight (lb)', 'Weighed on', 'ADG (lb/day)', 'Until'],
  ['North', 0.5, '', 'Gilts', 10, 60, { d: '2026-03-28' }, 1.5, { d: '2026-05-30' }],
  ['South', 0.4],
  ['Oak', 0.6],
  ['Hill', 0.5],
];
const QUESTION = 'Is Shoats the new name of Gilts?';

it('is asked before the table is written anew', async () => {
  const book = await openWorkbook({ tabs: { Farm: FARM }, codeJs: await scriptText(), today: '2026-04-08' });
  expect(await buildRotation(book)).toMatchObject({ kind: 'written' });
  const moves = () => shownMoves(book, standingRotation(readBook(book))!.block.info);
  book.type('Rotation', cellUnder(book, 'Moved in', moves()[0]!.row), '2026-04-08');
  const figures = () =>
    ['Head', 'Weight in', 'Liveweight', 'Load', 'Feed'].map((key) => [key, moves()[0]!.cell(key)]);
  const before = figures();
  expect(before[0]).toEqual(['Head', 10]);
  book.type('Farm', 'D2', 'Shoats');
  const table = book.values('Rotation');
  const open = await runTask(portOf(book), ROTATION_TASK);
  expect(JSON.stringify(open)).toContain(QUESTION);
  expect(book.values('Rotation')).toEqual(table);
  const answered = await runTask(portOf(book), ROTATION_TASK, { [QUESTION]: 'Yes, the same group' });
  expect(answered).toMatchObject({ kind: 'written' });
  expect(moves().every(({ cell }) => cell('Group') === 'Shoats')).toBe(true);
  expect(figures()).toEqual(before);
}, 120_000);
