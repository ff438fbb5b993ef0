/** The whole way with a herd log: plan, write, moves typed, list and log changed, built anew. */
import { expect, test } from 'vitest';
import { dayFromIso } from '../../../shared/core/calendar/day';
import { HERD_BLOCK, herdBlock, herdRow } from '../../../shared/tasks/herd/herd-block';
import { openWorkbook, type Workbook } from '../../../src/headless';
import { cellUnder } from '../../cell-under';
import { buildRotation } from '../../hard-use/rotation-task';
import { FARM_RULES, farmToType } from '../../hard-use/typed-farm';
import { scriptText } from '../script-text';
import { writeInSheet } from '../sheet-block';

const KG = 0.45359237;

interface Move {
  readonly row: number;
  readonly group: string;
  readonly planned: string;
  readonly head: unknown;
  readonly weight: unknown;
}

function moves(book: Workbook): Move[] {
  const values = book.values('Rotation');
  const head = values.findIndex((row) => row.includes('Moved in'));
  const at = (heading: string): number => values[head]!.indexOf(heading);
  const end = values.findIndex((row) => row[0] === 'Settings of this table');
  return values.slice(head + 2, end).flatMap((row, i) =>
    row[at('Moved in') - 1] instanceof Date
      ? [
          {
            row: head + 3 + i,
            group: String(row[0]),
            planned: (row[at('Planned in')] as Date).toISOString().slice(0, 10),
            head: row[at('Head')],
            weight: Number(Number(row[at('Weight in (lb)')]).toFixed(6)),
          },
        ]
      : [],
  );
}

/** Without the rows, in which moves may stand elsewhere. */
function figures(all: readonly Move[]): unknown[] {
  return all.map(({ row: _, ...rest }) => rest);
}

/** Each stay of a group beside a ledger of its days; a stay in which the head changes says so. */
function expectHeadDays(book: Workbook, name: string, headOn: (day: number) => number): void {
  const values = book.values('Rotation');
  const head = values.findIndex((row) => row.includes('Moved in'));
  const cell = (row: readonly unknown[], heading: string) => row[values[head]!.indexOf(heading)];
  const dayIn = (value: unknown): number => dayFromIso((value as Date).toISOString().slice(0, 10))!;
  const rows = values.slice(head + 2).filter((row) => row[0] === name && cell(row, 'In') instanceof Date);
  const changed = rows.filter((row) => {
    const [from, to] = [dayIn(cell(row, 'In')), dayIn(cell(row, 'Out'))];
    const ledger = Array.from({ length: to - from }, (_, d) => headOn(from + d));
    const headDays = ledger.reduce((sum, one) => sum + one, 0);
    expect(Number(cell(row, 'Mean head')) * (to - from), String(row[1])).toBeCloseTo(headDays, 6);
    expect(cell(row, 'Most head'), String(row[1])).toBe(Math.max(...ledger));
    const last = ledger[ledger.length - 1];
    const says = last === ledger[0] ? /^$/ : new RegExp(`^${last} head from \\d Apr$`);
    expect(cell(row, 'Herd log'), String(row[1])).toMatch(says);
    return last !== ledger[0];
  });
  expect(changed.length).toBeGreaterThan(0);
}

