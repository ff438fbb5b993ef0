/**
 * The herd log against a ledger kept by hand: head-days and weights of a season in which pigs are sold, die, join and
 * are weighed. Nothing of the ledger's arithmetic comes from the code: it stands written out here.
 */
import { describe, expect, test } from 'vitest';
import { bookOf } from '../../../shared/block/book';
import type { WholeFile } from '../../../shared/contract';
import { dayFromIso } from '../../../shared/core/calendar/day';
import type { ReadGroup } from '../../../shared/lists/model';
import { groupLoadOn, groupWeightOn } from '../../../shared/plan/group-weights';
import { herdOn } from '../../../shared/plan/herd-on';
import { rotationBlock } from '../../../shared/table/rotation-block';
import { growerLists } from '../../../shared/tasks/grower-lists';
import { boundHerd } from '../../../shared/tasks/herd/bound-herd';
import { HERD_BLOCK, type HerdEntry, herdBlock, herdRow } from '../../../shared/tasks/herd/herd-block';
import { readHerd } from '../../../shared/tasks/herd/read-herd';
import { withHerd } from '../../../shared/tasks/herd/with-herd';
import { openWorkbook, type StartCell, type Workbook } from '../../../src/headless';
import { cellUnder } from '../../cell-under';
import { BLOCK_NAME, readFarm } from '../../table/farm-in-sheet';
import { scriptText } from '../script-text';
import { readAsWritten, writeInSheet } from '../sheet-block';

const day = (iso: string): number => dayFromIso(iso)!;
const KG = 0.45359237;

/** Reds: 20 head of 60 lb on 1 May, 1.5 lb a day. */
const REDS: ReadGroup = {
  name: 'Reds',
  head: 20,
  weightKg: 60 * KG,
  weighedOn: day('2026-05-01'),
  dailyGainKg: 1.5 * KG,
  from: day('2026-05-01'),
  cells: {},
};

/** Two die on the 6th, five are sold on the 15th, the rest weighed on the 18th at 90 lb, three join on the 20th. */
const CHANGES: readonly HerdEntry[] = [
  { group: 'Reds', day: day('2026-05-01'), head: 20, weightKg: 60 * KG },
  { group: 'Reds', day: day('2026-05-06'), head: 18 },
  { group: 'reds ', day: day('2026-05-15'), head: 13 },
  { group: 'Reds', day: day('2026-05-18'), weightKg: 90 * KG },
  { group: 'Reds', day: day('2026-05-20'), head: 16 },
];

async function openLog(entries: readonly HerdEntry[], locale = 'en_US') {
  const tabs: Record<string, StartCell[][]> = {
    Ground: [
      ['Paddock', 'Area (ac)'],
      ['North', 0.5],
      ['South', 0.5],
      ['East', 0.5],
      ['West', 0.5],
    ],
    Pigs: [
      ['Group', 'Head', 'Weight (lb)', 'Weighed on', 'Daily gain (lb)', 'From', 'Until'],
      ['Reds', 20, 60, { d: '2026-05-01' }, 1.5, { d: '2026-05-01' }, { d: '2026-05-29' }],
      ['Greens', 6, 80, { d: '2026-05-08' }, 1, { d: '2026-05-08' }, { d: '2026-05-22' }],
    ],
  };
  const book = await openWorkbook({ tabs, codeJs: await scriptText(), locale, today: '2026-05-01' });
  const block = herdBlock(
    entries.map((entry) => herdRow(entry, '', 'US')),
    'US',
    { row: 1, column: 1 },
  );
  return { book, info: writeInSheet(book, HERD_BLOCK, block, { at: 'new-tab', tab: 'Herd log' }) };
}

