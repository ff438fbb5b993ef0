/** Which tables do not look into the herd log, or not into all of it. */
import { expect, test, vi } from 'vitest';
import { HERD_TASK } from '../../../shared/tasks/herd/herd-task';
import { logUnread } from '../../../shared/tasks/herd/log-unread';
import { TODAY_TASK } from '../../../shared/tasks/today/today-task';
import { portOf, runTask, type Workbook } from '../../../src/headless';
import { buildRotation, readBook } from '../../hard-use/rotation-task';
import { openFarm } from '../../sidebar/happened-farm';

vi.setConfig({ testTimeout: 120_000 });

const said = (book: Workbook): string | undefined => logUnread(readBook(book));

test('tables that are older than the log are named, until they are written anew, and so are those that it has outgrown', async () => {
  const book = await openFarm('2026-05-25');
  const write = (task: Parameters<typeof runTask>[1], answers = {}) => runTask(portOf(book), task, answers);
  await write(TODAY_TASK);
  expect(said(book)).toBeUndefined();
  await write(HERD_TASK);
  expect(said(book)).toMatch(/Write anew: the rotation table .*, then today’s page\.$/);
  await buildRotation(book);
  expect(said(book)).toMatch(/Write anew: today’s page\.$/);
  await write(TODAY_TASK);
  expect(said(book)).toBeUndefined();
  let written = 0;
  for (; said(book) === undefined && written < 120; written++) {
    const shown = book.shownValues('Herd log');
    const free = shown.findIndex((row, r) => r > 5 && (row[0] ?? '') === '');
    const last = (free < 0 ? shown.length : free) + 1;
    book.type('Herd log', `A${last}`, 'Reds');
    book.type('Herd log', `B${last}`, '2026-05-02');
    book.type('Herd log', `C${last}`, '9');
  }
  expect(written).toBeGreaterThan(20);
  expect(written).toBeLessThan(120);
});
