/** A group with another name in the list: the log asks, and from then on its rows count under the new name. */
import { expect, test } from 'vitest';
import { dayFromIso } from '../../../shared/core/calendar/day';
import { HERD_TASK } from '../../../shared/tasks/herd/herd-task';
import { RENAMED_OPTIONS } from '../../../shared/tasks/renaming';
import { readBook } from '../../../shared/tasks/run-task';
import { openWorkbook, portOf, runTask } from '../../../src/headless';
import { scriptText } from '../script-text';

const QUESTION = 'Is Shoats the new name of Reds?';
const TABS = {
  Pigs: [
    ['Group', 'Head', 'Weight (lb)', 'Weighed on'],
    ['Reds', 20, 60, { d: '2026-05-01' }],
    ['Greens', 6, 80, { d: '2026-05-08' }],
  ],
};

async function logOfReds() {
  const book = await openWorkbook({ tabs: TABS, codeJs: await scriptText(), today: '2026-05-20' });
  const port = portOf(book);
  await runTask(port, HERD_TASK);
  const at = book.values('Herd log').findIndex(([group]) => group === 'Reds') + 1;
  // Sold, and typed by hand into the first free row.
  for (const [column, typed] of Object.entries({
    A: 'reds',
    B: '2026-05-15',
    C: '13',
    E: 'sold at the gate',
  }))
    book.type('Herd log', `${column}${at + 2}`, typed);
  book.type('Pigs', 'A2', 'Shoats');
  return { book, port, at };
}

const groupsOf = (rows: readonly (readonly unknown[])[], at: number): unknown[] =>
  rows.slice(at - 1, at + 3).map(([group]) => group);

test('is asked, and renamed in the log with all its rows', async () => {
  const { book, port, at } = await logOfReds();
  expect(await runTask(port, HERD_TASK)).toMatchObject({
    kind: 'questions',
    questions: [expect.stringContaining(QUESTION)],
  });
  const outcome = await runTask(port, HERD_TASK, { [QUESTION]: RENAMED_OPTIONS.yes });
  expect(outcome).toMatchObject({ kind: 'written', done: { kept: { inPlace: [], below: [] } } });
  expect(groupsOf(book.values('Herd log'), at)).toEqual(['Shoats', 'Greens', 'Shoats', '']);
  expect(book.value('Herd log', `E${at + 2}`)).toBe('sold at the gate');
  const { groups, notes } = HERD_TASK.read(await readBook(port), {});
  expect(notes).toEqual([]);
  expect(groups[0]!.herd).toMatchObject([
    { day: dayFromIso('2026-05-01'), head: 20 },
    { day: dayFromIso('2026-05-15'), head: 13 },
  ]);
});

test('another group gets a row of its own, and is not asked about again', async () => {
  const { book, port, at } = await logOfReds();
  await runTask(port, HERD_TASK, { [QUESTION]: RENAMED_OPTIONS.no });
  expect(groupsOf(book.values('Herd log'), at)).toEqual(['Reds', 'Greens', 'reds', 'Shoats']);
  expect(HERD_TASK.read(await readBook(port), {}).questions).toEqual([]);
});

test('a group that has gone by the log is not asked about', async () => {
  const { book, port, at } = await logOfReds();
  book.type('Herd log', `C${at + 2}`, '0');
  expect(HERD_TASK.read(await readBook(port), {}).questions).toEqual([]);
});
