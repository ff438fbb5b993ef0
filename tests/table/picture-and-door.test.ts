import { describe, expect, it } from 'vitest';
import { dayFromIso } from '../../shared/core/calendar/day';
import type { PlanProblem } from '../../shared/plan/model';
import { barnDoorList } from '../../shared/table/barn-door-list';
import { groupMarks } from '../../shared/table/group-marks';
import type { RotationSettings } from '../../shared/table/model';
import { isEarlierPicture, pictureBlock } from '../../shared/table/picture-block';

const day = (iso: string): number => dayFromIso(iso)!;
// 2026-04-06 is a Monday.
const problem: PlanProblem = {
  paddocks: [
    { name: 'North', areaSquareMeters: 2000 },
    { name: 'South', areaSquareMeters: 2000 },
    { name: 'Hay', areaSquareMeters: 2000, openFrom: day('2026-04-20') },
  ],
  groups: [
    {
      name: 'Reds',
      head: 12,
      weightKg: 60,
      weighedOn: day('2026-04-08'),
      dailyGainKg: 0.7,
      from: day('2026-04-08'),
    },
    { name: 'Rusty', head: 5, weightKg: 200, weighedOn: day('2026-04-13'), from: day('2026-04-13') },
  ],
  rules: {
    rest: { kind: 'fixed', days: 5 },
    shortestStayDays: 3,
    longestStayDays: 7,
    moveWeekdays: [true, true, true, true, true, true, true],
    noMoveDays: [],
    seasonStart: day('2026-04-08'),
    seasonEnd: day('2026-04-28'),
  },
};
const settings: RotationSettings = {
  unitSystem: 'metric',
  rules: problem.rules,
  temperatureC: 20,
  outdoorFactor: 1.15,
  lists: {},
};
const stay = (group: number, paddock: number, from: string, to: string) => ({
  group,
  paddock,
  inDay: day(from),
  outDay: day(to),
});
const plan = {
  stays: [
    stay(0, 0, '2026-04-08', '2026-04-13'),
    stay(0, 1, '2026-04-13', '2026-04-20'),
    stay(1, 0, '2026-04-13', '2026-04-20'),
    stay(0, 2, '2026-04-20', '2026-04-28'),
    stay(1, 1, '2026-04-20', '2026-04-28'),
  ],
  score: { total: 0, restShortDays: 0, overLimitDays: 0, moves: 5, strides: 0 },
};

describe('pictureBlock', () => {
  const gainless = problem.groups.map((group) => ({ dailyGainKg: 0, ...group }));
  const block = pictureBlock({
    problem: { ...problem, groups: gainless },
    plan,
    settings,
    corner: { row: 1, column: 1 },
  });
  it('shows a letter for each group in each week from Monday', () => {
    const shown = block.cells.slice(2).map((row) => row.map((cell) => ('v' in cell ? cell.v : '')));
    expect(shown).toEqual([
      // Day numbers of spreadsheets: 46023 is 2026-01-01, and 6 April is 95 days later.
      [
        'Week from',
        46118,
        46125,
        46132,
        46139,
        'Stays',
        'Days',
        'Load (kg·days/ha)',
        'How hard',
        'Cover left',
      ],
      // By hand, weights at mid-day: Reds 12 × (60 kg + 0.7 a day since 8 April), Rusty 5 × 200 kg, each on 0.2 ha.
      // North: 12 × (5 × 60 + 0.7 × 12.5) + 7 × 1,000 = 10,705 kg·days. South: 12 × (7 × 60 + 0.7 × 59.5) + 8 × 1,000.
      // Hay: 12 × (8 × 60 + 0.7 × 128) = 6,835.2.
      ['North', 'R', 'U', '·', '·', 2, 12, 53_525, '■■■■■■■■', ''],
      ['South', '·', 'R', 'U', 'U', 2, 15, 67_699, '■■■■■■■■■■', ''],
      ['Hay', '×', '×', 'R', 'R', 1, 8, 34_176, '■■■■■', ''],
    ]);
    expect(block.cells[1]![0]).toEqual({ k: 't', v: 'R Reds, U Rusty; · no pigs, × closed all week' });
  });

  it('colours by the letters, over the weeks only', () => {
    expect(block.rules.map((rule) => [rule.row, rule.column, rule.rows, rule.columns])).toEqual([
      [3, 1, 3, 4],
      [3, 1, 3, 4],
    ]);
    expect(block.rules[0]!.formula).toBe('=ISNUMBER(SEARCH(" R ";" "&B4&" "))');
    expect(new Set(block.rules.map((rule) => rule.background)).size).toBe(2);
  });

  it('gives every group a letter of its own, even 30 of one name', () => {
    const names = Array.from({ length: 30 }, (_, i) => `Boar ${i}`);
    expect(new Set([...groupMarks(names).values()].map(({ letter }) => letter)).size).toBe(30);
  });
});

describe('barnDoorList', () => {
  const list = barnDoorList({
    problem,
    plan,
    settings,
    from: day('2026-04-13'),
    fenceMeters: [180, undefined, 200],
  });
  it('lists the moves to come, from where to where', () => {
    expect(
      list.moves.map((move) => [move.date, move.weekday, move.group, move.from, move.to, move.days]),
    ).toEqual([
      ['2026-04-13', 'Mon', 'Reds', 'North', 'South', 7],
      ['2026-04-13', 'Mon', 'Rusty', 'training pen or barn', 'North', 7],
      ['2026-04-20', 'Mon', 'Reds', 'South', 'Hay', 8],
      ['2026-04-20', 'Mon', 'Rusty', 'North', 'South', 8],
      // The season ends on the 28th: both leave.
      ['2026-04-28', 'Tue', 'Reds', 'Hay', undefined, 0],
      ['2026-04-28', 'Tue', 'Rusty', 'South', undefined, 0],
    ]);
  });

  it('says what to carry; no feed figure for pigs heavier than the growth table', () => {
    expect(list.moves[2]!.carry[0]).toBe('fence 200 m and posts');
    expect(list.moves[2]!.carry[1]).toMatch(/^feed \d+ kg for the stay$/);
    expect(list.moves[1]!.carry.join()).not.toContain('feed');
    // Sows of 200 kg are past the figures for growing pigs: water is named, without an amount.
    expect(list.moves[1]!.carry[1]).toMatch(/^water, as much as they drink: no figure/);
    expect(list.moves[2]!.carry[2]).toMatch(/^water \d+ L$|^water \d+ L\/day$/);
    expect(list.reminders.join(' ')).toContain('energizer off');
  });
});

describe('isEarlierPicture', () => {
  const { cells } = pictureBlock({ problem, plan, settings, corner: { row: 1, column: 1 } });
  const values = cells.map((row) => row.map((cell) => ('v' in cell ? cell.v : '')));
  it('tells a season that was over from one that goes on', () => {
    // The season ends on 28 April 2026.
    expect(isEarlierPicture(values, day('2027-04-01'))).toBe(true);
    expect(isEarlierPicture(values, day('2026-04-28'))).toBe(true);
    expect(isEarlierPicture(values, day('2026-04-27'))).toBe(false);
    expect(isEarlierPicture([['my own title']], day('2027-04-01'))).toBe(false);
  });
});
