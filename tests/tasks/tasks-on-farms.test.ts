/**
 * Materials and budget on both sample farms and on a farm with odd headings: written through the built script,
 * recalculated by the engine, held against the core and against sums by hand.
 */
import { describe, expect, test, vi } from 'vitest';
import type { ComposedBlock } from '../../shared/block/composed-block';
import { cutBlock } from '../../shared/block/read-block';
import type { BlockInfo, TabContent, WholeFile } from '../../shared/contract';
import { dayFromIso } from '../../shared/core/calendar/day';
import { findLists } from '../../shared/lists/find-lists';
import type { FoundList, GroupList, PaddockList } from '../../shared/lists/model';
import { readGroups } from '../../shared/lists/read-groups';
import { readPaddocks } from '../../shared/lists/read-paddocks';
import { isRefusalSentence } from '../../shared/refusals';
import { LARCH_VALE } from '../../shared/samples/larch-vale';
import { MARROW_CREEK } from '../../shared/samples/marrow-creek';
import { readRotation } from '../../shared/table/read-rotation';
import { BUDGET_BLOCK, type BudgetPlan, budgetBlock } from '../../shared/tasks/budget/budget-block';
import { BUDGET_SETTINGS } from '../../shared/tasks/budget/budget-settings';
import { byPeriod } from '../../shared/tasks/budget/by-period';
import { earlierBudget } from '../../shared/tasks/budget/earlier-budget';
import { paddockLoads } from '../../shared/tasks/budget/paddock-loads';
import { plainStays } from '../../shared/tasks/budget/plain-stays';
import { readBudget } from '../../shared/tasks/budget/read-budget';
import { rotationLinks } from '../../shared/tasks/budget/rotation-links';
import { rotationStays } from '../../shared/tasks/budget/rotation-stays';
import { stayNeeds } from '../../shared/tasks/budget/stay-needs';
import { originOfLists, originOfRotation } from '../../shared/tasks/budget/words';
import { workableStays } from '../../shared/tasks/budget/workable-stays';
import { buyList } from '../../shared/tasks/materials/buy-list';
import { COMPARISON_SETTINGS } from '../../shared/tasks/materials/comparison-model';
import { laidPaddocks } from '../../shared/tasks/materials/laid-paddocks';
import {
  MATERIALS_BLOCK,
  type MaterialsPlan,
  materialsBlock,
} from '../../shared/tasks/materials/materials-block';
import { MATERIALS_SETTINGS } from '../../shared/tasks/materials/materials-settings';
import { NOTHING_TYPED } from '../../shared/tasks/materials/read-materials';
import { rebuildBlock } from '../../shared/tasks/merge/rebuild-block';
import { insideSettings, startSettings } from '../../shared/tasks/settings';
import { fromInside, toInside, type UnitSystem } from '../../shared/units/units';
import { openWorkbook, type StartCell, type Workbook } from '../../src/headless';
import { ask, buildTable, readTab } from '../table/farm-in-sheet';
import { scriptText } from './script-text';
import {
  beside,
  cellBeside,
  errorsIn,
  NOTHING_KEPT,
  readAsWritten,
  readFromSheet,
  writeAnew,
  writeInSheet,
} from './sheet-block';

// The engine's first evaluation takes seconds on a busy machine.
vi.setConfig({ testTimeout: 120_000 });

interface Farm {
  readonly name: string;
  readonly units: UnitSystem;
  readonly sample?: string;
  readonly tabs: Record<string, StartCell[][]>;
}

