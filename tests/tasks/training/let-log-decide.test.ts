/** The button that lets the training log decide: what goes into the group list, and what stays. */
import { describe, expect, test } from 'vitest';
import { cellA1 } from '../../../shared/block/a1';
import { date, number, text } from '../../../shared/block/cells';
import { dayFromIso } from '../../../shared/core/calendar/day';
import { growerLists } from '../../../shared/tasks/grower-lists';
import { ifWritten } from '../../../shared/tasks/run-task';
import { startSettings } from '../../../shared/tasks/settings';
import { letLogDecide } from '../../../shared/tasks/training/let-log-decide';
import { composeLogBlock, LOG_BLOCK, LOG_SETTINGS } from '../../../shared/tasks/training/log-block';
import { LOG_TASK } from '../../../shared/tasks/training/log-task';
import { readyCells } from '../../../shared/tasks/training/ready-cells';
import { openWorkbook, type StartCell, type Workbook } from '../../../src/headless';
import { readBook } from '../../hard-use/rotation-task';
import { scriptText } from '../script-text';
import { readAsWritten, writeInSheet } from '../sheet-block';

const day = (iso: string): number => dayFromIso(iso)!;
const PADDOCKS: StartCell[][] = [
  ['Paddock', 'Acres'],
  ['North', 0.5],
  ['South', 0.5],
];

function trained(name: string, group: string, isPassed: boolean) {
  return new Map([
    ['Pig or batch', text(name)],
    ['Group', text(group)],
    ['Head', number(9)],
    ['In the pen on', date(day('2026-04-01'))],
    ['Saw the wire on', date(day('2026-04-02'))],
    ['Backed off on', date(day('2026-04-02'))],
    ...(isPassed ? ([['Passed check on', date(day('2026-04-06'))]] as const) : []),
    ['Observer', text('Ada')],
  ]);
}

async function open(pigs: StartCell[][], locale = 'en_US') {
  const tabs = { Paddocks: PADDOCKS, Pigs: pigs };
  const book = await openWorkbook({ tabs, codeJs: await scriptText(), locale, today: '2026-04-20' });
  const rows = [trained('first', 'Reds', true), trained('second', 'Blacks', false)];
  const block = composeLogBlock(startSettings(LOG_SETTINGS, 'US'), rows, [], { row: 1, column: 1 });
  const info = writeInSheet(book, LOG_BLOCK, block, { at: 'new-tab', tab: 'Training log' });
  return { book, log: readAsWritten(book, info) };
}

function decided({ book, log }: Awaited<ReturnType<typeof open>>) {
  const lists = growerLists(readBook(book), 'US');
  return letLogDecide(log, lists.sources.groups!, lists.groups);
}

function fill(book: Workbook, { cells }: ReturnType<typeof letLogDecide>) {
  return book.ask('changeCells', { cells });
}

const WITH_FROM: StartCell[][] = [
  ['Group', 'Head', 'Weight (lb)', 'Weighed on', 'In rotation from', 'Until'],
  ['Reds', 9, 60, { d: '2026-03-28' }, '', { d: '2026-09-01' }],
  ['Blacks', 9, 60, { d: '2026-03-28' }, { d: '2026-05-02' }, { d: '2026-09-01' }],
  ['Whites', 9, 60, { d: '2026-03-28' }, '', { d: '2026-09-01' }],
];

/** No day stands in the row of the Blacks either. */
const BOTH_BLANK = WITH_FROM.map((row, r) => row.map((cell, c) => (r === 2 && c === 4 ? '' : cell)));

