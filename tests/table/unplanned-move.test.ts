/** A move that nobody planned, typed into the first blank row under the moves, and days whose format was lost. */

import { describe, expect, it, vi } from 'vitest';
import { openWorkbook, type StartCell, type Workbook } from '../../src/headless';
import { shownMoves } from '../hard-use/check-table';
import { buildRotation, type Outcome, readBook, writeRotation } from '../hard-use/rotation-task';
import { scriptText } from '../tasks/script-text';
import { withoutMemory } from '../without-memory';

vi.setConfig({ testTimeout: 120_000 });

const TABS: Record<string, StartCell[][]> = {
  Farm: [
    ['Paddock', 'Acres', '', 'Group', 'Head', 'Weight (lb)', 'Weighed on', 'ADG (lb/day)', 'Until'],
    ['North', 0.5, '', 'Reds', 10, 60, { d: '2026-03-28' }, 1.5, { d: '2026-04-30' }],
    ['South', 0.4],
    ['Oak', 0.6],
    ['Hill', 0.5],
  ],
};

async function built() {
  const book = await openWorkbook({ tabs: TABS, codeJs: await scriptText(), today: '2026-04-01' });
  return { book, info: await rebuilt(book) };
}

async function rebuilt(book: Workbook) {
  const outcome: Outcome = await buildRotation(book);
  if (outcome.kind !== 'written') throw new Error(JSON.stringify(outcome));
  return outcome.info;
}

describe('an unplanned move under the others', () => {
  it('is a past move after the rebuild, with dates and a weight, and the table is built again and again', async () => {
    const { book, info } = await built();
    const moves = shownMoves(book, info);
    const [first] = moves;
    const free = moves[moves.length - 1]!.row + 1;
    book.type(info.tab, `D${first!.row}`, '2026-04-01');
    book.type(info.tab, `A${free}`, 'Reds');
    book.type(info.tab, `B${free}`, 'Hill');
    book.type(info.tab, `D${free}`, '2026-04-03');
    book.state.now = () => new Date('2026-04-04T12:00:00Z');
    for (let time = 0; time < 3; time++) {
      const again = shownMoves(book, await rebuilt(book));
      const move = again.find(({ cell }) => cell('Paddock') === 'Hill')!;
      const shown = (column: string) => book.range(info.tab, `${column}${move.row}`).getDisplayValue();
      expect([shown('A'), shown('C'), shown('D'), shown('G')]).toEqual([
        'Reds',
        'Fri 3 Apr 2026',
        // As it was typed.
        '2026-04-03',
        '10',
      ]);
      // 60 lb on 28 March, 1.5 lb a day: six days later 69 lb.
      expect(Number(move.cell('Weight in'))).toBeCloseTo(69, 6);
      expect(move.cell('Check')).toBe('');
      expect(again[0]!.cell('Days')).toBe(2);
    }
  });

  it('looks like the others once it is written anew', async () => {
    const { book, info } = await built();
    const moves = shownMoves(book, info);
    const free = moves[moves.length - 1]!.row + 1;
    book.type(info.tab, `D${moves[0]!.row}`, '2026-04-01');
    book.type(info.tab, `A${free}`, 'Reds');
    book.type(info.tab, `B${free}`, 'Hill');
    book.type(info.tab, `D${free}`, '2026-04-03');
    book.gate.uncounted(() => book.range(info.tab, `A${free}:F${free}`).setBackground(null));
    book.state.now = () => new Date('2026-04-04T12:00:00Z');
    const outcome = await writeRotation(book, readBook(book));
    if (outcome.kind !== 'written') throw new Error(JSON.stringify(outcome));
    const again = shownMoves(book, outcome.info);
    const fills = book.gate.uncounted(() =>
      again.map(({ row }) => book.range(info.tab, `D${row}`).getBackground()),
    );
    expect(again.map(({ cell }) => cell('Paddock'))).toContain('Hill');
    expect(new Set(fills)).toEqual(new Set(['#fff8e1']));
  });

  it('two names without a day are no move and stay in their row', async () => {
    const { book, info } = await built();
    const moves = shownMoves(book, info);
    const free = moves[moves.length - 1]!.row + 1;
    book.type(info.tab, `A${free}`, 'Reds');
    book.type(info.tab, `B${free}`, 'Hill');
    await rebuilt(book);
    expect([book.value(info.tab, `A${free}`), book.value(info.tab, `B${free}`)]).toEqual(['Reds', 'Hill']);
  });
});

it('a table whose number formats were all lost says and writes the same as before', async () => {
  const { book, info } = await built();
  book.type(info.tab, `D${shownMoves(book, info)[0]!.row}`, '2026-04-01');
  book.state.now = () => new Date('2026-04-04T12:00:00Z');
  await rebuilt(book);
  const before = withoutMemory(book.shownValues(info.tab));
  const all = book.spreadsheet.getSheetByName(info.tab)!.getDataRange();
  all.setNumberFormat('General');
  expect(book.shownValues(info.tab).flat()).toContain('46113');
  await rebuilt(book);
  expect(withoutMemory(book.shownValues(info.tab))).toEqual(before);
  // Counts under the format of a day are counts.
  all.setNumberFormat('yyyy-mm-dd');
  await rebuilt(book);
  const longest = (rows: readonly (readonly unknown[])[]) =>
    rows.find(([label]) => label === 'Longest stay in days')?.[1];
  expect(longest(before)).toMatch(/^\d+$/);
  expect(longest(book.shownValues(info.tab))).toBe(longest(before));
});
