/** Only what a list lacks is asked, and it goes into the list's own column: made where there is none. */
import { expect, test } from 'vitest';
import { dayFromIso } from '../../shared/core/calendar/day';
import { filledFigures } from '../../shared/lists/missing-figures';
import { growerLists } from '../../shared/tasks/grower-lists';
import { ROTATION_TASK } from '../../shared/tasks/rotation/rotation-task';
import { openWorkbook, portOf, type StartCell } from '../../src/headless';
import { readBook } from '../hard-use/rotation-task';
import { scriptText } from '../tasks/script-text';

const LAND: StartCell[][] = [
  ['Koppel', 'Größe (ha)', 'Zuletzt belegt'],
  ['Nord', 0.6, { d: '2025-10-01' }],
  ['Süd', '', { d: '2025-10-12' }],
  ['West', 0.5, ''],
  ['Hang', 0.8, ''],
];
const PIGS: StartCell[][] = [
  ['Gruppe', 'Anzahl', 'Steht in', 'Rasse'],
  ['Läufer', 12, 'Nord', 'Kreuzung'],
  ['Sauen', 2, '', 'Kreuzung'],
];

const ON = { comma: true, today: dayFromIso('2026-04-20')! };

const open = async (tabs: Record<string, StartCell[][]>) =>
  openWorkbook({ tabs, locale: 'de_DE', today: '2026-04-20', codeJs: await scriptText() });

test('an area and a weight are asked, written beside what stands there, and the plan is there', async () => {
  const farm = await open({ Land: LAND, Schweine: PIGS });
  const { lacking } = growerLists(readBook(farm), 'metric');
  expect(lacking).toEqual([
    {
      tab: 'Land',
      field: 'area',
      unit: 'ha',
      column: 2,
      headingRow: 1,
      rows: [{ row: 3, name: 'Süd', cell: 'Land!B3', isLone: false }],
    },
    {
      tab: 'Schweine',
      field: 'weight',
      unit: 'kg',
      // The breed stands in column D: the list's right edge is E.
      column: 5,
      headingRow: 1,
      weighedOn: { column: 6, isNew: true },
      heading: { row: 1, text: 'Weight (kg)' },
      // Sows are no growing pigs: none is asked for them.
      rows: [{ row: 2, name: 'Läufer', cell: 'Schweine!E2', isLone: false }],
    },
  ]);
  for (const [lacks, typed] of [
    [lacking[0]!, { 3: '0,7' }],
    [lacking[1]!, { 2: '31,5' }],
  ] as const) {
    const filled = filledFigures(lacks, typed, ON);
    if ('problem' in filled) throw new Error(filled.problem);
    await portOf(farm)('changeCells', { cells: [...filled.cells] });
  }
  const { lists, season } = ROTATION_TASK.read(readBook(farm), {});
  expect(lists.problems).toEqual([]);
  expect(lists.lacking).toEqual([]);
  expect(lists.paddocks.map(({ areaSquareMeters }) => areaSquareMeters)).toEqual([6000, 7000, 5000, 8000]);
  expect(lists.groups.map(({ weightKg }) => weightKg)).toEqual([31.5]);
  // Of the day on which it was typed, also when it is read later.
  expect(lists.groups.map(({ weighedOn }) => weighedOn)).toEqual([ON.today]);
  expect(farm.shownValues('Schweine')[0]!.slice(4, 6)).toEqual(['Weight (kg)', 'Weighed on']);
  expect(season).toHaveProperty('problem');
  expect(farm.values('Schweine')[0]).toEqual([
    'Gruppe',
    'Anzahl',
    'Steht in',
    'Rasse',
    'Weight (kg)',
    'Weighed on',
  ]);
}, 60_000);

test('what is no figure is refused by the name of its row, and nothing is filled', async () => {
  const farm = await open({ Land: LAND, Schweine: PIGS });
  const [area] = growerLists(readBook(farm), 'metric').lacking;
  expect(filledFigures(area!, { 3: 'ask Bob' }, ON)).toEqual({
    problem: 'Süd: area must be a number, got “ask Bob”',
  });
  expect(filledFigures(area!, { 3: '0' }, ON)).toEqual({ problem: 'Süd: area must be more than 0, got 0' });
  expect(filledFigures(area!, {}, ON)).toEqual({ problem: 'Type at least one area.' });
});

test('a name alone may be a paddock: its area is offered, and nothing waits for it', async () => {
  const rows = [
    ['Paddock', 'Acres'],
    ['Oak', 1],
    ['Elm', ''],
    ['Ash', 2],
  ];
  const lists = growerLists(readBook(await open({ Land: rows, Pigs: PIGS })), 'US');
  expect(lists.lacking[0]?.rows).toEqual([{ row: 3, name: 'Elm', cell: 'Land!B3', isLone: true }]);
  expect(lists.problems.filter(({ cell }) => cell.startsWith('Land'))).toEqual([]);
});