describe('a list with the column', () => {
  test.each(['en_US', 'de_DE'])(
    'blank cells of groups in the log are filled, a typed day stays and is told (%s)',
    async (locale) => {
      const farm = await open(WITH_FROM, locale);
      const plan = decided(farm);
      expect(plan.told).toEqual([
        'E3 (2026-05-02) stays for Blacks: clear it to let the log decide.',
        'Not in the log, so nothing is put in: Whites.',
      ]);
      expect(fill(farm.book, plan)).toEqual({ ok: true, data: { cells: 1 } });
      // The check on 6 April, later than 3 days in the pen.
      expect(farm.book.value('Pigs', 'E2')).toEqual(new Date('2026-04-06T00:00:00Z'));
      expect([farm.book.value('Pigs', 'E4'), farm.book.formula('Pigs', 'E3')]).toEqual(['', '']);
      const reds = growerLists(readBook(farm.book), 'US').groups.find(({ name }) => name === 'Reds');
      expect(reds?.from).toBe(day('2026-04-06'));
      // Pressed again: nothing is left to do, and its own formula is no day that was typed.
      expect(decided(farm).cells).toEqual([]);
      expect(decided(farm).told).toEqual(plan.told);
    },
  );

  test('a group that is not ready stops the planning, by its cell', async () => {
    const farm = await open(BOTH_BLANK);
    fill(farm.book, decided(farm));
    expect(farm.book.value('Pigs', 'E3')).toBe('not ready');
    const { problems } = growerLists(readBook(farm.book), 'US');
    expect(problems.map(({ cell }) => cell)).toEqual(['Pigs!E3']);
  });
});

describe('a list without the column', () => {
  test('it is made at the right edge, and told', async () => {
    const list = WITH_FROM.map((row) => row.filter((_, c) => c !== 4));
    const farm = await open(list);
    const plan = decided(farm);
    expect(plan.told[0]).toBe('The list has no such column: “In rotation from” is put into F1.');
    expect(fill(farm.book, plan)).toEqual({ ok: true, data: { cells: 3 } });
    expect(farm.book.values('Pigs').map((row) => row[5])).toEqual([
      'In rotation from',
      new Date('2026-04-06T00:00:00Z'),
      'not ready',
      '',
    ]);
  });
});

describe('nothing of the grower’s is written over', () => {
  test('what was typed meanwhile refuses all of it', async () => {
    const farm = await open(BOTH_BLANK);
    const plan = decided(farm);
    farm.book.type('Pigs', 'E3', 'mine');
    expect(fill(farm.book, plan)).toEqual({
      ok: false,
      error:
        'E3 on "Pigs" was changed after it was read here. Read the spreadsheet again. Nothing was written.',
    });
    expect(farm.book.formula('Pigs', 'E2')).toBe('');
  });

  test('cut short at any call: both cells or none', async () => {
    const farm = await open(BOTH_BLANK);
    farm.book.resetCounts();
    const plan = decided(farm);
    const before = farm.book.callTotal;
    fill(farm.book, plan);
    const calls = farm.book.callTotal - before;
    expect(calls).toBeGreaterThan(10);
    for (let call = 0; call < calls; call++) {
      for (const cell of ['E2', 'E3']) farm.book.range('Pigs', cell).clearContent();
      farm.book.resetCounts();
      farm.book.killAt(call, 'before');
      const reply = fill(farm.book, plan);
      farm.book.clearFailures();
      const filled = ['E2', 'E3'].filter((cell) => farm.book.formula('Pigs', cell) !== '');
      expect(filled, `call ${call}`).toHaveLength(reply.ok ? 2 : 0);
    }
  });
});

describe('when the log is written anew, longer', () => {
  test('the look-ups are ours and none of the cells that are warned of; the grower’s own are', async () => {
    const { book, log } = await open(BOTH_BLANK);
    fill(book, decided({ book, log }));
    // The same kind of look-up, into another column.
    const own = book.formula('Pigs', 'E2').replaceAll(/\$[A-Z]+\$/g, '$A$');
    book.type('Pigs', 'H2', own);
    const last = log.values.findIndex(([name]) => name === 'second') + 1;
    for (let more = 1; more <= 3; more++) book.type('Training log', `A${last + more}`, `more ${more}`);
    const now = readBook(book);
    expect(ifWritten(LOG_TASK, LOG_TASK.read(now, {}), now)?.astray).toEqual(['Pigs!H2']);
    expect(readyCells(now).map(({ row, column }) => cellA1(row, column))).toEqual(['E2', 'E3']);
  });
});