describe('the ledger', () => {
  test('head of each day, head-days of the season: 20·5 + 18·9 + 13·5 + 16·9 = 471', () => {
    const { groups } = withHerd([REDS], {
      ...NO_ROWS,
      entries: CHANGES.map((one) => ({ ...one, cell: '' })),
    });
    const reds = groups[0]!;
    // 1 to 5 May: 20; 6 to 14: 18; 15 to 19: 13; 20 to 28: 16.
    const ledger = [...Array(5).fill(20), ...Array(9).fill(18), ...Array(5).fill(13), ...Array(9).fill(16)];
    const heads = ledger.map((_, i) => herdOn(reds, day('2026-05-01') + i).head);
    expect(heads).toEqual(ledger);
    expect(heads.reduce((sum, head) => sum + head, 0)).toBe(20 * 5 + 18 * 9 + 13 * 5 + 16 * 9);
    expect(20 * 5 + 18 * 9 + 13 * 5 + 16 * 9).toBe(471);
  });

  test('weight grows from the last weighing; what the ground bears is head times the weight at mid-day', () => {
    const { groups } = withHerd([REDS], {
      ...NO_ROWS,
      entries: CHANGES.map((one) => ({ ...one, cell: '' })),
    });
    const reds = groups[0]!;
    // 17 May: 60 + 16 × 1.5 = 84 lb; 18 May: weighed, 90; 22 May: 90 + 4 × 1.5 = 96.
    for (const [iso, pounds] of [
      ['2026-05-17', 84],
      ['2026-05-18', 90],
      ['2026-05-22', 96],
    ] as const) {
      expect(groupWeightOn(reds, day(iso))).toBeCloseTo(pounds * KG, 9);
    }
    // Mid-day of 19 May: 13 × (90 + 1.5 × 1.5) = 1,199.25 lb.
    expect(groupLoadOn(reds, day('2026-05-19'))).toBeCloseTo(1199.25 * KG, 9);
  });

  test('head 0 ends the time of the group and is told; a group that is not listed, too', () => {
    const entries = [
      { group: 'Reds', day: day('2026-05-20'), head: 0, cell: 'Log!A7' },
      { group: 'Whites', day: day('2026-05-02'), head: 3, cell: 'Log!A8' },
    ];
    const { groups, notes } = withHerd([REDS], { ...NO_ROWS, entries });
    expect(groups[0]!.until).toBe(day('2026-05-20'));
    expect(notes).toEqual([
      'Log!A8: “Whites” is not in the group list, so nothing follows from it. If it has a new name there, “Keep the herd log” asks, and writes it.',
      'Reds has no head from Wed 20 May on by the herd log: it leaves on that day.',
    ]);
  });
});

const NO_ROWS = { rows: [], problems: [], lines: 0 };

describe('in the sheet', () => {
  test('is read back as it was written, and as it is typed', async () => {
    const { book, info } = await openLog(CHANGES);
    book.type('Herd log', 'A12', 'Greens');
    book.type('Herd log', 'B12', '2026-05-09');
    book.type('Herd log', 'D12', '81.5');
    const { entries, problems } = readHerd(readAsWritten(book, info));
    expect(problems).toEqual([]);
    expect(entries.map(({ group, day: on, head }) => [group.trim(), on, head])).toEqual([
      ['Reds', day('2026-05-01'), 20],
      ['Reds', day('2026-05-06'), 18],
      ['Greens', day('2026-05-09'), undefined],
      ['reds', day('2026-05-15'), 13],
      ['Reds', day('2026-05-18'), undefined],
      ['Reds', day('2026-05-20'), 16],
    ]);
    expect(entries[2]!.weightKg).toBeCloseTo(81.5 * KG, 9);
  });

  test('says beside a row why it does not count', async () => {
    const { book, info } = await openLog(CHANGES);
    const typed: readonly (readonly [row: number, cells: readonly string[], says: string])[] = [
      [12, ['', '2026-05-09', '3'], 'which group?'],
      [13, ['Greens', 'soon', '3'], 'type the day as a date'],
      [14, ['Greens', '2026-05-09'], 'type a head or a weight'],
      [15, ['Greens', '2026-05-09', 'six'], 'head must be a whole number, 0 or more'],
      [16, ['Greens', '2026-05-09', '-1'], 'head must be a whole number, 0 or more'],
      [17, ['Greens', '2026-05-09', '', '0'], 'weight must be that of one pig, 11 lb or more'],
      [18, ['Reds', '2026-05-06', '17'], 'two heads on one day: the larger counts'],
      [19, ['Greens', '2026-05-09', '13.5'], 'head must be a whole number, 0 or more'],
      [20, ['Greens', '2026-05-09', '', '1.05'], 'weight must be that of one pig, 11 lb or more'],
      [21, ['', '', '', '', 'left by the owner before'], ''],
    ];
    for (const [row, cells] of typed) {
      cells.forEach((text, c) => {
        if (text !== '') book.type('Herd log', `${'ABCDE'[c]}${row}`, text);
      });
    }
    for (const [row, , says] of typed) expect(book.value('Herd log', `F${row}`), `row ${row}`).toBe(says);
    expect(book.value('Herd log', 'F7')).toBe('');
    expect(readHerd(readAsWritten(book, info)).problems.map(({ cell }) => cell)).toEqual(
      ['A12', 'B13', 'C14', 'C15', 'C16', 'D17', 'C19', 'D20'].map((cell) => `Herd log!${cell}`),
    );
  });

  test('a row that cannot count stops the plan, with its cell', async () => {
    const { book } = await openLog(CHANGES);
    book.type('Herd log', 'A12', 'Greens');
    book.type('Herd log', 'B12', '2026-05-09');
    book.type('Herd log', 'C12', '-1');
    const reply = book.ask('readFile');
    if (!reply.ok) throw new Error(reply.error);
    const { problems } = growerLists(bookOf(reply.data as WholeFile), 'US');
    expect(problems).toEqual([
      { cell: 'Herd log!C12', sentence: 'Herd log!C12: head must be a whole number, 0 or more, got -1' },
    ]);
  });

  test.each(['en_US', 'de_DE', 'fr_FR', 'ja_JP'])(
    'head and weight of the rotation table come from it (%s)',
    async (locale) => {
      const { book, info } = await openLog(CHANGES, locale);
      const table = writeTable(book, info);
      // Reds in on 1, 8, 15 and 22 May, by hand: 20, 18, 13 and 16 head; 60, 70.5, 81 and, weighed at 90 on the 18th, 96 lb.
      expect(column(book, table, 'Head')).toEqual([20, 18, 13, 16]);
      expect(column(book, table, 'Weight in (lb)').map(rounded)).toEqual([60, 70.5, 81, 96]);
      // Another head in the list changes nothing: the log has the group from its first day.
      book.type('Pigs', 'B2', '99');
      book.type('Pigs', 'C2', '10');
      expect(column(book, table, 'Head')).toEqual([20, 18, 13, 16]);
      expect(column(book, table, 'Weight in (lb)').map(rounded)).toEqual([60, 70.5, 81, 96]);
      // One more sold on 21 May, typed: only what comes after changes.
      book.type('Herd log', 'A12', 'Reds');
      book.type('Herd log', 'B12', locale === 'de_DE' ? '21.05.2026' : '2026-05-21');
      book.type('Herd log', 'C12', '15');
      expect(column(book, table, 'Head')).toEqual([20, 18, 13, 15]);
      // A day moved in that is late takes the head of that day.
      const late = table.rows[1]!;
      book.type(
        'Rotation',
        cellUnder(book, 'Moved in', late),
        locale === 'de_DE' ? '15.05.2026' : '2026-05-15',
      );
      expect(column(book, table, 'Head')[1]).toBe(13);
    },
  );

  test('a group that is not in the log goes by the list, as before', async () => {
    const { book, info } = await openLog([{ group: 'Greens', day: day('2026-05-09'), head: 5 }]);
    const table = writeTable(book, info);
    expect(column(book, table, 'Head')).toEqual([20, 20, 20, 20]);
    book.type('Pigs', 'B2', '19');
    expect(column(book, table, 'Head')).toEqual([19, 19, 19, 19]);
  });
});