const ODD: Record<string, StartCell[][]> = {
  'My land': [
    ['Thistle Bank: land'],
    [],
    ['Notes', 'Size (ha)', 'Field name', 'Long side (m)', 'Breadth (m)', 'Borders'],
    ['wet', 0.3, 'Ash, lower', 75, 40, 'Elm'],
    ['', 0.24, 'Elm', 60, 40, 'Ash, lower, Oak'],
    [],
    ['', 0.35, 'Oak', 70, 50, 'Elm'],
    ['', 0.89, 'Total', '', '', ''],
  ],
  Herds: [
    ['Avg weight (kg)', 'Herd', 'No. of pigs', 'Weighed', 'ADG (kg)', 'Rotation from', 'Ship date'],
    [28, 'Early', 9, { d: '2026-04-28' }, 0.65, { d: '2026-05-02' }, { d: '2026-08-01' }],
    [30, 'Late', 6, { d: '2026-05-20' }, '', { d: '2026-06-01' }, { d: '2026-09-28' }],
  ],
};

const FARMS: readonly Farm[] = [
  { name: 'Marrow Creek', units: 'US', sample: MARROW_CREEK.id, tabs: { Sheet1: [] } },
  { name: 'Larch Vale', units: 'metric', sample: LARCH_VALE.id, tabs: { Sheet1: [] } },
  { name: 'odd headings', units: 'metric', tabs: ODD },
];

interface Opened {
  readonly book: Workbook;
  readonly paddockTab: TabContent;
  readonly paddockList: PaddockList;
  readonly groupTab: TabContent;
  readonly groupList: GroupList;
}

async function openFarm({ sample, tabs }: Farm): Promise<Opened> {
  const book = await openWorkbook({ tabs, codeJs: await scriptText(), today: '2026-04-20' });
  if (sample) ask(book, 'startSample', { sample });
  const { tabs: contents } = ask<WholeFile>(book, 'readFile', {});
  const found = findLists(contents);
  const first = (kind: FoundList['kind']): FoundList => found.find((list) => list.kind === kind) as FoundList;
  const tabOf = (list: FoundList): TabContent => contents.find(({ name }) => name === list.tab) as TabContent;
  const [paddocks, groups] = [first('paddocks'), first('groups')];
  return {
    book,
    paddockTab: tabOf(paddocks),
    paddockList: paddocks as unknown as PaddockList,
    groupTab: tabOf(groups),
    groupList: groups as unknown as GroupList,
  };
}

function materialsPlan({ paddockTab, paddockList }: Opened, units: UnitSystem): MaterialsPlan {
  const settings = startSettings(MATERIALS_SETTINGS, units);
  const read = readPaddocks(paddockTab, paddockList, units, false);
  expect(read.problems).toEqual([]);
  const laid = laidPaddocks(
    paddockTab,
    paddockList,
    read.paddocks,
    { system: units, comma: false },
    settings.shape ?? 1,
  );
  expect(laid.problems).toEqual([]);
  return {
    layout: { kind: 'list', paddocks: laid.paddocks, touching: 'lengths' },
    atATime: { kind: 'set', paddocks: 2 },
    kind: 'wire',
    units,
    settings,
    comparison: startSettings(COMPARISON_SETTINGS, units),
    list: { tab: paddockTab, list: paddockList },
  };
}

