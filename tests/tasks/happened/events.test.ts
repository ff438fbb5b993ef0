/** Each thing that can have happened: what is typed for it, where, and what is refused. */
import { describe, expect, test, vi } from 'vitest';
import { type FarmNow, farmNow } from '../../../shared/tasks/happened/farm-now';
import type { Happened } from '../../../shared/tasks/happened/happened';
import { record, takeBack } from '../../../shared/tasks/happened/record';
import { typedFor, typingWords } from '../../../shared/tasks/happened/typed-for';
import { HERD_TASK } from '../../../shared/tasks/herd/herd-task';
import { portOf, runTask, type Workbook } from '../../../src/headless';
import { cellUnder } from '../../cell-under';
import { readBook } from '../../hard-use/rotation-task';
import { setToday } from '../../sidebar/happened-farm';
import { withoutMemory } from '../../without-memory';
import { day, openToday, shown } from '../today/today-farm';

vi.setConfig({ testTimeout: 60_000 });

/** Reds: North 1 May, South 8 May, East 15 May. =Greens*: Pen* from 8 May. Moves in rows 6, 7, 9 and 8. */
async function farm(today: string, moved: readonly (string | undefined)[] = []) {
  const { book } = await openToday(today, { moved });
  return { book, now: nowOf(book) };
}

function nowOf(book: Workbook): FarmNow {
  const now = farmNow(readBook(book));
  if ('missing' in now) throw new Error(now.missing.join());
  return now;
}

function idOf({ cards }: FarmNow, paddock: string): string {
  return cards.flatMap(({ moves }) => moves).find((move) => move.paddock === paddock)!.id;
}

/** What is typed, as "D7 2026-05-09"; or what is said. */
function typed(now: FarmNow, happened: Happened): string[] | string {
  const read = typedFor(now, happened);
  if ('problem' in read) return read.problem;
  return read.typed.map(({ cell: { column, row, after } }) => {
    const value = 'v' in after ? after.v : '';
    return `${String.fromCharCode(64 + column)}${row} ${value}`;
  });
}

const REDS = { group: 'Reds' } as const;

describe('the cards', () => {
  test('go by the days typed, and by the plan where none is', async () => {
    const { now } = await farm('2026-05-10', ['2026-05-01']);
    const [reds, greens] = now.cards;
    expect([reds!.at?.paddock, reds!.isRecorded, reds!.open.map(({ paddock }) => paddock)]).toEqual([
      'North',
      true,
      ['South', 'East'],
    ]);
    expect([reds!.next?.paddock, reds!.head]).toEqual(['South', 10]);
    expect([greens!.at?.paddock, greens!.isRecorded, greens!.next?.paddock]).toEqual(['Pen*', false, 'Pen*']);
  });
});

test('the next move is the first that nobody recorded, however near the one after it is', async () => {
  const { now } = await farm('2026-05-14', ['2026-05-01']);
  expect(now.cards[0]!.open.map(({ paddock }) => paddock)).toEqual(['South', 'East']);
  expect(now.cards[0]!.next?.paddock).toBe('South');
});

