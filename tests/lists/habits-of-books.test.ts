/** Habits of farm books, each in a small invented one: what is read, what is asked, what is told. */
import { expect, test } from 'vitest';
import { dayFromIso, isoFromDay } from '../../shared/core/calendar/day';
import { filledFigures } from '../../shared/lists/missing-figures';
import { growerLists } from '../../shared/tasks/grower-lists';
import { type Placed, unplacedCells } from '../../shared/tasks/unplaced-cells';
import { openWorkbook, portOf, type StartCell, type Workbook } from '../../src/headless';
import { readBook } from '../hard-use/rotation-task';
import { scriptText } from '../tasks/script-text';

const TODAY = '2026-09-30';
const open = async (tabs: Record<string, StartCell[][]>, locale = 'en_GB') =>
  openWorkbook({ tabs, locale, today: TODAY, codeJs: await scriptText() });
const lists = (farm: Workbook) => growerLists(readBook(farm), 'metric');
const iso = (day: number | undefined) => (day === undefined ? undefined : isoFromDay(day));
const d = (day: string): StartCell => ({ d: day });
const t = (text: string): StartCell => ({ text });

const LAND: StartCell[][] = [
  ['Paddock', 'Area (ha)'],
  ['Hazel', 0.4],
  ['Beech', 0.5],
  ['3', 0.6],
];
const PIGS: StartCell[][] = [
  ['Group', 'Head'],
  ['Amber lot (gilts and barrows)', 12],
  ['Slate lot', 20],
];

/** What a page sends when these answers are typed. */
async function fill(farm: Workbook, field: 'area' | 'weight', typed: Record<number, string>): Promise<void> {
  const lacks = lists(farm).lacking.find((one) => one.field === field)!;
  const filled = filledFigures(lacks, typed, { comma: false, today: dayFromIso(TODAY)! });
  if ('problem' in filled) throw new Error(filled.problem);
  await portOf(farm)('changeCells', { cells: [...filled.cells] });
}

test('weights come out of a log by group, under a shortened name too, with a week for a day', async () => {
  const scales: StartCell[][] = [
    ['Week', 'Group', 'head', 'av'],
    [t('v. 36'), 'Slate lot', 20, 31],
    [t('v. 39'), 'Amber lot', 4, t('72,5 kg')],
    [t('v. 39'), 'Slate lot', 20, 38],
  ];
  const { groups, problems, notes } = lists(await open({ LAND, PIGS, scales }, 'sv_SE'));
  expect(problems).toEqual([]);
  // Monday of week 39 of 2026 is 21 September (ISO 8601: 4 January 2026, a Sunday, lies in week 1).
  expect(groups.map(({ name, weightKg, weighedOn }) => [name, weightKg, iso(weighedOn)])).toEqual([
    ['Amber lot (gilts and barrows)', 72.5, '2026-09-21'],
    ['Slate lot', 38, '2026-09-21'],
  ]);
  expect(notes.groups).toContain(
    'The weight of “Amber lot (gilts and barrows)” is read from scales!D3 (“Amber lot” there).',
  );
});

test('pigs weighed one by one on a day: their mean, and of the last day only', async () => {
  const scales: StartCell[][] = [
    ['Date', 'Group', 'Ear tag', 'kg'],
    [d('2026-08-20'), 'Slate lot', 11, 25],
    [d('2026-09-21'), 'Slate lot', 11, 36],
    [d('2026-09-21'), 'Slate lot', 12, 41],
    [d('2026-09-21'), 'Slate lot', 13, 37],
    [d('2026-09-21'), 'Amber lot', 4, 72.5],
  ];
  const { groups, notes } = lists(await open({ LAND, PIGS, scales }));
  // (36 + 41 + 37) / 3
  expect(groups.map(({ weightKg }) => weightKg)).toEqual([72.5, 38]);
  expect(notes.groups).toContain(
    'The weight of “Slate lot” is read from scales!D5: the mean of 3 weighed that day.',
  );
});

