import { describe, expect, it, vi } from 'vitest';
import { cutBlock } from '../../shared/block/read-block';
import type { WireCell } from '../../shared/contract';
import { dayFromIso, isoFromDay } from '../../shared/core/calendar/day';
import { feedNeeded } from '../../shared/core/herd/feed-needed';
import { groupWeightOn } from '../../shared/plan/group-weights';
import type { PlanRules } from '../../shared/plan/model';
import { scoreStays } from '../../shared/plan/score-plan';
import { stayLoad } from '../../shared/plan/stay-loads';
import { CHECKS } from '../../shared/table/check-formula';
import { readSettings } from '../../shared/table/read-settings';
import { fromInside, toInside } from '../../shared/units/units';
import type { StartCell } from '../../src/headless';
import { buildTable, type FarmSheet, openFarm, readTab } from './farm-in-sheet';

// The engine's first evaluation takes seconds on a busy machine.
vi.setConfig({ testTimeout: 120_000 });

const EVENNESS_LABEL = "Moves for the ground's sake";
const day = (iso: string): number => dayFromIso(iso)!;
const RULES: PlanRules = {
  rest: { kind: 'fixed', days: 24 },
  shortestStayDays: 3,
  longestStayDays: 6,
  moveWeekdays: [true, true, true, true, true, true, true],
  noMoveDays: [],
  seasonStart: day('2026-04-01'),
  seasonEnd: day('2026-07-01'),
};
const TABS: Record<string, StartCell[][]> = {
  'My land': [
    ['My paddocks'],
    [],
    ['Paddock', 'Area (ac)', 'Last used', 'Open from'],
    ['North', 0.5, { d: '2026-03-20' }, ''],
    ['South', 0.4, '', ''],
    ['Oak', 0.6, '', ''],
    ['Creek "low"', 0.5, '', { d: '2026-05-01' }],
    ['Twelve', 0.3, '', ''],
    ['Hill', 0.5, '', ''],
    ['West end', 0.45, '', ''],
  ],
  Pigs: [
    ['Group', 'Head', 'Weight (lb)', 'Weighed on', 'Daily gain (lb/day)', 'From'],
    ['Reds', 10, 60, { d: '2026-03-28' }, 1.5, ''],
    ['Blacks', 8, 90, { d: '2026-03-28' }, '', { d: '2026-04-10' }],
  ],
};

type Move = Record<string, WireCell>;