describe('a move', () => {
  test('is typed under Moved in, into the paddock that was planned or another', async () => {
    const { now } = await farm('2026-05-10', ['2026-05-01']);
    const move = idOf(now, 'South');
    expect(typed(now, { what: 'moved', ...REDS, move, day: '2026-05-09' })).toEqual(['D7 2026-05-09']);
    expect(typed(now, { what: 'moved', ...REDS, move, day: '2026-05-09', paddock: 'East' })).toEqual([
      'B7 East',
      'D7 2026-05-09',
    ]);
  });
  test('that nobody planned is a row of its own', async () => {
    const { now } = await farm('2026-05-05', ['2026-05-01']);
    const happened = { what: 'moved', ...REDS, move: '', day: '2026-05-04', paddock: 'East' } as const;
    expect(typed(now, happened)).toEqual(['A10 Reds', 'B10 East', 'D10 2026-05-04']);
  });
  test.each([
    [{ day: '2026-05-11' }, 'The day must be 2026-05-10 or before, got 2026-05-11'],
    [{ day: '2026-05-01' }, 'Reds came to North on 2026-05-01: the day must be after that'],
    [{ day: '' }, 'Give the day.'],
    [{ paddock: 'Moon' }, '“Moon” is not in your paddock list.'],
    [{ paddock: 'Pen*' }, '=Greens* stands in Pen* since Fri 8 May as planned, no day typed. Two groups'],
    [{ move: 'x' }, 'Choose the move.'],
    [{ group: 'Blues' }, '“Blues” is neither in the group list'],
    [{ move: 'last', day: '2026-05-07' }, 'Reds, South on Fri 8 May comes before it.'],
  ])('%o is refused', async (other, says) => {
    const { now } = await farm('2026-05-10', ['2026-05-01']);
    const ids = { last: idOf(now, 'East'), x: 'x' };
    const happened = { what: 'moved', ...REDS, move: idOf(now, 'South'), day: '2026-05-09' } as const;
    const { move } = other as { move?: keyof typeof ids };
    expect(typed(now, { ...happened, ...other, ...(move && { move: ids[move] }) })).toContain(says);
  });
  test('a group without a next move is told', async () => {
    const { now } = await farm('2026-05-20', ['2026-05-01', undefined, undefined, '2026-05-15']);
    const move = idOf(now, 'East');
    expect(typed(now, { what: 'moved', ...REDS, move, day: '2026-05-18' })).toBe(
      'No move of Reds is planned. Nothing was written.',
    );
  });
});

describe('a move that was left out, or is late', () => {
  test('skipped is a word under Moved in', async () => {
    const { now } = await farm('2026-05-10', ['2026-05-01']);
    expect(typed(now, { what: 'skipped', ...REDS, move: idOf(now, 'South') })).toEqual(['D7 skipped']);
  });
  test('in the sheet the group goes on to the next at once, on today’s page too, and nothing is called wrong', async () => {
    const { book, now } = await farm('2026-05-10', ['2026-05-01']);
    await record(portOf(book), { what: 'skipped', ...REDS, move: idOf(now, 'South') });
    expect(shown(book, 'Reds', 'Stands in', 'Goes to', 'On')).toEqual(['North', 'East', 'Fri 8 May']);
    const [skipped, next] = [book.shownValues('Rotation')[6]!, book.shownValues('Rotation')[8]!];
    // Planned in, moved in, out, head, rest before and check of the one left out; planned in of the next.
    expect([skipped[2], skipped[3], skipped[5], skipped[10], skipped[12]]).toEqual([
      'Fri 8 May 2026',
      'skipped',
      '',
      '',
      '',
    ]);
    expect(next[2]).toBe('Fri 8 May 2026');
    expect(nowOf(book).cards[0]!.next?.paddock).toBe('East');
  });
  test('not yet lengthens the stay before it, which gets its day where it has none', async () => {
    const late = await farm('2026-05-10', ['2026-05-01']);
    const [south, east] = [idOf(late.now, 'South'), idOf(late.now, 'East')];
    expect(typed(late.now, { what: 'not yet', ...REDS, move: south, day: '2026-05-12' })).toEqual(['E6 11']);
    expect(typed(late.now, { what: 'not yet', ...REDS, move: east, day: '2026-05-18' })).toEqual([
      'D7 2026-05-08',
      'E7 10',
    ]);
    expect(typed(late.now, { what: 'not yet', ...REDS, move: south, day: '2026-05-09' })).toContain(
      'The new day must be 2026-05-10 or later',
    );
    expect(typed(late.now, { what: 'not yet', ...REDS, move: south, day: '2026-05-22' })).toContain(
      'The season ends on 2026-05-22',
    );
    const first = await farm('2026-05-02');
    const north = idOf(first.now, 'North');
    expect(typed(first.now, { what: 'not yet', ...REDS, move: north, day: '2026-05-04' })).toContain(
      'Reds has not come in yet',
    );
  });
  test('all as planned: one cell a group, for the last move that was due', async () => {
    const { now } = await farm('2026-05-16');
    expect(typed(now, { what: 'as planned' })).toEqual(['D9 2026-05-15', 'D8 2026-05-08']);
    const done = await farm('2026-05-16', ['2026-05-01', undefined, '2026-05-08', '2026-05-15']);
    expect(typed(done.now, { what: 'as planned' })).toContain('Every move up to today has its day');
  });
});