test('feed bought for groups is no weighing of them', async () => {
  const bills: StartCell[][] = [
    ['Date', 'Product', 'kg'],
    [d('2026-07-01'), 'Slate lot', 1500],
    [d('2026-07-20'), 'rearer', 2000],
    [d('2026-08-11'), 'finisher', 2500],
    [d('2026-09-02'), 'rearer', 2000],
  ];
  const { groups, lacking } = lists(await open({ bills, LAND, PIGS }));
  expect(groups).toEqual([]);
  expect(lacking.map(({ field, rows }) => [field, rows.map(({ row }) => row)])).toEqual([['weight', [2, 3]]]);
});

test('a litter list beside the groups does not take their weights', async () => {
  const pigs: StartCell[][] = [
    ['Group', 'Head', 'Weight (kg)', '', 'Litter', 'Born'],
    ['Amber', 12, 57, '', 'Vera', 9],
    ['Slate', 20, 31, '', 'Ida', 11],
  ];
  const { groups } = lists(await open({ LAND, pigs }));
  expect(groups.map(({ name, head }) => [name, head])).toEqual([
    ['Amber', 12],
    ['Slate', 20],
  ]);
});

test('a name that may be two groups takes no weight', async () => {
  const pigs: StartCell[][] = [
    ['Group', 'Head'],
    ['Red early', 12],
    ['Red late', 20],
  ];
  const scales: StartCell[][] = [
    ['Date', 'Group', 'Weight (kg)'],
    [d('2026-09-01'), 'Red early', 44],
    [d('2026-09-02'), 'Red', 99],
    [d('2026-09-03'), 'Red', 98],
    [d('2026-09-04'), 'Red late', 21],
  ];
  const { groups } = lists(await open({ LAND, pigs, scales }));
  expect(groups.map(({ weightKg }) => weightKg)).toEqual([44, 21]);
});

test('a log of moves is never taken before the list of groups, numbers for names included', async () => {
  const moves: StartCell[][] = [
    ['Lot', 'Paddock', 'in', 'out'],
    ...[1, 2, 1, 2, 1, 2].map((name, i): StartCell[] => [name, 'Hazel', d(`2026-08-0${i + 1}`), '']),
  ];
  const pigs: StartCell[][] = [
    ['Lot', 'Where'],
    [1, 'Hazel'],
    [2, 'Beech'],
  ];
  const { chosen } = lists(await open({ LAND, moves, pigs }));
  expect(chosen.groups?.tab).toBe('pigs');
});

test('moves that are written elsewhere are told', async () => {
  const moves: StartCell[][] = [
    ['Group', 'Paddock', 'in', 'out'],
    ['Amber lot', 'Hazel', d('2026-08-01'), d('2026-08-20')],
    ['Slate lot', 'Beech', d('2026-08-03'), d('2026-08-20')],
    ['Amber lot', 'Beech', d('2026-08-20'), ''],
    ['Slate lot', 'Hazel', d('2026-08-20'), ''],
  ];
  const told = lists(await open({ LAND, PIGS, moves })).notes.groups;
  expect(told.join()).toContain('moves!A1: the moves here are not read.');
});

test('lists side by side end where each has its own table below', async () => {
  const farm: StartCell[][] = [
    ['Paddock', 'Area', 'Remark', '', 'Group', 'Head', 'Weight (kg)'],
    ['Hazel', t('0.4 ha'), '', '', 'Amber', 12, 60],
    ['Beech', t('0.5 ha'), '', '', 'Slate', 20, 30],
    ['Alder', t('0.5 ha'), '', '', '', '', ''],
    ['Rowan', t('0.6 ha'), '', '', 'group', 'off', 'on to'],
    ['Aspen', t('0.7 ha'), '', '', 'Amber', 'Beech', 'Hazel'],
  ];
  const { paddocks, groups, problems, notes } = lists(await open({ farm }));
  expect(problems).toEqual([]);
  expect(paddocks).toHaveLength(5);
  expect(groups.map(({ name }) => name)).toEqual(['Amber', 'Slate']);
  expect(notes.groups).toContain(
    'Not read as groups: what stands from farm!E5 (“group”) on, as a table of its own.',
  );
});