/** The table's rows by heading, down to the first row without a group. */
function tableOf({ book }: Pick<FarmSheet, 'book'>, tab = 'Rotation') {
  const { values } = readTab(book, tab);
  const at = values.findIndex((row) => row[0] === 'Group');
  const heads = values[at]!.map((head) => String(head).replace(/ \(.*/, ''));
  const rows = values.slice(at + 2);
  const end = rows.findIndex((row) => row[0] === '');
  const moves = rows.slice(0, end < 0 ? undefined : end);
  return {
    firstRow: at + 3,
    cell: (head: string, move: number) => `${String.fromCharCode(65 + heads.indexOf(head))}${at + 3 + move}`,
    moves: moves.map((row): Move => Object.fromEntries(heads.map((head, c) => [head, row[c]!]))),
  };
}

const dayOf = (cell: WireCell | undefined): number => day((cell as { d: string }).d);

/** In, out and paddock of a group's moves. */
function staysOf(moves: readonly Move[], group: string) {
  return moves
    .filter((move) => move.Group === group)
    .map((move) => ({ paddock: move.Paddock, inDay: dayOf(move.In), outDay: dayOf(move.Out) }));
}

describe('rotationBlock, recalculated by the engine', () => {
  it.each(['en_US', 'de_DE'])('agrees with the planner in every row (%s)', async (locale) => {
    const farm = await openFarm(TABS, RULES, 'US', locale);
    const { plan, problem } = buildTable(farm);
    const { moves } = tableOf(farm);
    expect(moves.map((m) => [m.Group, m.Paddock, dayOf(m['Planned in']), dayOf(m.Out)])).toEqual(
      plan.stays.map((stay) => [
        problem.groups[stay.group]!.name,
        problem.paddocks[stay.paddock]!.name,
        stay.inDay,
        stay.outDay,
      ]),
    );
    const scores = scoreStays(problem, plan.stays);
    for (const [i, move] of moves.entries()) {
      const score = scores[i]!;
      const stay = plan.stays[i]!;
      const group = problem.groups[stay.group]!;
      expect(move['Rest before']).toBe(score.restDays ?? '');
      const { restDays, restDueDays, restShortDays } = score;
      expect(move.Check).toBe(restShortDays === 0 ? '' : `Rest ${restDays} of ${restDueDays} days`);
      const weightKg = groupWeightOn(group, stay.inDay);
      expect(move.Head).toBe(group.head);
      expect(move['Weight in']).toBeCloseTo(fromInside(weightKg, 'mass', 'US'), 6);
      const liveweight = (group.head * weightKg) / problem.paddocks[stay.paddock]!.areaSquareMeters;
      expect(move.Liveweight).toBeCloseTo(fromInside(liveweight, 'massPerArea', 'US'), 3);
      // The planner sums the weights of every mid-day; where the gain changes within a stay, the sheet's mean differs.
      const load = fromInside(stayLoad(problem, stay), 'loadPerArea', 'US');
      expect(Math.abs(Number(move.Load) / load - 1)).toBeLessThan(
        group.dailyGainKg === undefined ? 0.005 : 1e-9,
      );
      const feedKg = feedNeeded(group.head, weightKg, stay.outDay - stay.inDay, group.dailyGainKg, 1.15);
      expect(move['Feed for the stay']).toBeCloseTo(fromInside(feedKg, 'mass', 'US'), 4);
    }
    // One cell function a column, however many moves: weight in and out, feed, water.
    const calls = readTab(farm.book, 'Rotation')
      .formulas.flat()
      .join(' ')
      .match(/PIG_WEIGHT|FEED_NEEDED|WATER_NEEDED/g);
    expect(calls).toEqual(['PIG_WEIGHT', 'FEED_NEEDED', 'WATER_NEEDED', 'PIG_WEIGHT']);
  });

  it('says the load of each stay, and that it is over the ground limit', async () => {
    // By hand: 12 pigs of 150 lb gaining 1.5 lb a day, four days on a quarter acre. They weigh 150 lb in and 156 lb
    // out: 12 × 153 × 4 ÷ 0.25 = 29,376 lb·days/ac, then 12 × 159 × 4 ÷ 0.25 = 30,528.
    const tabs = {
      Farm: [
        ['Paddock', 'Area (ac)'],
        ...['A', 'B', 'C', 'D'].map((name) => [name, 0.25]),
        [],
        ['Group', 'Head', 'Weight (lb)', 'Weighed on', 'Daily gain (lb/day)'],
        ['Reds', 12, 150, { d: '2026-04-01' }, 1.5],
      ],
    };
    const limit = toInside(40_000, 'loadPerArea', 'US');
    const stays = { shortestStayDays: 4, longestStayDays: 4, seasonEnd: day('2026-04-13') };
    const farm = await openFarm(tabs, { ...RULES, ...stays, groundLimit: limit }, 'US');
    buildTable(farm);
    const { moves, cell } = tableOf(farm);
    expect(moves[0]!.Load).toBeCloseTo(29_376, 6);
    expect(moves[1]!.Load).toBeCloseTo(30_528, 6);
    expect(moves.map((move) => move.Check)).toEqual(['', '', '']);
    // Two days longer in the first: 12 × 154.5 × 6 ÷ 0.25.
    farm.book.type('Rotation', cell('Moved in', 1), '2026-04-07');
    const late = tableOf(farm).moves[0]!;
    expect([late.Load, late.Check]).toEqual([44_496, CHECKS.overLimit]);
  });

  it('shifts the rest of the season when a late move is typed, and says what comes too soon', async () => {
    const farm = await openFarm(TABS, RULES, 'US');
    buildTable(farm);
    const before = tableOf(farm);
    const reds = before.moves.flatMap((move, i) => (move.Group === 'Reds' ? [i] : []));
    const third = reds[2]!;
    const plannedIn = dayOf(before.moves[third]!['Planned in']);
    farm.book.type('Rotation', before.cell('Moved in', third), isoFromDay(plannedIn + 9));
    const after = tableOf(farm);
    const was = staysOf(before.moves, 'Reds');
    const is = staysOf(after.moves, 'Reds');
    expect(is.slice(0, 1)).toEqual(was.slice(0, 1));
    // The stay before really ended when the group moved.
    expect(is[1]).toEqual({ ...was[1], outDay: was[1]!.outDay + 9 });
    expect(is.slice(2)).toEqual(
      was.slice(2).map((stay) => ({ ...stay, inDay: stay.inDay + 9, outDay: stay.outDay + 9 })),
    );
    expect(dayOf(after.moves[third]!['Planned in'])).toBe(plannedIn);
    expect(staysOf(after.moves, 'Blacks')).toEqual(staysOf(before.moves, 'Blacks'));
    expectHonestChecks(after.moves, 24);
    expect(after.moves.map((move) => move.Check)).not.toEqual(before.moves.map((move) => move.Check));
  });

  it('takes an early move with a short stay, and days typed over', async () => {
    const farm = await openFarm(TABS, RULES, 'US');
    buildTable(farm);
    const before = tableOf(farm);
    const [, second] = before.moves.flatMap((move, i) => (move.Group === 'Reds' ? [i] : []));
    const inDay = dayOf(before.moves[second!]!['Planned in']);
    farm.book.type('Rotation', before.cell('Moved in', second!), isoFromDay(inDay - 3));
    farm.book.type('Rotation', before.cell('Days', second!), '1');
    const is = staysOf(tableOf(farm).moves, 'Reds');
    expect(is[0]!.outDay).toBe(inDay - 3);
    expect(is[1]).toMatchObject({ inDay: inDay - 3, outDay: inDay - 2 });
    expect(is[2]!.inDay).toBe(inDay - 2);
  });

  it('names what is not right in the check column', async () => {
    const farm = await openFarm(TABS, RULES, 'US');
    buildTable(farm);
    const { moves, cell } = tableOf(farm);
    farm.book.type('Rotation', cell('Moved in', 1), 'last Friday');
    farm.book.type('Rotation', cell('Days', 3), '');
    farm.book.type('Rotation', cell('Paddock', 4), 'Creek "low"');
    const after = tableOf(farm).moves;
    expect(after[1]!.Check).toBe('Moved in must be a date');
    expect(after[3]!.Check).toMatch(/^Days must be a whole number from 1 to \d+$/);
    expect(dayOf(moves[4]!.In)).toBeLessThan(day('2026-05-01'));
    expect(after[4]!.Check).toBe('Closed on these days');
  });

  it.each([
    ['within the stay', 0, 0, true],
    ['to the day before it', -9, -1, false],
    ['from the day on which it ends', undefined, 9, false],
    ['from its last night on, for good', -1, undefined, true],
  ] as const)('says that a paddock is shut on some day of a stay: %s', async (_, from, until, isShut) => {
    const land = TABS['My land']!.map((row, r) => (r === 2 ? [...row, 'Shut from', 'Shut until'] : row));
    const tabs = { ...TABS, 'My land': land };
    const farm = await openFarm(tabs, RULES, 'US');
    buildTable(farm);
    const [move] = tableOf(farm).moves;
    const [inDay, out] = [dayOf(move!.In), dayOf(move!.Out)];
    const row = 1 + land.findIndex(([name]) => name === move!.Paddock);
    const shutFrom = from === undefined ? out : from === -1 ? out - 1 : inDay + from;
    farm.book.type('My land', `E${row}`, isoFromDay(shutFrom));
    if (until !== undefined)
      farm.book.type('My land', `F${row}`, isoFromDay(from === undefined ? out + until : inDay + until));
    expect(tableOf(farm).moves[0]!.Check).toBe(isShut ? 'Closed on these days' : move!.Check);
  });

  it('lives on when rows are deleted', async () => {
    const farm = await openFarm(TABS, RULES, 'US');
    buildTable(farm);
    const before = tableOf(farm);
    const reds = before.moves.flatMap((move, i) => (move.Group === 'Reds' ? [i] : []));
    const gone = reds[3]!;
    farm.book.spreadsheet.getSheetByName('Rotation')!.deleteRows(before.firstRow + gone, 1);
    const is = staysOf(tableOf(farm).moves, 'Reds');
    const was = staysOf(before.moves, 'Reds');
    // The fourth move is gone: the fifth follows on the third, and all weights and feeds are still there.
    expect(is[3]!.inDay).toBe(was[2]!.outDay);
    expect(is[3]!.paddock).toBe(was[4]!.paddock);
    for (const move of tableOf(farm).moves) {
      expect(typeof move['Weight in']).toBe('number');
      expect(typeof move['Feed for the stay']).toBe('number');
    }
    // The group's very first move deleted: the next one keeps its day.
    farm.book.spreadsheet.getSheetByName('Rotation')!.deleteRows(before.firstRow, 1);
    expect(staysOf(tableOf(farm).moves, 'Reds')).toEqual(is.slice(1));
    for (const move of tableOf(farm).moves) expect(typeof move['Weight in']).toBe('number');
  });

  it('follows the lists, also when they are sorted', async () => {
    const farm = await openFarm(TABS, RULES, 'US');
    buildTable(farm);
    const { moves } = tableOf(farm);
    farm.book.type('Pigs', 'B2', '9');
    expect(tableOf(farm).moves.map((m) => m.Head)).toEqual(moves.map((m) => (m.Group === 'Reds' ? 9 : 8)));
    const swapped = ['Blacks', '8', '90', '2026-03-28', '', '2026-04-10'];
    const reds = ['Reds', '9', '60', '2026-03-28', '1.5', ''];
    for (const [c, text] of swapped.entries()) farm.book.type('Pigs', `${'ABCDEF'[c]}2`, text);
    for (const [c, text] of reds.entries()) farm.book.type('Pigs', `${'ABCDEF'[c]}3`, text);
    expect(tableOf(farm).moves.map((m) => m.Head)).toEqual(moves.map((m) => (m.Group === 'Reds' ? 9 : 8)));
  });

  it.each([
    { rest: RULES.rest },
    {
      rest: { kind: 'monthly' as const, days: [60, 60, 45, 30, 20, 20, 25, 30, 35, 40, 60, 60] },
      groundLimit: 3,
      evenness: 0.25,
    },
    {
      rest: { kind: 'forage' as const, growth: [0, 0, 20, 50, 80, 60, 35, 30, 40, 25, 5, 0], needed: 900 },
      moveWeekdays: [false, false, true, false, false, false, true],
      noMoveDays: [day('2026-04-18'), day('2026-05-02')],
      longestStayDays: 11,
      evenness: 1,
    },
  ])('keeps its settings in cells and reads them back (%#)', async (change) => {
    const rules = { ...RULES, ...change };
    const farm = await openFarm(TABS, rules, 'US');
    const { info, settings, plan, problem } = buildTable(farm);
    const read = readSettings(cutBlock(readTab(farm.book, 'Rotation'), info));
    expect(read.problems).toEqual([]);
    const { groundLimit, ...others } = read.settings!.rules;
    expect(groundLimit ?? 0).toBeCloseTo(rules.groundLimit ?? 0, 12);
    const { groundLimit: _, ...wanted } = settings.rules;
    expect(others).toEqual(wanted);
    expect(read.settings!.temperatureC).toBeCloseTo(20, 6);
    expect(read.settings!.lists.paddocks).toMatchObject({ tab: 'My land', columns: { name: 1, area: 2 } });
    expect(read.settings!.lists.groups).toMatchObject({ units: { weight: 'lb' }, headingRow: 1, lastRow: 3 });
    const said = (rules as PlanRules).evenness;
    const row = readTab(farm.book, 'Rotation').values.find(([label]) => label === EVENNESS_LABEL);
    expect(row?.[1]).toBe(said === undefined ? undefined : said === 1 ? 'most' : 'some');
    const scores = scoreStays(problem, plan.stays);
    for (const [i, move] of tableOf(farm).moves.entries()) {
      const { restDays, restDueDays, restShortDays } = scores[i]!;
      if (restDays !== undefined) expect(move['Rest due']).toBe(restDueDays);
      if (restShortDays > 0) expect(move.Check).toBe(`Rest ${restDays} of ${restDueDays} days`);
    }
  });

  it('tells a word for the moves that it does not know, with its cell', async () => {
    const farm = await openFarm(TABS, { ...RULES, evenness: 0.25 }, 'US');
    const { info } = buildTable(farm);
    const row = readTab(farm.book, 'Rotation').values.findIndex(([label]) => label === EVENNESS_LABEL) + 1;
    farm.book.type('Rotation', `B${row}`, 'Most');
    expect(readSettings(cutBlock(readTab(farm.book, 'Rotation'), info)).settings!.rules.evenness).toBe(1);
    farm.book.type('Rotation', `B${row}`, 'plenty');
    const { settings, problems } = readSettings(cutBlock(readTab(farm.book, 'Rotation'), info));
    expect(settings).toBeUndefined();
    expect(problems).toEqual([
      {
        cell: `Rotation!B${row}`,
        sentence: `Rotation!B${row}: ${EVENNESS_LABEL} must be "fewest", "some" or "most", got "plenty"`,
      },
    ]);
  });
});

/** Checks each row against a reading of the table by plain arithmetic. */
function expectHonestChecks(moves: readonly Move[], restDays: number): void {
  const stays = moves.map((move) => ({
    paddock: move.Paddock,
    inDay: dayOf(move.In),
    outDay: dayOf(move.Out),
  }));
  for (const [i, stay] of stays.entries()) {
    const others = stays.filter((other, j) => j !== i && other.paddock === stay.paddock);
    const occupied = others.some((other) => other.inDay <= stay.inDay && other.outDay > stay.inDay);
    const listed = stay.paddock === 'North' ? [day('2026-03-20')] : [];
    const outs = [...others.map((other) => other.outDay), ...listed].filter((out) => out <= stay.inDay);
    const rested = outs.length === 0 ? restDays : stay.inDay - Math.max(...outs);
    const short = rested < restDays ? `Rest ${rested} of ${restDays} days` : '';
    const wanted = occupied ? 'Still occupied' : short;
    expect(moves[i]!.Check, `row ${i}`).toBe(wanted);
  }
}
