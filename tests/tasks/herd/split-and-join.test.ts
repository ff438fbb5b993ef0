/** A group is split and joined by rows of the list and the herd log: every night has its heads, counted by hand. */
import { expect, test, vi } from 'vitest';
import { dayFromIso } from '../../../shared/core/calendar/day';
import { HERD_BLOCK, herdBlock, herdRow } from '../../../shared/tasks/herd/herd-block';
import { standingRotation } from '../../../shared/tasks/rotation/rotation-standing';
import { openWorkbook, type Workbook } from '../../../src/headless';
import { cellUnder } from '../../cell-under';
import { buildRotation, readBook } from '../../hard-use/rotation-task';
import { scriptText } from '../script-text';
import { writeInSheet } from '../sheet-block';

vi.setConfig({ testTimeout: 120_000 });

const day = (iso: string): number => dayFromIso(iso)!;
const RULES = {
  rest: { kind: 'fixed', days: 12 } as const,
  shortestStayDays: 2,
  longestStayDays: 5,
  moveWeekdays: Array<boolean>(7).fill(true),
  noMoveDays: [],
  seasonStart: day('2026-04-01'),
  seasonEnd: day('2026-05-11'),
};
const LAND = [['Paddock', 'Acres'], ...Array.from({ length: 9 }, (_, i) => [`P${i + 1}`, 0.5])];
const PIGS = [
  ['Group', 'Head', 'Weight (lb)', 'Weighed on', 'ADG (lb/day)', 'In rotation from', 'Leaves on'],
  ['Reds', 10, 60, { d: '2026-04-01' }, 1.5],
];

/** Head of each group on a night, by the stays of the table that stands. */
function headsOn(book: Workbook, iso: string): Record<string, number> {
  const { rotation } = standingRotation(readBook(book))!;
  const here = rotation.rows.filter(({ inDay, out }) => inDay! <= day(iso) && day(iso) < out!);
  return Object.fromEntries(here.map(({ group, head }) => [group, head!]));
}

test('ten are six and four from April 20 on, and ten again from May 1', async () => {
  const book = await openWorkbook({
    tabs: { Land: LAND, Pigs: PIGS } as never,
    codeJs: await scriptText(),
    today: '2026-04-01',
  });
  const log = herdBlock([herdRow({ group: 'Reds', day: day('2026-04-01'), head: 10 }, '', 'US')], 'US', {
    row: 1,
    column: 1,
  });
  writeInSheet(book, HERD_BLOCK, log, { at: 'new-tab', tab: 'Herd log' });
  expect(await buildRotation(book, { rules: RULES, units: 'US' })).toMatchObject({ kind: 'written' });
  const first = standingRotation(readBook(book))!.rotation.rows;
  for (const move of first.filter(({ inDay }) => inDay! <= day('2026-04-18')))
    book
      .range('Rotation', cellUnder(book, 'Moved in', move.sheetRow))
      .setValue(new Date(move.inDay! * 86_400_000));
  book.state.now = () => new Date('2026-04-20T12:00:00Z');

  // Split: the new group is a row of the list that comes in that day; the log says what is left of the old one.
  for (const [i, text] of ['Small Reds', '4', '80', '2026-04-20', '1.4', '2026-04-20'].entries())
    book.type('Pigs', `${'ABCDEF'[i]}3`, text);
  const free = book.values('Herd log').findIndex((row) => row[0] === 'Reds') + 2;
  for (const [i, text] of ['Reds', '2026-04-20', '6'].entries())
    book.type('Herd log', `${'ABC'[i]}${free}`, text);
  expect(await buildRotation(book)).toMatchObject({ kind: 'written' });
  expect(headsOn(book, '2026-04-26')).toEqual({ Reds: 6, 'Small Reds': 4 });
  expect(headsOn(book, '2026-04-10')).toEqual({ Reds: 10 });

  // Joined: the group that joins leaves on that day in the list; the log says what the other is from then on.
  book.type('Pigs', 'G3', '2026-05-01');
  for (const [i, text] of ['Reds', '2026-05-01', '10'].entries())
    book.type('Herd log', `${'ABC'[i]}${free + 1}`, text);
  expect(await buildRotation(book)).toMatchObject({ kind: 'written' });
  expect(headsOn(book, '2026-04-26')).toEqual({ Reds: 6, 'Small Reds': 4 });
  expect(headsOn(book, '2026-05-08')).toEqual({ Reds: 10 });
});
