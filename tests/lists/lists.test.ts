import { describe, expect, it } from 'vitest';
import type { TabContent, WireCell } from '../../shared/contract';
import { dayFromIso } from '../../shared/core/calendar/day';
import { findLists } from '../../shared/lists/find-lists';
import type { FoundList, GroupList, PaddockList } from '../../shared/lists/model';
import { readGroups } from '../../shared/lists/read-groups';
import { readPaddocks } from '../../shared/lists/read-paddocks';
import { unitSystemOfLists } from '../../shared/lists/unit-system-of-lists';

const d = (iso: string): WireCell => ({ d: iso });

function tabOf(
  name: string,
  rows: readonly (readonly WireCell[])[],
  formulas: Record<string, string> = {},
): TabContent {
  const width = Math.max(...rows.map((row) => row.length));
  const values = rows.map((row) => [...row, ...new Array<WireCell>(width - row.length).fill('')]);
  return {
    name,
    values,
    formulas: values.map((row, r) => row.map((_, c) => formulas[`${r + 1},${c + 1}`] ?? '')),
  };
}

function one<Kind extends FoundList['kind']>(found: FoundList[], kind: Kind): FoundList & { kind: Kind } {
  const lists = found.filter((list) => list.kind === kind);
  expect(lists).toHaveLength(1);
  return lists[0] as FoundList & { kind: Kind };
}

describe('findLists', () => {
  it('finds a plain list and the units in its brackets', () => {
    const tab = tabOf('Paddocks', [
      ['Paddock', 'Area (ac)', 'Last used', 'Rest (weeks)', 'Next to'],
      ['North', 0.5, d('2026-03-01'), 5, 'South'],
      ['South', 0.25, '', '', 'north'],
    ]);
    const list = one(findLists([tab]), 'paddocks');
    expect(list.columns).toEqual({ name: 1, area: 2, lastUsed: 3, restDays: 4, adjoining: 5 });
    expect(list.units).toEqual({ area: 'ac', restDays: 'weeks' });
    const { paddocks, problems } = readPaddocks(tab, list, 'metric', false);
    expect(problems).toEqual([]);
    // 0.5 acre of 4046.8564224 m² (definition); 5 weeks are 35 days.
    expect(paddocks[0]).toMatchObject({
      name: 'North',
      areaSquareMeters: 2023.4282112,
      restDays: 35,
      adjoins: [1],
    });
    expect(paddocks[0]!.lastUsed).toBe(dayFromIso('2026-03-01'));
    expect(paddocks[1]).toMatchObject({ name: 'South', adjoins: [0] });
  });

  it('finds two lists side by side and one under another, with titles, blanks and totals', () => {
    const tab = tabOf(
      'Farm',
      [
        ['OUR FARM 2026'],
        [],
        ['Paddocks', '', '', '', '', 'The pigs'],
        [
          'HECTARES',
          'paddock name',
          'NOTE',
          'Closed until',
          '',
          'Number of pigs',
          'Avg. weight, kg',
          'Date weighed',
          'BATCH',
          'From',
        ],
        [0.2, 'Oak', 'steep', '', '', 12, 40, d('2026-04-01'), 'Reds', d('2026-04-10')],
        [],
        [0.3, 'Ash', '', d('2026-07-01'), '', 8, 55, d('2026-04-01'), 'Blacks', ''],
        [0.5, 'Total'],
        [],
        ['More ground'],
        ['Field', 'Width (m)', 'Length (m)'],
        ['Hay', 50, 80],
      ],
      { '8,1': '=SUM(A5:A7)' },
    );
    const found = findLists([tab]);
    expect(found.map((list) => [list.kind, list.headingRow, list.missing.length])).toEqual([
      ['groups', 4, 0],
      ['paddocks', 4, 0],
      ['paddocks', 11, 0],
    ]);
    const [groups, first, second] = found as unknown as [GroupList, PaddockList, PaddockList];
    const read = readPaddocks(tab, first, 'metric', false);
    expect(read.problems).toEqual([]);
    expect(read.paddocks.map((p) => [p.name, p.areaSquareMeters])).toEqual([
      ['Oak', 2000],
      ['Ash', 3000],
    ]);
    expect(read.leftOut).toEqual([{ cell: 'Farm!B8', text: 'Total' }]);
    expect(read.paddocks[1]!.openFrom).toBe(dayFromIso('2026-07-01'));
    expect(readPaddocks(tab, second, 'metric', false).paddocks.map((p) => p.areaSquareMeters)).toEqual([
      4000,
    ]);
    const pigs = readGroups(tab, groups, 'metric', false);
    expect(pigs.problems).toEqual([]);
    expect(pigs.groups.map((g) => [g.name, g.head, g.weightKg])).toEqual([
      ['Reds', 12, 40],
      ['Blacks', 8, 55],
    ]);
  });

  it('parts two lists that touch', () => {
    const tab = tabOf('T', [
      ['Paddock', 'Acres', 'From', 'Group', 'Head', 'Weight (lb)', 'Weighed', 'From'],
      ['A', 1, '', 'G', 10, 60, d('2026-04-01'), d('2026-04-03')],
    ]);
    const found = findLists([tab]);
    expect(one(found, 'paddocks').columns).toEqual({ name: 1, area: 2, openFrom: 3 });
    expect(one(found, 'groups').columns).toEqual({ name: 4, head: 5, weight: 6, weighedOn: 7, from: 8 });
  });

  it('finds nothing where there are no headings, and passes over our own block', () => {
    const bare = tabOf('Bare', [
      ['North', 1],
      ['South', 2],
    ]);
    expect(findLists([bare])).toEqual([]);
    const tab = tabOf('Rotation', [
      ['Group', 'Paddock', 'Head', 'Weight in'],
      ['G', 'P', 3, 4],
    ]);
    const block = { name: 'SOUNDER_ROTATION', tab: 'Rotation', row: 1, column: 1, rows: 2, columns: 4 };
    expect(findLists([tab], [block])).toEqual([]);
  });

  it('offers a list that lacks a required column and says which', () => {
    const tab = tabOf('T', [
      ['Paddock', 'Last used'],
      ['A', d('2026-01-01')],
    ]);
    const list = one(findLists([tab]), 'paddocks');
    expect(list.missing).toEqual(['area']);
    expect(readPaddocks(tab, list, 'US', false).problems.map((p) => p.sentence)).toEqual([
      'T!A1: the paddock list must have a column for area (or one for width and one for length); none was found',
    ]);
  });
});

