/** The boxes of today's page: what the trigger writes, what it leaves alone, and how much it asks of the service. */
import { describe, expect, test } from 'vitest';
import { rebuildBlock } from '../../../shared/tasks/merge/rebuild-block';
import { boundTable } from '../../../shared/tasks/today/bound-table';
import { TODAY_BLOCK } from '../../../shared/tasks/today/tick-words';
import { todayBlock } from '../../../shared/tasks/today/today-block';
import type { Workbook } from '../../../src/headless';
import { cellUnder } from '../../cell-under';
import { readAsWritten, readFromSheet } from '../sheet-block';
import { card, openToday, ROTATION, shown, type } from './today-farm';

const GREENS = '=Greens*';

function tick(book: Workbook, group: string): void {
  book.type('Today', card(book, group).Moved!.a1, 'TRUE');
}

/** Every cell of a tab: formulas where there are any, else values. */
function everything(book: Workbook, tab: string): unknown[][] {
  const formulas = book.formulas(tab);
  return book.values(tab).map((row, r) => row.map((value, c) => formulas[r]![c] || value));
}

/** Cells that differ, by place and what stands there now. */
function changes(before: unknown[][], after: unknown[][]): unknown[][] {
  return after.flatMap((row, r) =>
    row.flatMap((value, c) =>
      JSON.stringify(value) === JSON.stringify(before[r]?.[c]) ? [] : [[r + 1, c + 1, value]],
    ),
  );
}

describe('a tick', () => {
  test('writes today into Moved in of the next move, takes itself away, and writes nothing else', async () => {
    const { book } = await openToday('2026-05-09', { moved: ['2026-05-01'] });
    const before = [
      everything(book, 'Rotation'),
      everything(book, 'Today'),
      everything(book, 'Pigs'),
    ] as const;
    tick(book, 'Reds');
    // Cell functions stand in the row above the moves and spill down.
    const spills = book.formulas('Rotation')[ROTATION.firstRow - 2]!.map((cell) => cell !== '');
    const isAnswer = ([, column]: readonly unknown[]): boolean => spills[Number(column) - 1] === true;
    expect(changes(before[0], everything(book, 'Rotation')).filter((one) => !isAnswer(one))).toEqual([
      [7, 4, new Date('2026-05-09T00:00:00Z')],
    ]);
    expect(changes(before[1], everything(book, 'Today'))).toEqual([]);
    expect(changes(before[2], everything(book, 'Pigs'))).toEqual([]);
    expect(shown(book, 'Reds', 'Stands in', 'Since', 'Goes to', 'On', 'Moved')).toEqual([
      'South',
      'Sat 9 May',
      'East',
      'Sat 16 May',
      'FALSE',
    ]);
    expect(book.range('Rotation', cellUnder(book, 'Moved in', 7)).getDisplayValue()).toBe('Sat 9 May 2026');
  });

  test.each(['America/Santiago', 'Pacific/Auckland', 'Pacific/Honolulu'])(
    'the day of the sheet in %s',
    async (timeZone) => {
      const { book } = await openToday('2026-05-09', { moved: ['2026-05-01'], timeZone });
      tick(book, 'Reds');
      expect(book.range('Rotation', cellUnder(book, 'Moved in', 7)).getDisplayValue()).toBe('Sat 9 May 2026');
    },
  );

  test('works after tabs were renamed and rows and columns put in', async () => {
    const { book } = await openToday('2026-05-09', { moved: ['2026-05-01'] });
    book.spreadsheet.getSheetByName('Rotation')!.setName('My 2026 moves');
    book.insertRows('My 2026 moves', 2, 2);
    book.insertRows('Today', 1, 1);
    book.spreadsheet.getSheetByName('Today')!.setName('Now');
    const rows = book.shownValues('Now');
    const top = rows.findIndex(([first]) => first === 'Reds');
    const box = rows.findIndex(([first], r) => r > top && first === 'Moved') + 1;
    book.type('Now', `B${box}`, 'TRUE');
    expect(book.range('My 2026 moves', 'D9').getDisplayValue()).toBe('Sat 9 May 2026');
    expect(book.value('Now', `B${box}`)).toBe(false);
  });
});