test('sides in another column stand for an area that is blank, in the unit of their heading, told', async () => {
  const land: StartCell[][] = [
    ['Paddock', 'Fence (ft)', 'Acres'],
    ['Hazel', t('100 x 200'), ''],
    ['Beech', t('100 x 200'), 0.5],
  ];
  const { paddocks, lacking, notes } = lists(await open({ land }));
  // 20,000 ft² × 0.09290304 m² (international foot, 0.3048 m, 1959); 0.5 ac × 4046.8564224 m².
  expect(paddocks.map(({ areaSquareMeters }) => areaSquareMeters)).toEqual([
    expect.closeTo(1858.0608, 6),
    expect.closeTo(2023.4282, 4),
  ]);
  expect(lacking).toEqual([]);
  expect(notes.paddocks.join()).toContain('land!B2 “100 x 200” as 1858');
});

test('a place and since when in one cell; a weight and its day in another', async () => {
  const pigs: StartCell[][] = [
    ['Group', 'Head', 'Weight', 'Where'],
    ['Amber', 12, t('61 kg (12/9)'), t('Hazel since 14/9')],
    ['Slate', 20, t('30 kg (20/9)'), t('paddock 3')],
  ];
  const { groups, problems } = lists(await open({ LAND, pigs }));
  expect(problems).toEqual([]);
  expect(
    groups.map(({ weightKg, weighedOn, standsIn }) => [
      weightKg,
      iso(weighedOn),
      standsIn?.paddock,
      iso(standsIn?.since),
    ]),
  ).toEqual([
    [61, '2026-09-12', 'Hazel', '2026-09-14'],
    [30, '2026-09-20', '3', TODAY],
  ]);
});

test('what cannot be read is asked and written over; a dash leaves one out, told', async () => {
  const pigs: StartCell[][] = [
    ['Group', 'Head', 'Weight (kg)'],
    ['Amber', 12, t('5 @')],
    ['Litters', 20, ''],
  ];
  const farm = await open({ LAND, pigs });
  expect(lists(farm).lacking[0]?.rows).toEqual([
    { row: 2, name: 'Amber', cell: 'pigs!C2', unread: '5 @', isLone: false },
    { row: 3, name: 'Litters', cell: 'pigs!C3', isLone: false },
  ]);
  await fill(farm, 'weight', { 2: '57.5', 3: '-' });
  expect(farm.values('pigs').map((row) => row[2])).toEqual(['Weight (kg)', 57.5, '-']);
  const { groups, problems, notes } = lists(farm);
  expect(problems).toEqual([]);
  expect(groups.map(({ name, weightKg }) => [name, weightKg])).toEqual([['Amber', 57.5]]);
  expect(notes.groups).toContain('pigs!C3: “Litters” has a dash for its weight and is left out.');
});

test('weights and their day go into free columns where another list stands close by', async () => {
  const pigs: StartCell[][] = [
    ['Group', 'Head', '', 'Litter', 'Alive'],
    ['Amber', 12, '', 'Vera', 9],
    ['Slate', 20, '', 'Ida', 11],
  ];
  const farm = await open({ LAND, pigs });
  await fill(farm, 'weight', { 2: '57.5', 3: '30' });
  const { groups, problems, undated } = lists(farm);
  expect([problems, undated]).toEqual([[], undefined]);
  expect(groups.map(({ weightKg, weighedOn }) => [weightKg, iso(weighedOn)])).toEqual([
    [57.5, TODAY],
    [30, TODAY],
  ]);
});

