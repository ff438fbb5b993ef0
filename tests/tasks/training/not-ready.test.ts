/** A group that the training log does not call ready is not sent out without a word: page in the sheet, cards, plan. */
import { describe, expect, test, vi } from 'vitest';
import { bookOf } from '../../../shared/block/book';
import { date, text } from '../../../shared/block/cells';
import { farmNow } from '../../../shared/tasks/happened/farm-now';
import { ROTATION_TASK } from '../../../shared/tasks/rotation/rotation-task';
import { runTask } from '../../../shared/tasks/run-task';
import { startSettings } from '../../../shared/tasks/settings';
import { TODAY_TASK } from '../../../shared/tasks/today/today-task';
import { composeLogBlock, LOG_BLOCK, LOG_SETTINGS } from '../../../shared/tasks/training/log-block';
import { portOf } from '../../../src/headless';
import { writeInSheet } from '../sheet-block';
import { card, day, openToday, shown } from '../today/today-farm';

vi.setConfig({ testTimeout: 120_000 });

/** Greens come out on 8 May. Their batch is in the log under the group, or under its own name alone. */
async function farm(today: string, row: Record<string, string>, passed?: string) {
  const { book } = await openToday(today, { moved: ['2026-05-01'] });
  const days = ['In the pen on', 'Saw the wire on', 'Backed off on'].map((heading) => [
    heading,
    date(day('2026-05-01')),
  ]);
  const typed = new Map([
    ...Object.entries({ ...row, Observer: 'Ada' }).map(([heading, words]) => [heading, text(words)] as const),
    ...((passed ? [...days, ['Passed check on', date(day(passed))]] : []) as [
      string,
      ReturnType<typeof date>,
    ][]),
  ]);
  const log = composeLogBlock(startSettings(LOG_SETTINGS, 'US'), [typed], [], { row: 1, column: 1 });
  writeInSheet(book, LOG_BLOCK, log, { at: 'new-tab', tab: 'Training log' });
  await runTask(portOf(book), TODAY_TASK, {});
  const read = bookOf(await portOf(book)('readFile', {}));
  const now = farmNow(read);
  if ('missing' in now) throw new Error(now.missing.join());
  const besideName = (group: string): string | undefined =>
    book.shownValues('Today').find(([first]) => first === group)?.[1];
  return { book, read, now, besideName };
}

describe.each([
  ['by its group', { 'Pig or batch': 'late lot', Group: '=Greens* ' }],
  ['by the name of its batch', { 'Pig or batch': '=greens*' }],
])('named %s', (_, row) => {
  test.each(['2026-05-07', '2026-05-08', '2026-05-12'])('nothing seen, on %s', async (today) => {
    const { book, read, now, besideName } = await farm(today, row);
    expect(besideName('=Greens*')).toBe('Training log: not ready');
    expect(shown(book, '=Greens*', 'To do')).toEqual(['Not trained yet: do not turn them out.']);
    expect(besideName('Reds')).toBe('');
    const [reds, greens] = now.cards;
    expect(greens!.training).toMatch(
      /^Training log: not ready \(.*day in the pen; saw the wire; backed off;/,
    );
    expect(reds!.training).toBeUndefined();
    const { warnings = [] } = ROTATION_TASK.read(read, {});
    expect(warnings.filter((one) => one.includes('Training log'))).toEqual([
      expect.stringMatching(/^=Greens\*: Training log: not ready .*The plan does not wait for that\./),
    ]);
  });
});

test('checked, but fewer days in the pen than set: the days to wait; from then on nothing is said', async () => {
  // In the pen on 1 May, 3 days at least, checked on 2 May: ready from 4 May.
  const row = { 'Pig or batch': 'late lot', Group: '=Greens*' };
  const early = await farm('2026-05-02', row, '2026-05-02');
  expect(early.besideName('=Greens*')).toBe('Training log: days to wait: 2');
  expect(early.now.cards[1]!.training).toBe('Training log: days to wait: 2');
  const ready = await farm('2026-05-07', row, '2026-05-02');
  expect(ready.besideName('=Greens*')).toBe('');
  expect(ready.now.cards[1]!.training).toBeUndefined();
  expect(card(ready.book, '=Greens*')['To do']!.shown).toBe('Move tomorrow.');
  expect((ROTATION_TASK.read(ready.read, {}).warnings ?? []).join()).not.toMatch(/Training log/);
});