describe('where it cannot be said which move is meant', () => {
  const CASES: readonly {
    why: string;
    today: string;
    moved: readonly (string | undefined)[];
    group: string;
    says: RegExp;
    before?: (book: Workbook) => void;
  }[] = [
    {
      why: 'no move to come',
      today: '2026-05-16',
      moved: ['2026-05-01', '2026-05-08', undefined, '2026-05-15'],
      group: 'Reds',
      says: /no move of this group is planned/,
    },
    {
      why: 'two moves without a day',
      today: '2026-05-16',
      moved: ['2026-05-01'],
      group: 'Reds',
      says: /2 moves up to today have no day/,
    },
    {
      why: 'it came here today, typed',
      today: '2026-05-09',
      moved: ['2026-05-01', '2026-05-09'],
      group: 'Reds',
      says: /it came here today/,
    },
    {
      why: 'it came here today, as planned',
      today: '2026-05-08',
      moved: [],
      group: GREENS,
      says: /no move|came here today/,
    },
    {
      why: 'a day typed ahead',
      today: '2026-05-09',
      moved: ['2026-05-01', '2026-05-12'],
      group: 'Reds',
      says: /has a day already/,
    },
    {
      why: 'two moves on one day',
      today: '2026-05-05',
      moved: ['2026-05-01'],
      group: 'Reds',
      says: /two moves of this group stand on one day/,
      before: (book) => {
        book.type('Rotation', cellUnder(book, 'Days', 7), '0');
        book.type('Rotation', cellUnder(book, 'Planned in', 9), '2026-05-08');
      },
    },
  ];
  test.each(CASES)(
    '$why: a sentence beside the box, nothing written',
    async ({ today, moved, group, says, before }) => {
      const { book } = await openToday(today, { moved });
      before?.(book);
      const table = everything(book, 'Rotation');
      tick(book, group);
      expect(changes(table, everything(book, 'Rotation'))).toEqual([]);
      const { shown: box, beside } = card(book, group).Moved!;
      expect(box).toBe('FALSE');
      expect(beside).toMatch(/^Not written: /);
      expect(beside).toMatch(says);
    },
  );

  test('ticked twice: the second time nothing is written; the sentence goes with the next good tick', async () => {
    const { book, info } = await openToday('2026-05-09', { moved: ['2026-05-01'] });
    tick(book, 'Reds');
    tick(book, 'Reds');
    expect(book.value('Rotation', cellUnder(book, 'Moved in', 9))).toBe('');
    expect(card(book, 'Reds').Moved!.beside).toMatch(/^Not written: it came here today/);
    // Nor is it taken for something the grower typed, when the page is written anew.
    const rotation = { name: 'SOUNDER_ROTATION', tab: 'Rotation', row: 1, column: 1, rows: 30, columns: 29 };
    const table = boundTable(readAsWritten(book, rotation));
    if ('problem' in table) throw new Error(table.problem);
    const anew = rebuildBlock(TODAY_BLOCK, readFromSheet(book, info), (corner) => todayBlock(table, corner));
    expect(anew.kept).toEqual({ inPlace: [], below: [] });
    type(book, 1, '2026-05-08');
    tick(book, 'Reds');
    expect(card(book, 'Reds').Moved!.beside).toBe('');
    expect(book.range('Rotation', cellUnder(book, 'Moved in', 9)).getDisplayValue()).toBe('Sat 9 May 2026');
  });

  test('a protected table: the sentence says so', async () => {
    const { book } = await openToday('2026-05-09', { moved: ['2026-05-01'] });
    book.protectByOther('Rotation', 'D1:D40');
    tick(book, 'Reds');
    expect(card(book, 'Reds').Moved).toMatchObject({
      shown: 'FALSE',
      beside: expect.stringMatching(/^Not written: That part of the sheet is protected/),
    });
  });

  test('a late refusal is told as well', async () => {
    const { book } = await openToday('2026-05-09', {
      moved: ['2026-05-01'],
      modes: { lateRefusals: 'told' },
    });
    book.protectByOther('Rotation', 'D1:D40');
    tick(book, 'Reds');
    expect(card(book, 'Reds').Moved!.beside).toMatch(/^Not written: That part of the sheet is protected/);
  });
});

