/** What is asked of the lists although nothing in them stops the plan: words that may shut a paddock, weights without a day. */
import { expect, test } from 'vitest';
import { dayFromIso, isoFromDay } from '../../shared/core/calendar/day';
import { datedWeights } from '../../shared/lists/undated-weights';
import { planRotation } from '../../shared/plan/plan-rotation';
import { growerLists } from '../../shared/tasks/grower-lists';
import { ROTATION_TASK } from '../../shared/tasks/rotation/rotation-task';
import { shutCells } from '../../shared/tasks/shut-cells';
import { openWorkbook, portOf, type StartCell, type Workbook } from '../../src/headless';
import { readBook } from '../hard-use/rotation-task';
import { setToday } from '../sidebar/happened-farm';
import { scriptText } from '../tasks/script-text';

const LAND: StartCell[][] = [
  ['Paddock', 'Acres', 'Open until', 'Remarks'],
  ['North', 1, 'closed', ''],
  ['South', 1.2, '', 'No pigs, too wet'],
  ['East', 1, '', 'good hazel'],
  ['Hill', 1, '', 'hay until 1 July 2026'],
  ['Far', 1, '', ''],
  ['Low', 1, '', ''],
];
const PIGS: StartCell[][] = [
  ['Group', 'Head', 'Weight (lb)', 'Until'],
  ['Reds', 10, 60, 'when fat'],
];

async function open(tabs: Record<string, StartCell[][]>): Promise<Workbook> {
  return openWorkbook({ tabs, today: '2026-05-01', codeJs: await scriptText() });
}

test('words that may shut a paddock are asked, and one press shuts it in the list', async () => {
  const farm = await open({ Land: LAND, Pigs: PIGS });
  const lists = growerLists(readBook(farm), 'US');
  expect(lists.problems).toEqual([]);
  expect(lists.unused.map(({ sentence }) => sentence)).toEqual([
    'Land!C2: “closed”: “North” is read like the others. If no pigs are to stand there, shut it.',
    'Land!D3: “No pigs, too wet”: “South” is read like the others. If no pigs are to stand there, shut it.',
  ]);
  const { paddock } = lists.unused[1]!;
  const cells = shutCells(lists.sources.paddocks!, paddock, { shutFrom: dayFromIso('2026-05-01')! });
  await portOf(farm)('changeCells', { cells: cells.map(({ cell }) => cell) });
  expect(farm.shownValues('Land')[0]).toEqual(['Paddock', 'Acres', 'Open until', 'Remarks', 'Shut from']);
  const { lists: after, season } = ROTATION_TASK.read(readBook(farm), {});
  expect(after.unused.map(({ paddock: { name } }) => name)).toEqual(['North']);
  if ('missing' in season) throw new Error(season.missing);
  const plan = planRotation(season.problem);
  if (!('stays' in plan)) throw new Error(plan.reason);
  expect(new Set(plan.stays.map((stay) => stay.paddock))).toEqual(new Set([0, 2, 3, 4, 5]));
}, 60_000);

test('words where a day belongs in a group list are told, and it is planned', async () => {
  const { groups, problems, notes } = growerLists(readBook(await open({ Land: LAND, Pigs: PIGS })), 'US');
  expect(problems).toEqual([]);
  expect(groups[0]).not.toHaveProperty('until');
  expect(notes.groups).toContain('Pigs!D2: "when fat" is not read as “until” of “Reds”: it must be a date.');
}, 60_000);