test('cover left is a percent of a stay that has begun', async () => {
  const { now } = await farm('2026-05-10', ['2026-05-01']);
  const move = idOf(now, 'North');
  expect(typed(now, { what: 'cover', ...REDS, move, cover: '60' })).toEqual(['Q6 0.6']);
  expect(typed(now, { what: 'cover', ...REDS, move, cover: '0.5 %' })).toEqual(['Q6 0.005']);
  for (const cover of ['', '0.6', '101', '-1', 'much'])
    expect(typed(now, { what: 'cover', ...REDS, move, cover })).toContain('Cover left must be in percent');
  expect(typed(now, { what: 'cover', ...REDS, move: idOf(now, 'East'), cover: '60' })).toContain(
    'Choose the stay',
  );
});

describe('heads and weights', () => {
  const sold = { what: 'herd', ...REDS, day: '2026-05-10', head: '7', note: 'three sold' } as const;
  test('need the herd log, and then fill its next rows', async () => {
    const { book, now } = await farm('2026-05-10', ['2026-05-01']);
    expect(typed(now, sold)).toBe('There is no herd log yet.');
    expect((await runTask(portOf(book), HERD_TASK)).kind).toBe('written');
    // The log has two rows from the list.
    expect(typed(nowOf(book), { ...sold, weight: '75' })).toEqual([
      'A9 Reds',
      'B9 2026-05-10',
      'C9 7',
      'D9 75',
      'E9 three sold',
    ]);
    await record(portOf(book), sold);
    expect(nowOf(book).cards[0]!.head).toBe(7);
  });
  test.each([
    [{ day: '2026-04-30' }, 'Reds came in on Fri 1 May'],
    [{ head: '0' }, 'Reds still has moves, the last into East on Fri 15 May'],
    [{ head: 'some' }, 'Head must be a whole number from 0 to 5000, got some.'],
    [{ head: '100000' }, 'Head must be a whole number from 0 to 5000, got 100000.'],
    [{ head: '', weight: '62,5 sacks' }, 'The weight must be that of one pig'],
    [{ head: '', weight: '1500' }, 'got 1500.'],
    [{ head: '', weight: '-3' }, 'The weight must be that of one pig'],
    [{ head: '', weight: '' }, 'Give how many there are now'],
  ])('%o is refused', async (other, says) => {
    const { book } = await farm('2026-05-10', ['2026-05-01']);
    await runTask(portOf(book), HERD_TASK);
    expect(typed(nowOf(book), { ...sold, ...other })).toContain(says);
  });
  // 60 kg ÷ 0.45359237 kg a pound (exact) = 132.277… lb.
  test.each([
    ['62,5', 'D9 62.5'],
    ['60 kg', 'D9 132.277'],
    ['140 lb', 'D9 140'],
  ])('a weight of %s is read as a list reads it', async (weight, cell) => {
    const { book } = await farm('2026-05-10', ['2026-05-01']);
    await runTask(portOf(book), HERD_TASK);
    expect(String(typed(nowOf(book), { ...sold, head: '', weight }))).toContain(cell);
  });
  test('head 0 is taken where all have gone', async () => {
    const { book } = await farm('2026-05-10', ['2026-05-01']);
    await runTask(portOf(book), HERD_TASK);
    const gone = { ...sold, head: '0', allGone: true };
    expect(typed(nowOf(book), gone)).toContain('C9 0');
    await record(portOf(book), gone);
    expect(nowOf(book).cards[0]).toMatchObject({ head: 0, next: undefined, open: [] });
  });
});

