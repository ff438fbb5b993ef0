import { describe, expect, it, vi } from 'vitest';
import { cutBlock } from '../../shared/block/read-block';
import { dayFromIso } from '../../shared/core/calendar/day';
import { readRotation } from '../../shared/table/read-rotation';
import { buildTable, openFarm, readTab } from './farm-in-sheet';

// The engine's first evaluation takes seconds on a busy machine.
vi.setConfig({ testTimeout: 120_000 });

const NAMES = [
  '=North*',
  '>5',
  'Oak?',
  'Creek "low"',
  '12',
  '~hill',
  'West\nend',
  '🐖 wallow',
  '-1',
  '+2',
  '@x',
  "O'Brien",
  'TRUE',
  '1/2',
  'é',
];

describe('names that look like something else', () => {
  it.each(['en_US', 'de_DE'])('stay text, and formulas tell them apart (%s)', async (locale) => {
    const farm = await openFarm(
      {
        Land: [['Paddock', 'Area (ha)'], ...NAMES.map((name) => [{ text: name }, 0.2])],
        Pigs: [
          ['Group', 'Head', 'Weight (kg)', 'Weighed on', 'Daily gain'],
          [{ text: '=1+1' }, 10, 30, { d: '2026-12-20' }, 0.7],
          [{ text: '<b>*' }, 12, 40, { d: '2026-12-20' }, ''],
        ],
      },
      {
        rest: { kind: 'fixed', days: 30 },
        shortestStayDays: 4,
        longestStayDays: 7,
        moveWeekdays: [true, true, true, true, true, true, true],
        noMoveDays: [],
        seasonStart: dayFromIso('2026-12-28')!,
        seasonEnd: dayFromIso('2027-04-05')!,
      },
      'metric',
      locale,
    );
    const { plan, problem, info } = buildTable(farm);
    const read = readRotation(cutBlock(readTab(farm.book, 'Rotation'), info));
    expect(read.problems).toEqual([]);
    expect(read.rows.map((row) => [row.group, row.paddock, row.inDay])).toEqual(
      plan.stays.map((stay) => [
        problem.groups[stay.group]!.name,
        problem.paddocks[stay.paddock]!.name,
        stay.inDay,
      ]),
    );
  });
});