test('a day among words is that of the weighing; words alone are told, and the weight is of today', async () => {
  const pigs: StartCell[][] = [
    ['Group', 'Head', 'Weight (lb)', 'Weighed on'],
    ['Reds', 10, 60, 'guess 4/20'],
    ['Whites', 10, 60, 'last month'],
    ['Blacks', 8, 90, '2026-02-30'],
  ];
  const { groups, problems, notes } = growerLists(readBook(await open({ Land: LAND, Pigs: pigs })), 'US');
  expect(groups.map(({ weighedOn }) => isoFromDay(weighedOn))).toEqual([
    '2026-04-20',
    '2026-05-01',
    '2026-05-01',
  ]);
  expect(notes.groups.slice(0, 5)).toEqual([
    'Pigs!A3: no day is given for the weight of “Whites”; it is taken as of today.',
    'Pigs!A4: no day is given for the weight of “Blacks”; it is taken as of today.',
    'Read from text: Pigs!D2 “guess 4/20” as 2026-04-20.',
    'Pigs!D3: "last month" is not read as “weighed on” of “Whites”: it must be a date.',
    'Pigs!D4: "2026-02-30" is not read as “weighed on” of “Blacks”: it must be a date.',
  ]);
  expect(problems).toEqual([]);
}, 60_000);

test('a weight without a day is asked for its day once, and then is of that day for good', async () => {
  const farm = await open({ Land: LAND, Pigs: PIGS });
  const weighed = () =>
    growerLists(readBook(farm), 'US').groups.map(({ weighedOn }) => isoFromDay(weighedOn));
  const { undated } = growerLists(readBook(farm), 'US');
  expect(undated).toEqual({ tab: 'Pigs', column: 5, headingRow: 1, rows: [{ row: 2, name: 'Reds' }] });
  // As long as nothing is answered, the weight is of whatever day it is: the page says so.
  setToday(farm, '2026-05-11');
  expect(weighed()).toEqual(['2026-05-11']);
  await portOf(farm)('changeCells', { cells: datedWeights(undated!, dayFromIso('2026-05-01')!) });
  expect(farm.shownValues('Pigs')[0]![4]).toBe('Weighed on');
  expect(growerLists(readBook(farm), 'US').undated).toBeUndefined();
  setToday(farm, '2026-06-11');
  expect(weighed()).toEqual(['2026-05-01']);
}, 60_000);

const BARE: StartCell[][] = [
  ['Group', 'Head', 'Paddock'],
  ['Reds', 10, 'East'],
  ['Blacks', 8, 'Far'],
];
const SEE_SCALE: StartCell[][] = [
  ['Group', 'Head', 'Weight (lb)', 'Paddock'],
  ['Reds', 10, 'see the scale', 'East'],
  ['Blacks', 8, 'scale', 'Far'],
];
const [APRIL, MAY] = [{ d: '2026-04-02' }, { d: '2026-04-30' }];

test.each<readonly [string, StartCell[][], StartCell[][]]>([
  [
    'under headings that say nothing',
    [
      ['Date', 'Which', 'Avg weight (lb)'],
      [APRIL, 'Reds', 50],
      [APRIL, 'Blacks', 80],
      [MAY, 'Reds', 70],
      [MAY, 'Blacks', 95],
    ],
    BARE,
  ],
  [
    'with how many were weighed, once each',
    [
      ['Name', 'Number', 'Weight (lb)', 'Weighed'],
      ['Reds', 3, 70, MAY],
      ['Blacks', 4, 95, MAY],
    ],
    BARE,
  ],
  [
    'that the list points to',
    [
      ['Date', 'Group', 'Weight (lb)'],
      [MAY, 'Reds', 70],
      [MAY, 'Blacks', 95],
    ],
    SEE_SCALE,
  ],
])(
  'weighings %s go to the groups, and their heads to none',
  async (_, log, pigs) => {
    const { groups, problems } = growerLists(
      readBook(await open({ Scale: log, Land: LAND, Pigs: pigs })),
      'US',
    );
    expect(problems).toEqual([]);
    expect(
      groups.map(({ name, head, weightKg, weighedOn }) => [
        name,
        head,
        Math.round(weightKg / 0.45359237),
        isoFromDay(weighedOn),
      ]),
    ).toEqual([
      ['Reds', 10, 70, '2026-04-30'],
      ['Blacks', 8, 95, '2026-04-30'],
    ]);
  },
  60_000,
);