describe('cut short', () => {
  test('every call fails in turn: the day stands or not, and where the tick stays the page says what to do', async () => {
    const { book } = await openToday('2026-05-09', { moved: ['2026-05-01'] });
    book.resetCounts();
    tick(book, 'Reds');
    const calls = book.callTotal;
    for (let call = 0; call < calls; call++) {
      const { book: one } = await openToday('2026-05-09', { moved: ['2026-05-01'] });
      one.resetCounts();
      one.killAt(call, 'for good');
      tick(one, 'Reds');
      one.clearFailures();
      const written = one.range('Rotation', cellUnder(one, 'Moved in', 7)).getDisplayValue();
      const { shown: box, a1 } = card(one, 'Reds').Moved!;
      expect(['', 'Sat 9 May 2026'], `call ${call}`).toContain(written);
      if (box === 'TRUE') {
        expect(written, `call ${call}`).toBe('');
        expect(shown(one, 'Reds', 'To do')[0]).toMatch(/^Ticked: if it stays, nothing was written/);
        one.type('Today', a1, 'FALSE');
        tick(one, 'Reds');
      } else if (written === '') tick(one, 'Reds');
      expect(one.range('Rotation', cellUnder(one, 'Moved in', 7)).getDisplayValue(), `call ${call}`).toBe(
        'Sat 9 May 2026',
      );
      expect(one.value('Rotation', cellUnder(one, 'Moved in', 9)), `call ${call}`).toBe('');
    }
  });
});

describe('what it asks of the service', () => {
  const edits: readonly (readonly [what: string, tab: string, a1: string, typed: string])[] = [
    ['a number', 'Pigs', 'B2', '11'],
    ['a day in the table', 'Rotation', 'D7', '2026-05-09'],
    ['words on the page itself', 'Today', 'B20', 'mine'],
    ['a formula', 'Pigs', 'B2', '=5+6'],
    ['a tick in another column', 'Pigs', 'H2', 'TRUE'],
    ['a box that is cleared', 'Today', 'B11', 'FALSE'],
  ];
  test.each(edits)('%s: no call at all', async (_, tab, a1, typed) => {
    const { book } = await openToday('2026-05-09', { moved: ['2026-05-01'] });
    book.resetCounts();
    book.type(tab, a1, typed);
    expect(book.callTotal).toBe(0);
  });

  test('a tick of the grower’s own in column B of another tab: the name and the tab, nothing is read or written', async () => {
    const { book } = await openToday('2026-05-09', { moved: ['2026-05-01'] });
    book.resetCounts();
    book.type('Ground', 'B9', 'TRUE');
    expect(book.callCounts).toEqual({
      'SpreadsheetApp.getActiveSpreadsheet': 1,
      'Spreadsheet.getRangeByName': 1,
      'Range.getSheet': 2,
      'Sheet.getName': 2,
    });
    expect(book.waits).toBe(1);
    expect(book.value('Ground', 'B9')).toBe(true);
  });

  test('a tick on the page: four waits', async () => {
    const { book } = await openToday('2026-05-09', { moved: ['2026-05-01'] });
    book.resetCounts();
    tick(book, 'Reds');
    // The name, values and formulas of the page, and the flush.
    expect(book.waits).toBe(4);
  });
});