describe.each(FARMS)('$name', (farm) => {
  test('materials: the sheet counts what the core counts, and follows the list', async () => {
    const opened = await openFarm(farm);
    const { book } = opened;
    const plan = materialsPlan(opened, farm.units);
    const block = materialsBlock(plan, NOTHING_TYPED, { row: 1, column: 1 });
    const info = writeInSheet(book, MATERIALS_BLOCK, block, { at: 'new-tab', tab: 'Fence' });
    let content = readFromSheet(book, info);
    expect(errorsIn(content)).toEqual([]);
    const needs = buyList(plan, NOTHING_TYPED);
    const length = (meters: number): number => fromInside(meters, 'length', farm.units);
    expect(beside(content, 'Outer fence')).toBeCloseTo(length(needs.fence.outerMeters), 4);
    expect(beside(content, 'Line to put up')).toBeCloseTo(length(needs.lineMeters), 4);
    for (const { name, need } of needs.lines) expect([name, beside(content, name)]).toEqual([name, need]);
    // A wider paddock in the grower's own list makes a longer fence at once.
    const column = opened.paddockList.columns.width ?? opened.paddockList.columns.area ?? 1;
    const cell = `${String.fromCharCode(64 + column)}${opened.paddockList.firstRow}`;
    const before = Number(beside(content, 'Outer fence'));
    book.type(opened.paddockTab.name, cell, String(1.5 * Number(book.value(opened.paddockTab.name, cell))));
    content = readFromSheet(book, info);
    expect(Number(beside(content, 'Outer fence'))).toBeGreaterThan(before + 1);
  });

  test('budget from the lists: every sum is the core’s, months add up, a corrected head count reaches it', async () => {
    const opened = await openFarm(farm);
    const { book } = opened;
    const plan = budgetPlan(opened, farm.units);
    const settings = insideSettings(BUDGET_SETTINGS, plan.settings, farm.units);
    const needs = plan.stays.map((stay) => stayNeeds(stay, settings));
    // The late herd has no daily gain and outgrows the growth table in September.
    expect(plan.leftOut.map((sentence) => sentence.split(':')[0])).toEqual(
      farm.name === 'odd headings' ? ['Late'] : [],
    );
    const block = budgetBlock(plan, new Map(), { row: 1, column: 1 });
    const info = writeInSheet(book, BUDGET_BLOCK, block, { at: 'new-tab', tab: 'Budget' });
    const content = readFromSheet(book, info);
    expect(errorsIn(content)).toEqual([]);
    expectBudget(content, plan, needs);
    expectTypedOverKept(book, info, plan.stays[0]?.paddock ?? '', block);
    const feed = Number(beside(content, 'Feed together'));
    const head = opened.groupList.columns.head ?? 1;
    const cell = `${String.fromCharCode(64 + head)}${opened.groupList.firstRow}`;
    const many = Number(book.value(opened.groupTab.name, cell));
    book.type(opened.groupTab.name, cell, String(many * 2));
    const group = plan.stays[0]?.group;
    const share = needs.reduce(
      (sum, need, at) => (plan.stays[at]?.group === group ? sum + need.feedKg : sum),
      0,
    );
    expect(Number(beside(readFromSheet(book, info), 'Feed together'))).toBeCloseTo(
      feed + fromInside(share, 'mass', farm.units),
      3,
    );
  });
});

function budgetPlan(opened: Opened, units: UnitSystem): BudgetPlan {
  const { paddockTab, paddockList, groupTab, groupList } = opened;
  const groups = readGroups(groupTab, groupList, units, false);
  expect(groups.problems).toEqual([]);
  const [start = 0, end = 0] = ['2026-05-01', '2026-10-03'].map(dayFromIso);
  const settings = { ...startSettings(BUDGET_SETTINGS, units), limitN: 60 };
  const all = plainStays(readPaddocks(paddockTab, paddockList, units, false).paddocks, groups.groups, {
    start,
    end,
    daysOn: 6,
  });
  const { stays, leftOut } = workableStays(all, insideSettings(BUDGET_SETTINGS, settings, units), units);
  return {
    stays,
    leftOut,
    units,
    settings,
    source: {
      paddocks: { tab: paddockTab, list: paddockList },
      groups: { tab: groupTab, list: groupList },
    },
    origin: 'A plain walk through the list.',
  };
}