test('what is past keeps its figures, what is to come follows the log; nothing typed, nothing changed', async () => {
  const book = await openWorkbook({
    tabs: farmToType('US'),
    codeJs: await scriptText(),
    today: '2026-04-01',
  });
  const day = (iso: string): number => dayFromIso(iso)!;
  const entries = [
    { group: 'Reds', day: day('2026-03-28'), head: 10, weightKg: 60 * KG },
    { group: 'Blacks', day: day('2026-03-28'), head: 8, weightKg: 90 * KG },
    { group: 'Reds', day: day('2026-04-06'), head: 7 },
  ];
  const rows = entries.map((entry) => herdRow(entry, '', 'US'));
  const corner = { row: 1, column: 1 };
  writeInSheet(book, HERD_BLOCK, herdBlock(rows, 'US', corner), { at: 'new-tab', tab: 'Herd log' });
  expect((await buildRotation(book, { rules: FARM_RULES, units: 'US' })).kind).toBe('written');
  const first = moves(book);
  const reds = first.filter(({ group }) => group === 'Reds');
  for (const { planned, head, weight } of reds) {
    expect(head, planned).toBe(planned < '2026-04-06' ? 10 : 7);
    // 60 lb on 28 March, 1.5 lb a day.
    expect(weight, planned).toBeCloseTo(60 + 1.5 * (day(planned) - day('2026-03-28')), 5);
  }
  expect(reds.some(({ planned }) => planned >= '2026-04-06')).toBe(true);

  // Built anew with nothing typed: the same table, formula for formula.
  const formulas = book.formulas('Rotation');
  expect((await buildRotation(book)).kind).toBe('written');
  expect(book.formulas('Rotation')).toEqual(formulas);
  expect(moves(book)).toEqual(first);

  // The first two moves of the Reds happened on their days; then the list is changed and the table built anew.
  for (const { row, planned } of reds.slice(0, 2))
    book.type('Rotation', cellUnder(book, 'Moved in', row), planned);
  book.state.now = () => new Date('2026-04-07T12:00:00Z');
  book.type('Pigs', 'B2', '3');
  book.type('Pigs', 'C2', '44');
  const outcome = await buildRotation(book);
  expect(outcome.kind === 'written' ? outcome.rebuild?.notes : outcome).toEqual(
    expect.not.arrayContaining([expect.stringContaining('another column')]),
  );
  const after = moves(book).filter(({ group }) => group === 'Reds');
  expect(figures(after.slice(0, 2))).toEqual(figures(reds.slice(0, 2)));
  for (const { planned, head } of after.slice(2)) expect(head, planned).toBe(planned < '2026-04-06' ? 10 : 7);

  // A sale that is typed into the log on the 8th: the planner bears it, the past stays.
  book.type('Herd log', 'A10', 'Reds');
  book.type('Herd log', 'B10', '2026-04-08');
  book.type('Herd log', 'C10', '5');
  const sold = await buildRotation(book);
  expect(sold.kind).toBe('written');
  const last = moves(book).filter(({ group }) => group === 'Reds');
  expect(figures(last.slice(0, 2))).toEqual(figures(reds.slice(0, 2)));
  for (const { planned, head } of last.slice(2)) expect(head, planned).toBe(planned < '2026-04-08' ? 7 : 5);
  expectHeadDays(book, 'Reds', (on) => (on < day('2026-04-06') ? 10 : on < day('2026-04-08') ? 7 : 5));
});

test('a log begun after the table, and a weight without a day, are no columns that have changed places', async () => {
  const tabs = farmToType('US');
  const book = await openWorkbook({ tabs, codeJs: await scriptText(), today: '2026-04-01' });
  // The Reds have no day of weighing: today's counts. The weight of the Blacks is words, so the table holds it as a value.
  book.type('Pigs', 'D2', '');
  book.type('Pigs', 'C3', 'about 90 lb');
  expect((await buildRotation(book, { rules: FARM_RULES, units: 'US' })).kind).toBe('written');
  const second = ['Reds', 'Blacks'].map((name) => moves(book).filter(({ group }) => group === name)[1]!);
  book.state.now = () => new Date('2026-04-06T12:00:00Z');
  for (const { row } of second) book.type('Rotation', cellUnder(book, 'Moved in', row), '2026-04-03');
  const entry = { group: 'Blacks', day: dayFromIso('2026-04-02')!, weightKg: 100 * KG };
  const log = herdBlock([herdRow(entry, '', 'US')], 'US', { row: 1, column: 1 });
  writeInSheet(book, HERD_BLOCK, log, { at: 'new-tab', tab: 'Herd log' });

  const outcome = await buildRotation(book);
  const notes = outcome.kind === 'written' ? outcome.rebuild?.notes.join() : JSON.stringify(outcome);
  expect(notes).not.toContain('another column');
  expect(outcome.kind).toBe('written');
  const after = second.map(({ group, planned }) =>
    moves(book).find((move) => move.group === group && move.planned === planned),
  );
  // By hand: 60 lb on 1 April and 1.5 lb a day, two days; 100 lb on 2 April and 1.6 lb, one day.
  expect(after.map((move) => move?.weight)).toEqual([63, 101.6]);
});
