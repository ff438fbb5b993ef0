/** A move that is skipped in the rotation table is no stay of the budget, before either is written anew. */
import { expect, test } from 'vitest';
import { openWorkbook } from '../../../src/headless';
import { buildEveryBlock } from '../../hard-use/every-block';
import { asked } from '../../hard-use/rotation-task';
import { scriptText } from '../script-text';

test('no figure and no error stands for it', async () => {
  const book = await openWorkbook({
    codeJs: await scriptText(),
    tabs: { Start: [] },
    today: '2026-05-20',
  });
  asked(book, 'startSample', { sample: 'feet-marrow-creek' });
  await buildEveryBlock(book, 'US');
  const lost = (): unknown =>
    book.values('Budget').find(([label]) => label === 'Stays that could not be worked out')![1];
  const before = lost();
  const rows = book.values('Rotation');
  const at = rows.findIndex((row) => row.includes('Planned in')) + 5;
  const [group, paddock, day] = rows[at]!;
  const isIt = (row: readonly unknown[]): boolean =>
    row[0] === group && row[1] === paddock && Number(row[2]) === Number(day);
  const inBudget = book.values('Budget').findIndex(isIt);
  expect(inBudget).toBeGreaterThan(0);
  book.type('Rotation', `D${at + 1}`, 'skipped');
  expect(book.shownValues('Budget')[inBudget]!.slice(0, 16).join('')).toBe('');
  expect(lost()).toBe(before);
}, 240_000);
