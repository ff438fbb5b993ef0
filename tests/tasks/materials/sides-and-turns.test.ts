/** What the materials take from the grower's list, the rotation and the shed, on an invented croft. Worked by hand. */
import { expect, test, vi } from 'vitest';
import { withColumn } from '../../../shared/lists/list-columns';
import { farmLine } from '../../../shared/tasks/bite/farm-line';
import { growerLists } from '../../../shared/tasks/grower-lists';
import { buyList } from '../../../shared/tasks/materials/buy-list';
import { listFence } from '../../../shared/tasks/materials/list-fence';
import { MATERIALS_TASK } from '../../../shared/tasks/materials/materials-task';
import { ROTATION_TASK } from '../../../shared/tasks/rotation/rotation-task';
import { openWorkbook, portOf, runTask, type StartCell, type Workbook } from '../../../src/headless';
import { readBook } from '../../hard-use/rotation-task';
import { scriptText } from '../script-text';

vi.setConfig({ testTimeout: 120_000 });

const PIGS: StartCell[][] = [
  ['Group', 'Head', 'Weight (kg)', 'Weighed on', 'From', 'Until'],
  ['Finishers', 9, 60, { d: '2026-04-01' }, { d: '2026-04-01' }, { d: '2026-06-01' }],
];
const WIRE = { 'What is the fence made of?': 'Wire on posts' };
const ALONE = { 'Where paddocks touch': 'Nowhere: each stands alone' };

async function croft(land: StartCell[][], more: Record<string, StartCell[][]> = {}): Promise<Workbook> {
  const tabs = { Land: land, Pigs: PIGS, ...more };
  return openWorkbook({ tabs, codeJs: await scriptText(), locale: 'en_GB', today: '2026-04-01' });
}

const sidesOf = (farm: Workbook) =>
  MATERIALS_TASK.read(readBook(farm), WIRE).layout.list!.laidOut!.paddocks.map(
    ({ widthMeters = 0, lengthMeters = 0 }) => [Math.round(widthMeters), Math.round(lengthMeters)],
  );

test('sides of the list count: both, also under “Broad”; of one the area makes the other; of none a shape', async () => {
  const both = await croft([
    ['Park', 'Hectares', 'Long (m)', 'Broad (m)'],
    ['Rig', 0.3, 150, 20],
    ['Moss', 0.77, 110, 70],
  ]);
  expect(sidesOf(both)).toEqual([
    [20, 150],
    [70, 110],
  ]);
  const one = await croft([
    ['Park', 'Hectares', 'Long (m)'],
    ['Rig', 0.3, 150],
    ['Loan', 0.54, ''],
  ]);
  // 3,000 m² ÷ 150 m; √(5,400 ÷ 1.5) = 60 m, half as long again.
  expect(sidesOf(one)).toEqual([
    [20, 150],
    [60, 90],
  ]);
  const { laidOut } = MATERIALS_TASK.read(readBook(one), WIRE).layout.list!;
  expect(laidOut!.guessed).toEqual(['Loan']);
  const done = await runTask(portOf(one), MATERIALS_TASK, { ...WIRE, ...ALONE });
  expect(done.kind).toBe('written');
  const rows = one.values('Fence materials');
  const round = (name: string) => Number(rows.find((row) => row[0] === name)?.[3]);
  expect([round('Rig'), round('Loan')]).toEqual([340, expect.closeTo(300, 6)]);
});

test('the set goes by the moves of the rotation, each group for itself', () => {
  const square = (name: string, side: number) => ({ name, widthMeters: side, lengthMeters: side });
  // Fence round each: 40, 200, 80, 160.
  const paddocks = [square('A', 10), square('B', 50), square('C', 20), square('D', 40)];
  const list = { kind: 'list', touching: 'alone', paddocks } as const;
  const set = (inTurn?: readonly (readonly number[])[], size = 2) => {
    const fence = listFence({ ...list, ...(inTurn && { inTurn }) }, { postSpacing: 7, netLength: 50 }, size);
    return [fence.set.meters, fence.longest.join(' ')];
  };
  expect(set()).toEqual([280, 'B C']);
  expect(
    set([
      [0, 2, 0],
      [1, 3],
    ]),
  ).toEqual([360, 'B D']);
  expect(
    set([
      [0, 2, 3],
      [1, 0],
    ]),
  ).toEqual([240, 'B A']);
  // A group with fewer moves than stand together takes what it has.
  expect(set([[0, 2]], 3)).toEqual([120, 'A C']);
});

