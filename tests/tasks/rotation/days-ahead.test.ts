/** A day moved in that is still to come is told with its cell. */
import { expect, it } from 'vitest';
import { standingRotation } from '../../../shared/tasks/rotation/rotation-standing';
import { ROTATION_TASK } from '../../../shared/tasks/rotation/rotation-task';
import { openWorkbook } from '../../../src/headless';
import { cellUnder } from '../../cell-under';
import { shownMoves } from '../../hard-use/check-table';
import { buildRotation, readBook } from '../../hard-use/rotation-task';
import { scriptText } from '../script-text';

const FARM = [
  ['Paddock', 'Acres', '', 'Group', 'Head', 'Weight (lb)', 'Weighed on', 'ADG (lb/day)', 'Until'],
  ['North', 0.5, '', 'Reds', 10, 60, { d: '2026-03-28' }, 1.5, { d: '2026-04-30' }],
  ['South', 0.4],
  ['Oak', 0.6],
  ['Hill', 0.5],
];

it('with what the plan takes it for', async () => {
  const book = await openWorkbook({ tabs: { Farm: FARM }, codeJs: await scriptText(), today: '2026-04-01' });
  expect(await buildRotation(book)).toMatchObject({ kind: 'written' });
  const [first, second] = shownMoves(book, standingRotation(readBook(book))!.block.info);
  book.type('Rotation', cellUnder(book, 'Moved in', first!.row), '2026-04-01');
  // 1 April 2026 is a Wednesday.
  book.type('Rotation', cellUnder(book, 'Moved in', second!.row), '2026-04-09');
  const before = ROTATION_TASK.read(readBook(book), {});
  const { warnings } = ROTATION_TASK.read(readBook(book), ROTATION_TASK.solve!(before));
  expect(warnings).toEqual([
    `Rotation!D${second!.row}: Thu 9 Apr is still to come. The plan counts on it: Reds goes to ${second!.cell('Paddock')} on that day. Clear the cell if that is not settled.`,
  ]);
}, 60_000);
