/** What is typed under Days and cannot be the days of a stay: told by its cell, kept, and counted by nobody. */
import { expect, it } from 'vitest';
import { columnLetters } from '../../../shared/block/a1';
import { standingRotation } from '../../../shared/tasks/rotation/rotation-standing';
import { ROTATION_TASK } from '../../../shared/tasks/rotation/rotation-task';
import type { StartCell } from '../../../src/headless';
import { cellUnder } from '../../cell-under';
import { buildRotation, readBook } from '../../hard-use/rotation-task';
import { writtenFarm } from '../../hard-use/written-farm';

const FARM: StartCell[][] = [
  ['Paddock', 'Acres', '', 'Group', 'Head', 'Weight (lb)', 'Weighed on', 'ADG (lb/day)', 'Until'],
  ['North', 0.5, '', 'Reds', 10, 60, { d: '2026-03-28' }, 1.5, { d: '2026-06-30' }],
  ['South', 0.4],
  ['Oak', 0.6],
  ['Hill', 0.5],
];

// The season is of 1 April to 30 June 2026: 90 days with the last night on 29 June.
it.each(['0', '-3', '2.5', '500', '91', 'a week'])(
  '%s',
  async (typed) => {
    const { book, moves } = await writtenFarm(FARM);
    const stays = () => moves().map(({ cell }) => ['Group', 'Paddock', 'In', 'Out'].map((key) => cell(key)));
    const before = stays();
    const { row, cell } = moves()[2]!;
    book.type('Rotation', cellUnder(book, 'Days', row), typed);
    const check = 'Days must be a whole number from 1 to 90';
    expect(moves()[2]!.cell('Check')).toBe(check);
    expect(stays()).toEqual(before);
    const form = ROTATION_TASK.read(readBook(book), {});
    const got = typed === 'a week' ? '"a week"' : typed;
    expect(ROTATION_TASK.read(readBook(book), ROTATION_TASK.solve!(form)).warnings).toEqual([
      `Rotation!E${row}: ${check}, got ${got}. The plan does not go by it, and the table counts ${cell('Days')}. Correct it, or clear the cell.`,
    ]);
    expect(await buildRotation(book)).toMatchObject({ kind: 'written' });
    expect(stays()).toEqual(before);
    expect(String(moves()[2]!.cell('Days'))).toBe(typed);
    expect(moves()[2]!.cell('Check')).toBe(check);
  },
  120_000,
);

it.each(['-2000%', '150%', 'half'])(
  'cover left of %s is told by its cell, and goes into no figure',
  async (typed) => {
    const { book, moves } = await writtenFarm(FARM);
    const { row } = moves()[0]!;
    const headings = book.values('Rotation').find((cells) => cells.includes('Cover left'))!;
    const cell = `${columnLetters(headings.indexOf('Cover left') + 1)}${row}`;
    book.type('Rotation', cell, typed);
    const { rotation } = standingRotation(readBook(book))!;
    expect(rotation.rows[0]!.cover).toBeUndefined();
    const form = ROTATION_TASK.read(readBook(book), {});
    expect(ROTATION_TASK.read(readBook(book), ROTATION_TASK.solve!(form)).warnings!.join()).toContain(
      `Rotation!${cell}: Cover left must be from 0 % to 100 %, got `,
    );
  },
  120_000,
);