test('names in a row with nothing beside them are paddocks whose area is asked', async () => {
  const land: StartCell[][] = [
    ['Paddock', 'Area (ha)'],
    ['By the oak'],
    ['Hazel', 0.4],
    ['Strip 1'],
    ['Strip 2'],
    ['Beech', 0.5],
  ];
  const [area] = lists(await open({ land })).lacking;
  expect(area?.rows.filter(({ isLone }) => !isLone).map(({ name }) => name)).toEqual(['Strip 1', 'Strip 2']);
});

test('a boar with the sows is told and not counted; other animals are told, remarks before the names too', async () => {
  const land: StartCell[][] = [
    ['Remark', 'Paddock', 'Area (ha)'],
    ['sheep till Christmas', 'Hazel', 0.4],
    ['sheep netting', 'Beech', 0.5],
  ];
  const pigs: StartCell[][] = [
    ['Group', 'Head', 'Weight (kg)', 'Weighed on', 'Paddock'],
    ['Sows', 5, 210, d('2026-09-01'), 'Hazel'],
    ['Boar', 1, 260, d('2026-09-01'), 'Hazel'],
  ];
  const { groups, problems, notes, unused } = lists(await open({ land, pigs }));
  expect(problems).toEqual([]);
  expect(groups.map(({ name }) => name)).toEqual(['Sows']);
  expect(notes.groups).toContain(
    'pigs!A3: “Boar” stands with “Sows” and is not counted. To count it, add its pigs to the head of “Sows”.',
  );
  expect(unused.map(({ paddock }) => paddock.name)).toEqual(['Hazel']);
});

// What they mean: read so by strangers in their own books.
test.each([
  ['Rest until', 'en_US'],
  ["Repos jusqu'au", 'fr_FR'],
  ['Ruhe bis', 'de_DE'],
  ['Vila till', 'sv_SE'],
  ['Rust tot', 'nl_NL'],
  ['Riposo fino al', 'it_IT'],
])('“%s” is the day on which a paddock opens again', async (heading, locale) => {
  const Land = [
    ['Paddock', 'ha', heading],
    ['Hazel', 0.4, d('2027-04-15')],
    ['Beech', 0.5],
  ] as StartCell[][];
  const { paddocks } = lists(await open({ Land }, locale));
  expect(paddocks.map(({ openFrom, openUntil }) => [iso(openFrom), openUntil])).toEqual([
    ['2027-04-15', undefined],
    [undefined, undefined],
  ]);
});

test('a list on a tab of an earlier year is told', async () => {
  const early = lists(await open({ 'Fields 2025': LAND, 'Pigs 2026': PIGS })).notes;
  expect(early.paddocks).toContainEqual(
    expect.stringMatching('“Fields 2025” looks like a tab of an earlier year'),
  );
  expect(early.groups.join()).not.toMatch('earlier year');
});

test('days already rested are no rest that is wanted', async () => {
  const Land = [
    ['Paddock', 'ha', 'Days rested'],
    ['Hazel', 0.4, 39],
    ['Beech', 0.5, 23],
  ] as StartCell[][];
  const { paddocks } = lists(await open({ Land }));
  expect(paddocks.map(({ restDays }) => restDays)).toEqual([undefined, undefined]);
});

test('“are” below “Grootte” is 100 square metres', async () => {
  const Land: StartCell[][] = [
    ['Perceel', 'Grootte', 'Grootte'],
    ['naam', 'are', 'hek (m)'],
    ['Kuil', 24, 196],
    ['Bosrand', 55, 300],
  ];
  const { paddocks } = lists(await open({ Land }, 'nl_NL'));
  expect(paddocks.map(({ name, areaSquareMeters }) => [name, areaSquareMeters])).toEqual([
    ['Kuil', 2400],
    ['Bosrand', 5500],
  ]);
});

