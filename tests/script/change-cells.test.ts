/** Single cells: all of them or none, each only where it holds what was read, and back again by the same call. */
import { describe, expect, test } from 'vitest';
import { blank, date, number, text } from '../../shared/block/cells';
import type { CellChange } from '../../shared/contract';
import { openWorkbook, type Workbook } from '../../src/headless';
import { scriptText } from '../tasks/script-text';

/** A day into a blank cell, a name over another, a number over a formula. */
const CELLS: readonly CellChange[] = [
  { tab: 'Moves', row: 1, column: 1, before: blank('yyyy-mm-dd'), after: date(20_000) },
  { tab: 'Moves', row: 1, column: 2, before: text('Oak'), after: text('=Hill') },
  { tab: 'Moves', row: 2, column: 2, before: { k: 'f', v: '=2+3' }, after: number(7, '0') },
];
const BACK = CELLS.map((cell) => ({ ...cell, before: cell.after, after: cell.before }));

const open = async (): Promise<Workbook> =>
  openWorkbook({
    tabs: {
      Moves: [
        ['', 'Oak', 'mine'],
        ['', '=2+3', 9],
      ],
    },
    codeJs: await scriptText(),
  });

const state = (book: Workbook): string =>
  JSON.stringify([book.shownValues('Moves'), book.formulas('Moves')]).replace(/"(General)?"/g, '""');

describe('cells are changed', () => {
  test('and changed back', async () => {
    const book = await open();
    const before = state(book);
    expect(book.ask('changeCells', { cells: CELLS })).toEqual({ ok: true, data: { cells: 3 } });
    expect(book.shownValues('Moves')).toEqual([
      ['Fri 4 Oct 2024', '=Hill', 'mine'],
      ['', '7', '9'],
    ]);
    expect(book.formulas('Moves')[0]![1]).toBe('');
    expect(book.ask('changeCells', { cells: BACK }).ok).toBe(true);
    expect(state(book)).toBe(before);
  });

  test.each([
    ['B1', 'Ash', 'B1 on "Moves" was changed after it was read here'],
    ['A1', 'x', 'A1 on "Moves" was changed after it was read here'],
    ['B2', '=2*3', 'B2 on "Moves" was changed after it was read here'],
  ])('not where %s holds something else by now', async (cell, typed, says) => {
    const book = await open();
    book.type('Moves', cell, typed);
    const before = state(book);
    expect(book.ask('changeCells', { cells: CELLS })).toMatchObject({
      ok: false,
      error: expect.stringMatching(new RegExp(`^${says}.*Nothing was written\\.$`)),
    });
    expect(state(book)).toBe(before);
  });

  test('not where a part is protected', async () => {
    const book = await open();
    book.protectByOther('Moves', 'B2');
    const before = state(book);
    expect(book.ask('changeCells', { cells: CELLS })).toMatchObject({
      ok: false,
      error: expect.stringMatching(/protected.*Nothing was written\.$/),
    });
    expect(state(book)).toBe(before);
  });

  test.each(['before', 'after', 'for good'] as const)(
    'all or none where any call fails (%s)',
    async (how) => {
      const book = await open();
      const before = state(book);
      book.resetCounts();
      book.ask('changeCells', { cells: CELLS });
      const calls = book.callTotal;
      const after = state(book);
      book.ask('changeCells', { cells: BACK });
      for (let call = 0; call < calls; call++) {
        book.resetCounts();
        book.killAt(call, how);
        const reply = book.ask('changeCells', { cells: CELLS });
        book.clearFailures();
        const standing = state(book);
        const claims = reply.ok ? 'written' : /Nothing was written/.test(reply.error) ? 'nothing' : 'unseen';
        if (claims === 'written') expect(standing, `call ${call}`).toBe(after);
        if (claims === 'nothing') expect(standing, `call ${call}`).toBe(before);
        // Where the script dies on the way nothing can be put back: it says so.
        if (claims === 'unseen' && standing !== before && standing !== after) expect(how).toBe('for good');
        // Whatever stands is put right by hand, as the sentence asks for.
        for (const { row, column, before: cell } of CELLS) {
          const range = book.range('Moves', `${'AB'[column - 1]}${row}`);
          if (cell.k === 'f') range.setFormula(cell.v);
          else range.setValue('v' in cell ? cell.v : '');
        }
      }
    },
  );
});