test('a rotation that stands says what follows what, in the page and in the sheet', async () => {
  const farm = await croft([
    ['Paddock', 'Hectares', 'Width (m)', 'Length (m)'],
    ...['North', 'South', 'Oak', 'Hill', 'Creek'].map((name, i): StartCell[] => [
      name,
      0.2 + i / 10,
      40 + 5 * i,
      50 + 8 * i,
    ]),
  ]);
  await runTask(portOf(farm), ROTATION_TASK, {});
  const moves = farm.values('Rotation').filter(([group]) => group === 'Finishers');
  const { plan } = MATERIALS_TASK.read(readBook(farm), { ...WIRE, ...ALONE });
  const round = new Map(
    ['North', 'South', 'Oak', 'Hill', 'Creek'].map((name, i) => [name, 2 * (40 + 5 * i + 50 + 8 * i)]),
  );
  const names = moves.map((row) => String(row[1]));
  const pairs = names.slice(1).map((name, i) => round.get(name)! + round.get(names[i]!)!);
  expect(pairs.length).toBeGreaterThan(2);
  expect(buyList(plan!, plan!.typed).fence.set.meters).toBeCloseTo(Math.max(...pairs), 6);
  await runTask(portOf(farm), MATERIALS_TASK, { ...WIRE, ...ALONE });
  const line = farm.values('Fence materials').find(([label]) => label === 'Line to put up');
  expect(line?.[1]).toBeCloseTo(Math.max(...pairs), 6);
  expect(line?.[3]).toMatch(/follow one another in the rotation/);
});

test('an energizer that is too weak for the fence is not on hand, and its price is not taken', async () => {
  // 2,012 m of netting with 6 live strings: more than 7 J by 1 J a mile (Gerrish, published) of line and string.
  const shed = [
    ['Item', 'Have', 'Price'],
    ['Energiser 0.5 J battery', 1, 145],
    ['Energiser 9 J mains', 1, 189],
    ['Pig netting 50 m', 2, 96],
  ];
  const farm = await croft(
    [
      ['Paddock', 'Hectares', 'Width (m)', 'Length (m)'],
      ['Rig', 25, 500, 506],
    ],
    { Shed: shed },
  );
  const { plan, stock } = MATERIALS_TASK.read(readBook(farm), {
    'How many paddocks stand fenced at a time?': 'All of them',
  });
  expect(plan!.typed.items.get('Energizer')?.amounts).toEqual({ onHand: 1, price: 189 });
  expect(plan!.settings.energizerJoules).toBe(9);
  expect(stock!.notes).toEqual([
    expect.stringMatching(/^“Energiser 0\.5 J battery” puts out less than the 7\.\d J that the fence takes/),
  ]);
});

test('the written table says which columns are the sides, whatever a rotation without them remembers', async () => {
  const farm = await croft([
    ['Paddock', 'Hectares', 'Length (m)', 'Xb'],
    ['Rig', 0.6, 150, 20],
    ['Moss', 0.77, 110, 70],
  ]);
  await runTask(portOf(farm), ROTATION_TASK, {});
  const list = growerLists(readBook(farm), 'metric').chosen.paddocks!;
  expect(list.columns).not.toHaveProperty('width');
  const answers = { ...WIRE, ...ALONE, 'Paddock list': withColumn(list, 'width', 4) };
  await runTask(portOf(farm), MATERIALS_TASK, answers);
  const after = readBook(farm);
  const { plan, sources } = MATERIALS_TASK.read(after, {});
  expect(sources.paddocks?.list.columns.width).toBe(4);
  // 340 m and 360 m, alone.
  expect(buyList(plan!, plan!.typed).liveMeters).toBeCloseTo(700, 6);
  expect(farmLine(after)?.line.meters).toBe(700);
});