test('a total in another unit is no paddock; half of another paddock is one', async () => {
  const Land: StartCell[][] = [
    ['Recinto', 'Superficie (mq)'],
    ['Prato alto', 5200],
    ['Prato basso', '=B2/2'],
    ['', ''],
    ['Totale', '=SUM(B2:B4)'],
    ['in ettari', '=B5/10000'],
  ];
  const { paddocks } = lists(await open({ Land }, 'it_IT'));
  expect(paddocks.map(({ name, areaSquareMeters }) => [name, areaSquareMeters])).toEqual([
    ['Prato alto', 5200],
    ['Prato basso', 2600],
  ]);
});

test('a place is a paddock by its number or a shortened name; who stands elsewhere is left out and asked', async () => {
  const Land: StartCell[][] = [
    ['Nr.', 'Name', 'ha'],
    ['K1', 'Hazel', 0.4],
    ['K2', 'Beech wood (east)', 0.5],
    ['K3', 'Beech wood', 0.6],
    ['', 'Corner', 0.1],
  ];
  const Pigs: StartCell[][] = [
    ['Group', 'Head', 'kg', 'Weighed', 'Where', 'Since', 'In the rotation from'],
    ['Amber', 12, 60, d('2026-09-20'), 'k1', d('2026-09-20')],
    ['Slate', 20, 40, d('2026-09-20'), 'beech east', d('2026-09-21')],
    ['Rust', 21, 15, d('2026-09-20'), 'Stall 2', d('2026-09-01')],
    ['Ochre', 9, 15, d('2026-09-20'), 'Barn', d('2026-09-01'), d('2026-11-01')],
  ];
  const { groups, notes, problems, unplaced } = lists(await open({ Land, Pigs }));
  expect(problems).toEqual([]);
  expect(groups.map(({ name, standsIn, from }) => [name, standsIn?.paddock, iso(from)])).toEqual([
    ['Amber', 'Hazel', undefined],
    ['Slate', 'Beech wood (east)', undefined],
    ['Ochre', undefined, '2026-11-01'],
  ]);
  expect(unplaced.map(({ sentence }) => sentence)).toEqual([
    'Pigs!E4: “Rust” stands in “Stall 2”, which is no paddock of your list. It is left out of the plan until you say what is meant.',
  ]);
  expect(notes.groups).toContainEqual(
    expect.stringMatching('Pigs!E2 “k1” as Hazel.*Pigs!E3 “beech east” as Beech'),
  );
});

test.each(['somewhere', 'Beech', 'Barn field'])(
  '“%s” is asked where it is no paddock, or two',
  async (place) => {
    const Land = [
      ['Paddock', 'ha'],
      ['Beech 1', 0.4],
      ['Beech 2', 0.5],
    ] as StartCell[][];
    const Pigs: StartCell[][] = [
      ['Group', 'Head', 'kg', 'Where'],
      ['Amber', 12, 60, place],
      ['Slate', 20, 40, 'Beech 1'],
    ];
    const { problems, unplaced, groups } = lists(await open({ Land, Pigs }));
    expect([problems, groups.map(({ name }) => name)]).toEqual([[], ['Slate']]);
    expect(unplaced.map(({ cell }) => cell)).toEqual(['Pigs!D2']);
  },
);

test.each<readonly [answer: Placed, written: readonly string[], read: readonly unknown[]]>([
  ['out', ['In rotation from', '-'], ['Slate']],
  [dayFromIso(TODAY)!, ['In rotation from', 'Wed 30 Sep 2026'], ['Amber', 'Slate']],
])('a group elsewhere: %s is written into the list, and holds', async (answer, written, read) => {
  const Pigs: StartCell[][] = [
    ['Group', 'Head', 'kg', 'Where'],
    ['Amber', 12, 60, 'yard'],
    ['Slate', 20, 40, 'Beech'],
  ];
  const farm = await open({ LAND, Pigs });
  const { sources, unplaced } = lists(farm);
  await portOf(farm)('changeCells', { cells: [...unplacedCells(sources.groups!, unplaced[0]!, answer)] });
  expect(
    farm
      .shownValues('Pigs')
      .slice(0, 2)
      .map((row) => row[4]),
  ).toEqual(written);
  const after = lists(farm);
  expect([after.unplaced, after.problems, after.groups.map(({ name }) => name)]).toEqual([[], [], read]);
  expect(after.groups.find(({ name }) => name === 'Amber')?.standsIn).toBeUndefined();
});