describe('a paddock that is shut', () => {
  const east = (book: Workbook) => nowOf(book).lists.paddocks.find(({ name }) => name === 'East')!;
  const shut = { what: 'shut', paddock: 'East', day: '2026-05-12', until: '2026-05-16' } as const;
  test('gets its days in the list, in columns that are made', async () => {
    const { book, now } = await farm('2026-05-10', ['2026-05-01']);
    const [heading, from] = ['C1 Shut from', 'C4 2026-05-12'];
    expect(typed(now, { ...shut, until: '' })).toEqual([heading, from]);
    expect(typed(now, shut)).toEqual([heading, from, 'D1 Shut until', 'D4 2026-05-16']);
    const cells = await record(portOf(book), shut);
    expect(east(book)).toMatchObject({ shutFrom: day('2026-05-12'), shutUntil: day('2026-05-16') });
    await takeBack(portOf(book), cells);
    expect(east(book)).not.toHaveProperty('shutFrom');
  });
  test('gets other days where they are corrected, and another time once the first is over', async () => {
    const { book } = await farm('2026-05-10', ['2026-05-01']);
    await record(portOf(book), shut);
    const other = { ...shut, day: '2026-05-20', until: '2026-05-25' };
    expect(typed(nowOf(book), other)).toContain(
      'East is shut from Tue 12 May to Sat 16 May, and it has room',
    );
    await record(portOf(book), { ...shut, day: '2026-05-11', until: '' });
    expect(east(book)).toMatchObject({ shutFrom: day('2026-05-11') });
    expect(east(book)).not.toHaveProperty('shutUntil');
    await record(portOf(book), shut);
    setToday(book, '2026-05-17');
    expect(typed(nowOf(book), other)).toEqual(['C4 2026-05-20', 'D4 2026-05-25']);
  });
  test.each([
    [{ paddock: 'Moon' }, '“Moon” is not in your paddock list'],
    [{ paddock: 'North' }, 'Reds stands in North since Fri 1 May: record first where it went'],
    [{ until: '2026-05-09' }, 'The last day must be 2026-05-10 or later'],
    [{ day: '' }, 'Give the day.'],
  ])('%o is refused', async (other, says) => {
    const { now } = await farm('2026-05-10', ['2026-05-01']);
    expect(typed(now, { what: 'shut', paddock: 'East', day: '2026-05-10', until: '', ...other })).toContain(
      says,
    );
  });
});

describe('writing', () => {
  test('is taken back to the letter', async () => {
    const { book, now } = await farm('2026-05-10', ['2026-05-01']);
    const before = [book.values('Rotation'), book.shownValues('Rotation'), book.formulas('Rotation')];
    const move = idOf(now, 'South');
    for (const happened of [
      { what: 'moved', ...REDS, move, day: '2026-05-09', paddock: 'East' },
      { what: 'moved', ...REDS, move: '', day: '2026-05-09', paddock: 'East' },
      { what: 'skipped', ...REDS, move },
      { what: 'not yet', ...REDS, move, day: '2026-05-12' },
      { what: 'as planned' },
    ] as const) {
      const cells = await record(portOf(book), happened);
      expect(withoutMemory(book.shownValues('Rotation'))).not.toEqual(withoutMemory(before[1] as string[][]));
      await takeBack(portOf(book), cells);
      expect([book.values('Rotation'), book.shownValues('Rotation'), book.formulas('Rotation')]).toEqual(
        before,
      );
    }
  });
  test('is refused where the sheet has changed, and so is taking back', async () => {
    const { book, now } = await farm('2026-05-10', ['2026-05-01']);
    const happened = { what: 'moved', ...REDS, move: idOf(now, 'South'), day: '2026-05-09' } as const;
    const read = typedFor(now, happened);
    const seen = 'typed' in read ? read.typed.map(({ cell }) => cell) : [];
    expect('typed' in read && read.typed.map(typingWords)).toEqual([
      'Moved in of Reds, South on Fri 8 May: Sat 9 May (Rotation!D7)',
    ]);
    book.type('Rotation', cellUnder(book, 'Moved in', 7), '2026-05-08');
    await expect(record(portOf(book), happened, seen)).rejects.toThrow(
      'Choose the move. Nothing was written.',
    );
    book.range('Rotation', cellUnder(book, 'Moved in', 7)).clearContent();
    const cells = await record(portOf(book), happened, seen);
    book.type('Rotation', cellUnder(book, 'Moved in', 7), '2026-05-10');
    await expect(takeBack(portOf(book), cells)).rejects.toThrow(
      /^D7 on "Rotation" was changed after .* Nothing was written/,
    );
    expect(book.shownValues('Rotation')[6]![3]).toBe('Sun 10 May 2026');
  });
});