function expectBudget(
  content: ReturnType<typeof readFromSheet>,
  plan: BudgetPlan,
  needs: readonly ReturnType<typeof stayNeeds>[],
): void {
  const { units, stays } = plan;
  const total = needs.reduce((sum, { feedKg }) => sum + feedKg, 0);
  expect(beside(content, 'Feed together')).toBeCloseTo(fromInside(total, 'mass', units), 4);
  const most = (of: (need: (typeof needs)[number]) => number): number => Math.max(...needs.map(of));
  // All who are out on one day drink: on each day on which a group moves.
  const drunk = stays.flatMap(({ inDay }) =>
    stays.reduce((sum, stay, i) => {
      const isOut = stay.inDay <= inDay && inDay < stay.inDay + stay.days;
      return isOut ? sum + needs[i]!.hotWaterLiters : sum;
    }, 0),
  );
  expect(beside(content, 'Hot-day water, most a day, all groups')).toBeCloseTo(
    fromInside(Math.max(...drunk), 'volumePerDay', units),
    4,
  );
  expect(beside(content, 'Shelter, largest group floor')).toBeCloseTo(
    fromInside(
      most((need) => need.shelterSquareMeters),
      'floorArea',
      units,
    ),
    4,
  );
  expect(beside(content, 'Stays that could not be worked out')).toBe(0);
  const months = byPeriod(stays, (_, at) => fromInside(needs[at]?.feedKg ?? 0, 'mass', units), 'month');
  const first = content.values.findIndex((row) => row[0] === 'From' && row[2] === 'Feed in it') + 1;
  const written = months.map((_, at) => Number(content.values[first + at]?.[2]));
  written.forEach((feed, at) => {
    expect(feed).toBeCloseTo(months[at]?.sum ?? 0, 4);
  });
  const settings = insideSettings(BUDGET_SETTINGS, plan.settings, units);
  for (const load of paddockLoads(stays, needs, settings)) {
    expect(beside(content, load.paddock, 4)).toBeCloseTo(fromInside(load.nitrogen, 'massPerArea', units), 4);
    expect(beside(content, load.paddock, 6)).toBeCloseTo(fromInside(load.potassium, 'massPerArea', units), 4);
    expect(beside(content, load.paddock, 7)).toBe(
      load.over.length > 0 ? `over: ${load.over.join(' ')}` : 'within',
    );
  }
}

/** A season of moves in the sheet. */
async function farmWithMoves() {
  const [start = 0, end = 0] = ['2026-05-02', '2026-08-01'].map(dayFromIso);
  const book = await openWorkbook({ tabs: ODD, codeJs: await scriptText(), today: '2026-03-01' });
  const rules = {
    rest: { kind: 'fixed', days: 12 },
    shortestStayDays: 4,
    longestStayDays: 10,
    moveWeekdays: Array<boolean>(7).fill(true),
    noMoveDays: [],
    seasonStart: start,
    seasonEnd: end,
  } as const;
  const table = buildTable({ book, tabs: Object.keys(ODD), system: 'metric', rules });
  return { book, table, end };
}