test('words for the day on which a group comes are asked where its place says nothing; what a formula says is waited for', async () => {
  const Pigs: StartCell[][] = [
    ['Group', 'Head', 'kg', 'In the rotation from', 'Where'],
    ['Amber', 12, 60, 'when big', ''],
    ['Slate', 20, 40, 'soon', 'Beech'],
  ];
  const asked = lists(await open({ LAND, Pigs }));
  expect([asked.problems, asked.unplaced.map(({ cell }) => cell)]).toEqual([[], ['Pigs!D2']]);
  expect(asked.groups.map(({ name }) => name)).toEqual(['Slate']);
  Pigs[1]![3] = '="not "&"ready"';
  expect(lists(await open({ LAND, Pigs })).problems.map(({ cell }) => cell)).toEqual(['Pigs!D2']);
});

test.each(['Moyenne (kg)', 'Ø LG (kg)', 'Media (kg)'])('“%s” is the weight of one pig', async (heading) => {
  const Pigs: StartCell[][] = [
    ['Group', 'Head', heading],
    ['Amber', 12, 60],
    ['Slate', 20, 40],
  ];
  const { groups } = lists(await open({ LAND, Pigs }));
  expect(groups.map(({ weightKg }) => weightKg)).toEqual([60, 40]);
});

test('“Pigs” over names heads the names; areas with their unit are found under any heading', async () => {
  const Farm: StartCell[][] = [
    ['Sitio', 'Mide', 'Notas'],
    ['La Vega', t('0,4 ha'), ''],
    ['El Monte', t('0,5 ha'), ''],
    ['Fuente', t('0,6 ha'), ''],
    [],
    ['PIGS', 'HOW MANY', 'WT', 'WHERE'],
    ['Red butts', 14, 75, 'Fuente'],
    ['Blue butts', 11, 42, 'El Monte'],
  ];
  const { paddocks, groups, problems } = lists(await open({ Farm }, 'es_ES'));
  expect(problems).toEqual([]);
  expect(paddocks.map(({ name, areaSquareMeters }) => [name, areaSquareMeters])).toEqual([
    ['La Vega', 4000],
    ['El Monte', 5000],
    ['Fuente', 6000],
  ]);
  expect(groups.map(({ name, head, standsIn }) => [name, head, standsIn?.paddock])).toEqual([
    ['Red butts', 14, 'Fuente'],
    ['Blue butts', 11, 'El Monte'],
  ]);
});

test('an amount with a remark is read where it is the only one, and told; its day is that of the weighing', async () => {
  const Pigs: StartCell[][] = [
    ['Group', 'Head', 'Weight'],
    ['Amber', 12, t('68kg tape 20/9')],
    ['Slate', 20, t('about 40 kg')],
    ['Rust', 9, t('9 - 11 kg')],
  ];
  const { groups, lacking, notes } = lists(await open({ LAND, Pigs }));
  expect(groups.map(({ name, weightKg, weighedOn }) => [name, weightKg, iso(weighedOn)])).toEqual([
    ['Amber', 68, '2026-09-20'],
    ['Slate', 40, TODAY],
  ]);
  expect(notes.groups.join()).toContain(
    'Pigs!C2 “68kg tape 20/9” as 68; Pigs!C2 “68kg tape 20/9” as of 2026-09-20',
  );
  expect(lacking[0]?.rows.map(({ name }) => name)).toEqual(['Rust']);
});
