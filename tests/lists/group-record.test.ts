/** A diary of moves or a log of weighings is no list of groups: what it says last is shown, and made one by a press. */
import { describe, expect, test } from 'vitest';
import { isoFromDay } from '../../shared/core/calendar/day';
import { growerLists } from '../../shared/tasks/grower-lists';
import { openWorkbook, portOf, type StartCell, type Workbook } from '../../src/headless';
import { readBook } from '../hard-use/rotation-task';
import { scriptText } from '../tasks/script-text';

const d = (day: string): StartCell => ({ d: day });
const LAND: StartCell[][] = [
  ['Paddock', 'Area (ha)'],
  ['Hazel', 0.4],
  ['Beech', 0.5],
  ['Alder', 0.5],
  ['Rowan', 0.6],
];
const open = async (tabs: Record<string, StartCell[][]>) =>
  openWorkbook({ tabs: { LAND, ...tabs }, locale: 'en_GB', today: '2026-11-20', codeJs: await scriptText() });
const lists = (farm: Workbook) => growerLists(readBook(farm), 'metric');

const DIARY: StartCell[][] = [
  ['Date', 'Group', 'From', 'To', 'Head', 'Notes'],
  [d('2026-10-02'), 'Spots', 'Rowan', 'Hazel', 12, ''],
  [d('2026-10-04'), 'Reds', 'barn', 'Alder', 9, 'first time out'],
  [d('2026-10-28'), 'Spots', 'Hazel', 'Beech', 11, 'one sold'],
  [d('2026-11-01'), 'Reds', 'Alder', 'Rowan', '', ''],
  [d('2027-01-01'), 'Spots', 'Beech', 'Hazel', 11, 'meant'],
];
const SCALE: StartCell[][] = [
  ['Date', 'Group', 'Weight (kg)'],
  [d('2026-10-03'), 'Spots', 60],
  [d('2026-10-05'), 'Reds', 30],
  [d('2026-11-08'), 'Spots', 85],
  [d('2026-11-08'), 'Reds', 47],
];
const OCCUPIED: StartCell[][] = [
  ['Koppel', 'Gruppe', 'rein', 'raus', 'Stück', 'kg'],
  ['Hazel', 'Spots', d('2026-09-20'), d('2026-10-28'), 12, 55],
  ['Alder', 'Reds', d('2026-09-08'), d('2026-11-01'), 9, 30],
  ['Beech', 'Spots', d('2026-10-28'), '', 11, 85],
  ['Rowan', 'Reds', d('2026-11-01'), '', 9, 47],
];
const BATCHES: StartCell[][] = [
  ['Batch', 'Date', 'Pigs', 'Avg mass (kg)', 'Camp'],
  ['Spots', d('2026-10-05'), 12, 60, 'Hazel'],
  ['Reds', d('2026-10-05'), 9, 30, 'Alder'],
  ['Spots', d('2026-11-08'), 11, 85, 'Beech'],
  ['Reds', d('2026-11-08'), 9, 47, 'Rowan'],
];

describe.each<readonly [string, Record<string, StartCell[][]>, readonly string[]]>([
  [
    'a diary of moves and a log of weighings',
    { DIARY, SCALE },
    ['Spots 11 85 2026-11-08 Beech 2026-10-28', 'Reds 9 47 2026-11-08 Rowan 2026-11-01'],
  ],
  [
    'who stood where from when to when',
    { OCCUPIED },
    ['Spots 11 85 2026-10-28 Beech 2026-10-28', 'Reds 9 47 2026-11-01 Rowan 2026-11-01'],
  ],
  [
    'weighings with heads',
    { BATCHES },
    ['Spots 11 85 2026-11-08 Beech 2026-11-08', 'Reds 9 47 2026-11-08 Rowan 2026-11-08'],
  ],
])('%s', (_, tabs, truth) => {
  test('is no group list; its last words are one by a press, and read as such', async () => {
    const farm = await open(tabs);
    const { chosen, gathered } = lists(farm);
    expect(chosen.groups).toBeUndefined();
    await portOf(farm)('changeCells', { cells: [...gathered!.cells] });
    const after = lists(farm);
    expect([after.problems, after.gathered, after.unplaced]).toEqual([[], undefined, []]);
    expect(
      after.groups.map(({ name, head, weightKg, weighedOn, standsIn }) =>
        [
          name,
          head,
          weightKg,
          isoFromDay(weighedOn),
          standsIn?.paddock,
          isoFromDay(standsIn?.since ?? 0),
        ].join(' '),
      ),
    ).toEqual(truth);
    expect(after.paddocks).toHaveLength(4);
  });
});

test('who has left a paddock again stands nowhere; who is gone, or not heard of for half a year, is left out', async () => {
  const rows = OCCUPIED.map((row) => [...row]);
  rows[3]![3] = d('2026-11-10');
  const gone: StartCell[][] = [
    ['Hazel', 'Old', d('2026-02-01'), d('2026-03-01'), 9, 100],
    ['Alder', 'Sold', d('2026-11-02'), '', 0, ''],
  ];
  const { gathered } = lists(await open({ OCCUPIED: [...rows, ...gone] }));
  expect(gathered?.said).toEqual([
    'Spots: 11 pigs, 85 kg on 2026-10-28, no place',
    'Reds: 9 pigs, 47 kg on 2026-11-01, Rowan since 2026-11-01',
  ]);
});

test('a list of groups stays one, with days, breeds and one name twice', async () => {
  const pigs: StartCell[][] = [
    ['Group', 'Breed', 'Head', 'Weight (kg)', 'Weighed on', 'Paddock', 'Since'],
    ['Spots', 'Duroc', 11, 85, d('2026-11-08'), 'Beech', d('2026-10-28')],
    ['Reds', 'Duroc', 9, 47, d('2026-11-08'), 'Rowan', d('2026-11-01')],
    ['Blues', 'Duroc', 9, 47, d('2026-11-09'), 'Hazel', d('2026-11-02')],
    ['Whites', 'Duroc', 9, 47, d('2026-11-09'), 'Alder', d('2026-11-02')],
    ['Reds', 'Duroc', 9, 47, d('2026-11-09'), '', ''],
  ];
  const { chosen, gathered, problems } = lists(await open({ DIARY, pigs }));
  expect([chosen.groups?.tab, gathered]).toEqual(['pigs', undefined]);
  expect(problems.map(({ cell }) => cell)).toEqual(['pigs!A6']);
});