describe('the budget from a rotation table', () => {
  test('links to its cells: a late move and a typed stay reach the budget; notes and limits survive a rebuild', async () => {
    const { book, table } = await farmWithMoves();
    const plan = rotationPlan(book, table.info);
    expect(plan.stays).toHaveLength(table.plan.stays.length);
    const settings = insideSettings(BUDGET_SETTINGS, plan.settings, 'metric');
    const block = budgetBlock(plan, new Map(), { row: 1, column: 1 });
    const info = writeInSheet(book, BUDGET_BLOCK, block, { at: 'new-tab', tab: 'Budget' });
    let content = readFromSheet(book, info);
    expect(errorsIn(content)).toEqual([]);
    expectBudget(
      content,
      plan,
      plan.stays.map((stay) => stayNeeds(stay, settings)),
    );

    // The first stay one day longer in the rotation table: the budget's first stay has it at once.
    const rotation = cutBlock(readTab(book, 'Rotation'), table.info);
    const head = rotation.values.findIndex((row) => row.includes('Planned in'));
    const daysColumn = rotation.values[head]?.indexOf('Days') ?? 0;
    const row = plan.stays[0]?.rotationRow ?? 0;
    const cell = `${String.fromCharCode(65 + daysColumn)}${row}`;
    const days = Number(book.value('Rotation', cell));
    book.type('Rotation', cell, String(days + 1));
    content = readFromSheet(book, info);
    const stays = content.values.findIndex((cells) => cells[1] === 'Stay in');
    expect(content.values[stays + 2]?.[3]).toBe(days + 1);

    const paddock = String(plan.stays[0]?.paddock);
    book.type('Budget', cellBeside(content, paddock, 8), 'soil test due');
    book.type('Budget', cellBeside(content, 'Most nitrogen (N) on a paddock in the season'), '1');
    content = readFromSheet(book, info);
    expect(beside(content, paddock, 7)).toBe('over: N');
    const read = readBudget(readAsWritten(book, info));
    const now = rotationPlan(book, table.info);
    const again = budgetBlock(
      { ...now, settings: { ...now.settings, ...read.settings.values } },
      read.notes,
      info,
    );
    const kept = (next = again) => rebuildBlock(BUDGET_BLOCK, readFromSheet(book, info), () => next).kept;
    expect(kept()).toEqual(NOTHING_KEPT);
    // Other stays, and a paddock that is gone: only the note typed beside it has no place, and is kept below.
    const fewer = {
      ...now,
      settings: { ...now.settings, ...read.settings.values },
      stays: now.stays.filter((stay) => stay.paddock !== paddock),
      source: {},
      origin: originOfLists('7'),
    };
    expect(kept(budgetBlock(fewer, new Map(), info))).toMatchObject({
      inPlace: [],
      below: [`${cellBeside(content, paddock, 8)} (“soil test due”)`],
    });
    expectTypedOverKept(book, info, paddock, again);
    const rowOf = (label: string): number =>
      info.row + content.values.findIndex((row) => row.includes(label));
    const blanks = [`A${rowOf('Stay in') + 1}`, `C${rowOf('Stay in') + 1}`, `A${rowOf('On the ground') - 1}`];
    for (const cell of blanks) {
      expect(book.value('Budget', cell)).toBe('');
      book.type('Budget', cell, 'in a blank row');
      expect(kept()).toMatchObject({ inPlace: [`${cell} (“in a blank row”)`], below: [] });
      book.type('Budget', cell, '');
    }
    for (const cell of ['A1', 'A2']) {
      const before = String(book.value('Budget', cell));
      book.type('Budget', cell, 'my own words');
      expect(kept()).toMatchObject({ inPlace: [`${cell} (“my own words”)`], below: [] });
      book.type('Budget', cell, before);
    }
    const after = readFromSheet(book, writeAnew(book, BUDGET_BLOCK, info, () => again).info);
    expect(beside(after, paddock, 8)).toBe('soil test due');
    expect(beside(after, paddock, 7)).toBe('over: N');
    expect(errorsIn(after)).toEqual([]);
  });

  test('is written anew after the moves it links to have become fewer', async () => {
    const { book, table, end } = await farmWithMoves();
    const plan = rotationPlan(book, table.info);
    const block = budgetBlock(plan, new Map(), { row: 1, column: 1 });
    const info = writeInSheet(book, BUDGET_BLOCK, block, { at: 'new-tab', tab: 'Budget' });
    // Settings stand where the last moves stood: weights and feed are refused there, in words.
    const last = plan.stays.at(-1)?.rotationRow ?? 0;
    for (const cell of ['A', 'B']) book.type('Rotation', `${cell}${last}`, 'Settings of this table');
    for (const column of ['E', 'F', 'G', 'H', 'I', 'J', 'K']) book.type('Rotation', `${column}${last}`, '0');
    const standing = readFromSheet(book, info);
    expect(standing.values.flat().filter(isRefusalSentence).length).toBeGreaterThan(0);
    // Its season ends on 1 August: a budget from then on leaves it alone.
    const later = plan.stays.map((stay) => ({ ...stay, inDay: end }));
    expect(earlierBudget(standing, later)).toContain('up to 2026-0');
    expect(earlierBudget(standing, plan.stays)).toBeUndefined();
    const fewer = { ...plan, stays: plan.stays.slice(0, -1) };
    const again = rebuildBlock(BUDGET_BLOCK, standing, (corner) => budgetBlock(fewer, new Map(), corner));
    expect(again.kept).toEqual(NOTHING_KEPT);
    expect(again.cells.length).toBe(block.cells.length - 1);
  });

  test('each cell function stands at most once a column', () => {
    const stay = {
      group: 'A',
      paddock: 'B',
      inDay: 20_000,
      days: 5,
      head: 10,
      meanHead: 10,
      startWeightKg: toInside(60, 'mass', 'US'),
      growthDays: 3,
      areaSquareMeters: 1000,
    };
    const plan: BudgetPlan = {
      stays: Array.from({ length: 40 }, (_, i) => ({
        ...stay,
        inDay: 20_000 + 5 * i,
        growthDays: 3 + 5 * i,
      })),
      units: 'US',
      settings: startSettings(BUDGET_SETTINGS, 'US'),
      source: {},
      origin: '',
      leftOut: [],
    };
    const { cells } = budgetBlock(plan, new Map(), { row: 1, column: 1 });
    const formulas = cells.flat().flatMap((cell) => (cell.k === 'f' ? [cell.v] : []));
    const calls = formulas.filter((body) =>
      /(PIG_WEIGHT|FEED_NEEDED|WATER_NEEDED|SHELTER_AREA|NUTRIENT_LOAD)\(/.test(body),
    );
    expect(calls).toHaveLength(7);
    expect(formulas.filter((body) => /\d[.,]\d|\{/.test(body))).toEqual([]);
  });
});

/** Types over formulas, one at a time, and puts each back: a rebuild must keep and name the cell. */
function expectTypedOverKept(book: Workbook, info: BlockInfo, paddock: string, next: ComposedBlock): void {
  const content = readFromSheet(book, info);
  const kept = () => {
    const { inPlace, below } = rebuildBlock(BUDGET_BLOCK, readFromSheet(book, info), () => next).kept;
    return [...inPlace, ...below];
  };
  expect(kept()).toEqual([]);
  const heads = content.values.findIndex((row) => row[1] === 'Stay in');
  const stay = (heading: string): string =>
    `${String.fromCharCode(64 + info.column + (content.values[heads]?.indexOf(heading) ?? 0))}${info.row + heads + 2}`;
  const months = content.values.findIndex((row) => row[0] === 'From');
  const stays = content.values.slice(heads + 2).filter((row) => row[0] !== '').length;
  const cells = [
    ...['Head', 'Area', 'Out', 'Mean weight'].map(stay),
    // A number in the middle of what a cell function fills.
    stay('Feed'),
    `C${info.row + months + 1}`,
    cellBeside(content, 'Feed together'),
    ...[1, 2, 4, 7].map((column) => cellBeside(content, paddock, column)),
  ];
  for (const cell of cells) {
    const before = book.range(info.tab, cell).getFormula();
    book.type(info.tab, cell, '60');
    // By its cell alone: under a date's format the 6 shows as a day.
    expect(kept().map((one) => one.split(' ')[0])).toContain(cell);
    // What the typed value blots out is counted, so that the sums beside it do not pass for whole.
    const failed = Number(beside(readFromSheet(book, info), 'Stays that could not be worked out'));
    expect(failed).toBe(cell === stay('Feed') ? stays - 1 : 0);
    book.range(info.tab, cell).setValue(before);
  }
  expect(readFromSheet(book, info)).toEqual(content);
}

function rotationPlan(book: Workbook, info: BlockInfo): BudgetPlan {
  const tab = readTab(book, info.tab);
  const old = readRotation(cutBlock(tab, info));
  const { stays, problems } = rotationStays(old.rows, info.tab);
  expect([...old.problems, ...problems]).toEqual([]);
  const links = rotationLinks(cutBlock(tab, info));
  expect(links).toBeDefined();
  return {
    stays,
    units: 'metric',
    settings: { ...startSettings(BUDGET_SETTINGS, 'metric'), limitN: 5000 },
    source: links ? { rotation: links } : {},
    origin: originOfRotation('Rotation'),
    leftOut: [],
  };
}
