/**
 * No formula of ours refers to a range of one cell (`A5:A5`): where one stands beside a longer one, the preview's engine
 * stops. Every block is composed for the sample farms and for random farms down to one paddock and one pig.
 */
import { expect, test } from 'vitest';
import type { BlockCell, TabContent, WholeFile, WireCell } from '../../shared/contract';
import { isoFromDay } from '../../shared/core/calendar/day';
import type { GroupList, PaddockList } from '../../shared/lists/model';
import { SAMPLE_FARMS } from '../../shared/samples/index';
import { DAY_OF_FILES, type SampleCell } from '../../shared/samples/sample-farm';
import { rotationBlock } from '../../shared/table/rotation-block';
import { biteBlock } from '../../shared/tasks/bite/bite-block';
import { BITE_SETTINGS } from '../../shared/tasks/bite/bite-settings';
import { readingRow, WALK_SETTINGS, walkBlock } from '../../shared/tasks/bite/walk-block';
import { WIRES } from '../../shared/tasks/bite/wires';
import { budgetBlock } from '../../shared/tasks/budget/budget-block';
import { BUDGET_SETTINGS } from '../../shared/tasks/budget/budget-settings';
import { plainStays } from '../../shared/tasks/budget/plain-stays';
import { composeMapBlock } from '../../shared/tasks/map/compose-map-block';
import { guessRole } from '../../shared/tasks/map/guess-role';
import { mapFromGeojson } from '../../shared/tasks/map/map-from-geojson';
import { measureMap } from '../../shared/tasks/map/measure-map';
import { COMPARISON_SETTINGS } from '../../shared/tasks/materials/comparison-model';
import { laidPaddocks } from '../../shared/tasks/materials/laid-paddocks';
import { materialsBlock } from '../../shared/tasks/materials/materials-block';
import { MATERIALS_SETTINGS } from '../../shared/tasks/materials/materials-settings';
import { NOTHING_TYPED } from '../../shared/tasks/materials/read-materials';
import { planProblem } from '../../shared/tasks/rotation/plan-problem';
import { tableInput } from '../../shared/tasks/rotation/table-input';
import { startSettings } from '../../shared/tasks/settings';
import { composeLogBlock, LOG_SETTINGS } from '../../shared/tasks/training/log-block';
import { composePenBlock, PEN_SETTINGS } from '../../shared/tasks/training/pen-block';
import { readLists } from '../hard-use/rotation-task';
import { seededNumbers } from '../plan/random-farm';
import { soonPlanned } from '../soon-planned';
import { SAMPLE_MAP } from '../tasks/map/sample-map';

const ORIGIN = { row: 1, column: 1 };
const START = Date.parse('2026-04-20') / 86_400_000;
const RANDOM_FARMS = 40;

type Cells = readonly (readonly BlockCell[])[];
type Rows = readonly (readonly WireCell[])[];

/** "A5:A5", with or without a tab and signs for fixed. */
const ONE_CELL = /\$?\b([A-Z]{1,3})\$?(\d+):\$?\1\$?\2(?!\d)/;

function oneCellRanges(cells: Cells): string[] {
  const formulas = cells.flat().flatMap((cell) => (cell.k === 'f' ? [cell.v] : []));
  expect(formulas.length).toBeGreaterThan(0);
  return formulas.filter((formula) => ONE_CELL.test(formula));
}

function tabOf(name: string, rows: Rows): TabContent {
  const width = Math.max(...rows.map((row) => row.length));
  const values = rows.map((row) => Array.from({ length: width }, (_, c) => row[c] ?? ''));
  return { name, values, formulas: values.map((row) => row.map(() => '')) };
}