function rounded(value: unknown): number {
  return Number(Number(value).toFixed(6));
}

interface Table {
  readonly rows: readonly number[];
  readonly headings: readonly unknown[];
}

/** Four stays of Reds, laid out by hand, in a rotation table that reads the log. */
function writeTable(book: Workbook, log: Parameters<typeof readAsWritten>[1]): Table {
  const rules = {
    seasonStart: day('2026-05-01'),
    seasonEnd: day('2026-05-29'),
    rest: { kind: 'fixed', days: 30 },
    shortestStayDays: 3,
    longestStayDays: 7,
    moveWeekdays: [true, true, true, true, true, true, true],
    noMoveDays: [],
  } as const;
  const farm = readFarm({ book, tabs: ['Ground', 'Pigs'], system: 'US', rules });
  const stays = [0, 1, 2, 3].map((i) => ({
    group: 0,
    paddock: i,
    inDay: rules.seasonStart + 7 * i,
    outDay: rules.seasonStart + 7 * i + 7,
  }));
  const score = { total: 0, restShortDays: 0, overLimitDays: 0, moves: 4, strides: 0 };
  const sources = { ...farm.sources, herd: boundHerd(readAsWritten(book, log))! };
  const corner = { tab: 'Rotation', row: 1, column: 1 };
  const block = rotationBlock({ ...farm, sources, plan: { stays, score }, corner, warnings: [] });
  writeInSheet(book, BLOCK_NAME, block, { at: 'new-tab', tab: 'Rotation' });
  const values = book.values('Rotation');
  const head = values.findIndex((row) => row.includes('Moved in'));
  return { rows: [0, 1, 2, 3].map((i) => head + 3 + i), headings: values[head]! };
}

function column(book: Workbook, { rows, headings }: Table, heading: string): unknown[] {
  const values = book.values('Rotation');
  return rows.map((row) => values[row - 1]![headings.indexOf(heading)]);
}