describe('which list is meant', () => {
  const group = (day: string, ...more: string[]) => [
    ['Group', 'Head', 'Weight (kg)', 'Weighed on', ...more],
    ['Reds', 9, 40, day],
  ];
  const first = (tabs: Record<string, (string | number)[][]>): string | undefined =>
    findLists(Object.entries(tabs).map(([name, rows]) => tabOf(name, rows)))[0]?.tab;

  it('that of the later year in its name, though last year had more columns', () => {
    expect(first({ 'Pigs 2025': group('2025-05-01', 'ADG'), 'Pigs 2026': group('2026-05-01') })).toBe(
      'Pigs 2026',
    );
  });

  it('that of no year, where its days are later than the year of the other', () => {
    expect(first({ 'Pigs 2025': group('2025-05-01', 'ADG'), Pigs: group('2026-05-01') })).toBe('Pigs');
  });

  it('the fuller one where neither names a year', () => {
    expect(first({ Small: group('2026-05-01'), Full: group('2025-05-01', 'ADG') })).toBe('Full');
  });

  it('pens may be paddocks, groups, or where they stand', () => {
    const of = (...headings: string[]) =>
      findLists([tabOf('T', [headings, ['North', 9, 40], ['South', 8, 50]])])[0];
    expect(of('Pen', 'Acres')).toMatchObject({ kind: 'paddocks', columns: { name: 1 } });
    expect(of('Pen', 'Head', 'Weight')).toMatchObject({ kind: 'groups', columns: { name: 1 } });
    expect(of('Bunch', 'Head', 'Weight', 'Pen')?.columns).toMatchObject({ name: 1, paddock: 4 });
  });

  it('a table of feed beside the pens begins no list of its own, and a total of some groups is none', () => {
    const tab = tabOf('T', [
      ['Pen', 'Width (ft)', 'Length (ft)', 'Next to', '', 'FEED'],
      ['Barn', 85, 210, 'Creek', '', 'Date', 'Who', 'Lbs'],
      ['Creek', 90, 200, 'Barn', '', '2026-04-01', 'Mill', 2000],
    ]);
    expect(findLists([tab]).map(({ kind, items }) => [kind, items])).toEqual([['paddocks', 2]]);
    const pigs = tabOf('P', [
      ['Group', 'Head', 'Weight (kg)'],
      ['Reds', 9, 40],
      ['Blues', 8, 60],
      ['total growing', 17],
    ]);
    const read = readGroups(pigs, one(findLists([pigs]), 'groups'), 'metric', false, { today: 0 });
    expect(read.leftOut.map(({ text }) => text)).toEqual(['total growing']);
    expect(read.problems).toEqual([]);
  });
});