/** The blocks that are made from the lists: rotation, materials, budget. */
function blocksOf(tabs: TabContent[], units: 'US' | 'metric'): Cells[] {
  const overview = {
    blocks: [],
    tabs: [],
    locale: 'en_US',
    today: '2026-04-20',
  } as unknown as WholeFile['overview'];
  const book = { overview, tabs };
  const lists = readLists(book, units);
  expect(lists.problems).toEqual([]);
  const rules = {
    rest: { kind: 'fixed', days: 0 },
    shortestStayDays: 2,
    longestStayDays: 40,
    moveWeekdays: [true, true, true, true, true, true, true],
    noMoveDays: [],
    seasonStart: START,
    seasonEnd: START + 30,
  } as const;
  const problem = planProblem(lists.paddocks, lists.groups, rules);
  const plan = soonPlanned(problem);
  if ('reason' in plan) throw new Error(plan.reason);
  const made = { problem, plan, words: undefined };
  const input = tableInput({
    book,
    lists,
    made,
    rules,
    unitSystem: units,
    old: undefined,
    rebuild: undefined,
  });
  const { paddocks, groups } = input.sources as {
    paddocks: { tab: TabContent; list: PaddockList };
    groups: { tab: TabContent; list: GroupList };
  };
  const laid = laidPaddocks(
    paddocks.tab,
    paddocks.list,
    lists.paddocks,
    { system: units, comma: false },
    1.5,
  );
  const materials = {
    layout: { kind: 'list', touching: 'lengths', paddocks: laid.paddocks } as const,
    atATime: { kind: 'set', paddocks: 2 } as const,
    kind: 'wire' as const,
    units,
    settings: startSettings(MATERIALS_SETTINGS, units),
    comparison: startSettings(COMPARISON_SETTINGS, units),
    list: paddocks,
  };
  const budget = {
    stays: plainStays(lists.paddocks, lists.groups, { start: START, end: START + 30, daysOn: 40 }),
    source: { paddocks, groups },
    settings: startSettings(BUDGET_SETTINGS, units),
    units,
    origin: '',
    leftOut: [],
  };
  return [
    rotationBlock({ ...input, corner: ORIGIN }).cells,
    materialsBlock(materials, NOTHING_TYPED, ORIGIN).cells,
    budgetBlock(budget, new Map(), ORIGIN).cells,
  ];
}

function plainCell(cell: SampleCell): WireCell {
  if (typeof cell !== 'object') return cell;
  return 'day' in cell ? { d: isoFromDay(cell.day) } : 1;
}

test.each(SAMPLE_FARMS)('$title', ({ id, tabs }) => {
  const plain = tabs(DAY_OF_FILES).map(({ name, rows }) =>
    tabOf(
      name,
      rows.map((row) => row.map(plainCell)),
    ),
  );
  expect(blocksOf(plain, id.startsWith('metric') ? 'metric' : 'US').flatMap(oneCellRanges)).toEqual([]);
});

test('random farms, many of them with one paddock or one group', () => {
  const next = seededNumbers(7);
  const whole = (least: number, most: number): number => least + Math.floor(next() * (most - least + 1));
  for (let farm = 0; farm < RANDOM_FARMS; farm++) {
    const paddocks = whole(1, 4);
    const groups = whole(1, Math.min(paddocks, 2));
    const heads = [
      'Paddock',
      'Acres',
      'Width (ft)',
      'Length (ft)',
      '',
      'Group',
      'Head',
      'Weight (lb)',
      'Weighed on',
      'ADG (lb/day)',
    ];
    const rows = Array.from({ length: Math.max(paddocks, groups) }, (_, i): WireCell[] => [
      ...(i < paddocks
        ? [`P${i}`, 0.5 + next(), ...(next() < 0.5 ? [100, 200] : ['', ''])]
        : ['', '', '', '']),
      '',
      ...(i < groups
        ? [`G${i}`, whole(1, 20), whole(40, 90), { d: '2026-04-10' }, next() < 0.7 ? 1.5 : '']
        : []),
    ]);
    const said = `farm ${farm}: ${paddocks} paddocks, ${groups} groups`;
    expect(blocksOf([tabOf('Farm', [heads, ...rows])], 'US').flatMap(oneCellRanges), said).toEqual([]);
  }
});

test('blocks that are made without lists, with one line, one reading, one pig', () => {
  const shapes = mapFromGeojson(SAMPLE_MAP).shapes.map((shape) => ({ ...shape, role: guessRole(shape) }));
  const fields = shapes.filter(({ role }) => role === 'paddock').slice(0, 1);
  const line = { name: 'Lane', meters: 400, liveWires: 2, wire: WIRES[0]!.name };
  const bite = { units: 'US', settings: startSettings(BITE_SETTINGS, 'US') } as const;
  const walk = readingRow({ day: START, place: 'corner', volts: 5000, found: '' });
  const blocks: Cells[] = [
    biteBlock({ ...bite, lines: [line], wires: WIRES.slice(0, 1) }, ORIGIN).cells,
    biteBlock({ ...bite, lines: [], wires: WIRES }, ORIGIN).cells,
    walkBlock([walk], startSettings(WALK_SETTINGS, 'US'), ORIGIN).cells,
    composePenBlock(startSettings(PEN_SETTINGS, 'US'), [], 'US', ORIGIN).cells,
    composeLogBlock(
      startSettings(LOG_SETTINGS, 'US'),
      [new Map([['Group', { k: 't', v: 'Reds' }]])],
      [],
      ORIGIN,
    ).cells,
    composeMapBlock({
      map: measureMap(fields, 8, 3),
      settings: { postSpacing: 25 },
      units: 'US',
      origin: ORIGIN,
    }).cells,
  ];
  for (const cells of blocks) expect(oneCellRanges(cells)).toEqual([]);
});