describe('reading with problems', () => {
  it('tells all of them at once, each with its cell', () => {
    const tab = tabOf("It's a tab", [
      ['Paddock', 'Area (ac)', 'Open from', 'Open until', 'Next to', 'Rest'],
      ['North', -2, '', '', 'Nowhere', ''],
      ['south', '', '', '', '', 'long'],
      ['North ', 1, d('2026-07-01'), d('2026-06-01'), '', ''],
      ['East', '#REF!', 'July', '', '', ''],
      ['West', ' 0.5 ', '2026-02-30', '2026-03-01', '', -1],
    ]);
    const list = one(findLists([tab]), 'paddocks');
    const { problems, notes } = readPaddocks(tab, list, 'US', false);
    const sentences = problems.map((p) => p.sentence);
    for (const problem of problems) expect(problem.sentence.startsWith(`${problem.cell}: `)).toBe(true);
    expect(sentences).toEqual([
      "'It''s a tab'!B2: area must be more than 0 ac, got -2",
      "'It''s a tab'!B3: area must be a number (ac), got a blank",
      "'It''s a tab'!D4: open until must not be before the day it opens, got the date 2026-06-01",
      "'It''s a tab'!B5: area must be a number (ac), got the error #REF!",
    ]);
    // What a plan can do without stops none.
    expect(notes).toEqual([
      `'It''s a tab'!F3: "long" is not read as “rest” of “south”: it must be a number (days).`,
      `'It''s a tab'!C5: "July" is not read as “open from” of “East”: it must be a date.`,
      `'It''s a tab'!F6: -1 is not read as “rest” of “West”: it must be 0 days or more.`,
      "'It''s a tab'!C6: “2026-02-30”: “West” is read like the others. If no pigs are to stand there, shut it.",
    ]);
  });

  it.each<readonly [headings: readonly string[], days: object]>([
    [['Shut from', 'Shut until'], { shutFrom: '2026-08-03', shutUntil: '2026-08-20' }],
    [['Gesperrt ab', 'bis'], { shutFrom: '2026-08-03', shutUntil: '2026-08-20' }],
    [['Closed until', 'Shut from'], { shutUntil: '2026-08-03', shutFrom: '2026-08-20' }],
    [['Closed from', 'Open until'], { shutFrom: '2026-08-03', openUntil: '2026-08-20' }],
    [['Open from', 'Until'], { openFrom: '2026-08-03', openUntil: '2026-08-20' }],
    [['Closed until', 'Remarks'], { openFrom: '2026-08-03' }],
  ])('reads %o as %o', (headings, days) => {
    const tab = tabOf('P', [
      ['Paddock', 'Area (ac)', ...headings],
      ['North', 1, d('2026-08-03'), d('2026-08-20')],
      ['South', 1, '', ''],
    ]);
    const list = one(findLists([tab]), 'paddocks');
    const { name: _n, area: _a, ...columns } = list.columns;
    expect(columns).toEqual(
      Object.fromEntries(Object.entries(days).map(([field, day]) => [field, day === '2026-08-03' ? 3 : 4])),
    );
  });

  it('reads two sides in one cell, and fractions of an acre', () => {
    const tab = tabOf('P', [
      ['Paddock', 'Area (ac)'],
      ['North', '30m x 40m'],
      ['South', '50 x 80 m'],
      ['East', '150 x 290'],
      ['West', '3/4 acre'],
      ['Far', '30 kg x 2'],
    ]);
    const { paddocks, problems, notes } = readPaddocks(tab, one(findLists([tab]), 'paddocks'), 'US', false);
    // 150 × 290 ft = 43,500 ft² of 0.09290304 m² each; an acre is 4046.8564224 m² (definitions).
    expect(paddocks.map(({ areaSquareMeters }) => areaSquareMeters)).toEqual(
      [1200, 4000, 43_500 * 0.09290304, 0.75 * 4046.8564224].map((area) => expect.closeTo(area, 6)),
    );
    expect(problems.map(({ cell }) => cell)).toEqual(['P!B6']);
    expect(notes[0]).toContain('P!B2 “30m x 40m” as 1200 m²; P!B3 “50 x 80 m” as 4000 m²');
  });

  it('takes for the names what stands once, and knows Ø kg and lots', () => {
    const land = tabOf('Hagar', [
      ['Hage', 'Fastighet', 'Yta (m²)', 'Mark'],
      ['Björkhagen', '1:4', 1800, 'gräs'],
      ['Norra A', '1:4', 2400, 'vall'],
      ['Norra B', '1:4', 2400, 'vall'],
    ]);
    expect(one(findLists([land]), 'paddocks').columns).toEqual({ name: 1, area: 3 });
    const pigs = tabOf('Tiere', [
      ['Gruppe', 'Tiere', 'Ø kg'],
      ['M1', 18, '112,5'],
      ['M2', 25, 64],
    ]);
    expect(one(findLists([pigs]), 'groups').columns).toEqual({ name: 1, head: 2, weight: 3 });
    const lots = tabOf('Lots', [
      ['Lot', 'Acres', 'Remarks'],
      ['A', 1, ''],
      ['B', 0.75, ''],
    ]);
    expect(one(findLists([lots]), 'paddocks').columns).toEqual({ name: 1, area: 2 });
  });

  it('tells words where a day belongs, and asks where they may keep the pigs out', () => {
    const tab = tabOf('P', [
      ['Paddock', 'Area (ac)', 'Open from', 'Last used'],
      ['North', 1, '', 'pigs in there'],
      ['South', 1, 'ready', ''],
      ['East', 1, 'early July', ''],
      ['West', 1, 'closed', '31/31/2026'],
    ]);
    const { paddocks, problems, notes } = readPaddocks(tab, one(findLists([tab]), 'paddocks'), 'US', false);
    expect(paddocks.map(({ lastUsed, openFrom }) => [lastUsed, openFrom])).toEqual(
      paddocks.map(() => [undefined, undefined]),
    );
    expect(notes).toEqual([
      'P!D2: "pigs in there" is not read as “last used” of “North”: it must be a date.',
      'P!D5: "31/31/2026" is not read as “last used” of “West”: it must be a date.',
      'P!C3: “ready”: “South” is read like the others. If no pigs are to stand there, shut it.',
      'P!C4: “early July”: “East” is read like the others. If no pigs are to stand there, shut it.',
      'P!C5: “closed”: “West” is read like the others. If no pigs are to stand there, shut it.',
    ]);
    expect(problems).toEqual([]);
  });

  it('refuses two of one name, and tells unknown neighbours', () => {
    const tab = tabOf('P', [
      ['Paddock', 'Area', 'Adjoins'],
      ['North', 1, 'South, by the creek; Nowhere'],
      ['South, by the creek', 1, ''],
      [' NORTH', 1, 3],
    ]);
    const { problems, notes } = readPaddocks(tab, one(findLists([tab]), 'paddocks'), 'US', false);
    expect(problems.map((p) => p.sentence)).toEqual([
      'P!A4: name must differ from P!A2, got " NORTH" in both',
    ]);
    expect(notes).toEqual([
      'P!C2: "Nowhere" is not read as “adjoining paddocks” of “North”: it must be names in the paddock list.',
      'P!C4: "3" is not read as “adjoining paddocks” of “NORTH”: it must be names in the paddock list.',
    ]);
  });

  it('reads groups: head, text dates, until as date or weight or told, and refuses less than no head', () => {
    const tab = tabOf('Groups', [
      ['Group', 'Head', 'Weight (lb)', 'Weighed on', 'Until', 'ADG'],
      ['=1+1', 12, 60, '2026-04-01', '250 lb', 1.5],
      ['🐖 "Reds"\nold', '8', '55.5', d('2026-04-01'), d('2026-09-01'), ''],
      ['Less', -1, 60, d('2026-04-01'), 'autumn', ''],
      ['Half', 1.5, 0, '', 200, ''],
    ]);
    const { groups, problems } = readGroups(tab, one(findLists([tab]), 'groups'), 'US', false);
    expect(groups.map((g) => g.name)).toEqual(['=1+1', '🐖 "Reds"\nold']);
    // 250 lb × 0.45359237 kg (definition)
    expect(groups[0]!.untilWeightKg).toBeCloseTo(113.3980925, 9);
    expect(groups[0]!.dailyGainKg).toBeCloseTo(0.680388555, 9);
    expect(groups[1]).toMatchObject({ head: 8, until: dayFromIso('2026-09-01') });
    expect(problems.map((p) => p.sentence)).toEqual([
      'Groups!B4: head must be 0 or more, got -1',
      'Groups!B5: head must be a whole number, got 1.5',
      'Groups!C5: weight must be more than 0 lb, got 0',
      'Groups!D5: weighed on must be a date (a date cell, or text such as "2026-04-20"), got a blank',
    ]);
  });
});

describe('unitSystemOfLists', () => {
  it.each([
    [[{ units: { area: 'ha' } }, { units: { weight: 'kg' } }] as const, 'metric'],
    [[{ units: { area: 'ac', restDays: 'weeks' } }, { units: {} }] as const, 'US'],
    [[{ units: { area: 'ac' } }, { units: { weight: 'kg' } }] as const, undefined],
    [[{ units: {} }] as const, undefined],
  ])('%#', (lists, system) => {
    expect(unitSystemOfLists(lists)).toBe(system);
  });
});
