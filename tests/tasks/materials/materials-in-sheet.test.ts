/** The materials block, written through the built script into the preview's engine and recalculated there. */
import fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import type { BlockContent } from '../../../shared/block/read-block';
import { buyList } from '../../../shared/tasks/materials/buy-list';
import { COMPARISON_SETTINGS } from '../../../shared/tasks/materials/comparison-model';
import { type FenceKind, fenceType } from '../../../shared/tasks/materials/fence-types';
import { ITEM_NAMES } from '../../../shared/tasks/materials/item-rows';
import type { Layout, ListLayout } from '../../../shared/tasks/materials/layout';
import { LAYOUT_TITLE } from '../../../shared/tasks/materials/layout-formulas';
import type { AtATime } from '../../../shared/tasks/materials/material-needs';
import {
  MATERIALS_BLOCK,
  type MaterialsPlan,
  materialsBlock,
} from '../../../shared/tasks/materials/materials-block';
import { MATERIALS_SETTINGS } from '../../../shared/tasks/materials/materials-settings';
import { NOTHING_TYPED, readMaterials } from '../../../shared/tasks/materials/read-materials';
import { rebuildBlock } from '../../../shared/tasks/merge/rebuild-block';
import { startSettings } from '../../../shared/tasks/settings';
import { fromInside, type UnitSystem } from '../../../shared/units/units';
import { openWorkbook, type Workbook } from '../../../src/headless';
import { scriptText } from '../script-text';
import {
  beside,
  cellBeside,
  errorsIn,
  NOTHING_KEPT,
  readFromSheet,
  writeAnew,
  writeInSheet,
} from '../sheet-block';

// The engine's first evaluation takes seconds on a busy machine.
vi.setConfig({ testTimeout: 120_000 });

const FOOT = 0.3048;

function planOf(
  layout: Layout,
  atATime: AtATime,
  units: UnitSystem,
  typed = {},
  kind: FenceKind = 'wire',
): MaterialsPlan {
  const settings = { ...startSettings(MATERIALS_SETTINGS, units), ...typed };
  return { layout, atATime, kind, units, settings, comparison: startSettings(COMPARISON_SETTINGS, units) };
}

async function emptyFarm(options = {}): Promise<Workbook> {
  return openWorkbook({ tabs: { Notes: [['mine']] }, codeJs: await scriptText(), ...options });
}

/** The sheet's needs beside the core's: lengths, joules and every item. */
function expectAsPlanned(content: ReturnType<typeof readFromSheet>, plan: MaterialsPlan): void {
  const { units, kind } = plan;
  const needs = buyList(plan, readMaterials(content).typed);
  const { fence } = needs;
  expect(
    errorsIn(content),
    JSON.stringify(content.values.filter((row) => errorsIn({ ...content, values: [row] }).length > 0)),
  ).toEqual([]);
  const length = (meters: number) => fromInside(meters, 'length', units);
  expect(beside(content, 'Outer fence')).toBeCloseTo(length(fence.outerMeters), 6);
  expect(beside(content, 'Dividing fence')).toBeCloseTo(length(fence.dividingMeters), 6);
  expect(beside(content, 'Line to put up')).toBeCloseTo(length(needs.lineMeters), 6);
  expect(beside(content, 'Output each energizer needs')).toBeCloseTo(needs.joules, 9);
  expect(beside(content, 'Energizers')).toBe(needs.energizers);
  expect(beside(content, 'Line under voltage')).toBeCloseTo(length(needs.liveMeters), 6);
  const table = needs.lines.map(({ name, need, toBuy, cost }) => [name, need, toBuy, cost ?? '']);
  const inSheet = needs.lines.map(({ name }) => [name, ...[1, 4, 6].map((at) => beside(content, name, at))]);
  expect(inSheet).toEqual(table);
  expect(needs.lines.length).toBeGreaterThanOrEqual(fenceType(kind).items.length);
  expect(beside(content, 'To buy, together', 6)).toBeCloseTo(needs.cost, 9);
  expect(beside(content, 'To buy, but without a price', 6)).toBe(needs.unpriced.length);
}

const GRID: Layout = { kind: 'grid', rows: 2, columns: 4, widthMeters: 120 * FOOT, lengthMeters: 180 * FOOT };
const LANE: ListLayout = {
  kind: 'list',
  touching: 'lengths',
  paddocks: [
    { name: '=Oak', widthMeters: 40, lengthMeters: 61 },
    { name: 'Ash', widthMeters: 37.5, lengthMeters: 60 },
    { name: 'Triangle', fenceMeters: 212 },
    { name: 'Elm', widthMeters: 52, lengthMeters: 58, adjoins: [0, 1] },
  ],
};

/** Settings that no length of the samples divides evenly, so that no count stands on the edge of rounding. */
const ANY_SETTINGS = fc.record({
  strands: fc.integer({ min: 1, max: 3 }),
  groups: fc.integer({ min: 1, max: 4 }),
  standing: fc.integer({ min: 0, max: 900 }).map((length) => length + 0.37),
  postSpacing: fc.integer({ min: 3, max: 40 }).map((gap) => gap + 0.13),
  spares: fc.integer({ min: 1, max: 30 }),
  allowance: fc.integer({ min: 1, max: 30 }),
  rollLength: fc.integer({ min: 100, max: 1500 }).map((length) => length + 0.29),
  reelLength: fc.integer({ min: 100, max: 700 }).map((length) => length + 0.29),
  lineInsulators: fc.integer({ min: 0, max: 1 }),
  gates: fc.integer({ min: 0, max: 6 }),
  netLength: fc.integer({ min: 20, max: 170 }).map((length) => length + 0.41),
  netStrings: fc.integer({ min: 1, max: 12 }),
  publicSide: fc.constantFrom(0, 211.1, 733.7),
  signSpacing: fc.integer({ min: 20, max: 300 }).map((gap) => gap + 0.17),
  loadFactor: fc.integer({ min: 1, max: 3 }),
  energizerJoules: fc.constantFrom(0.7, 2.3, 11.9),
  rodLength: fc.constantFrom(1.31, 2.57, 7.3),
  rodGap: fc.integer({ min: 0, max: 12 }),
  leadOut: fc.integer({ min: 0, max: 60 }),
  earthLead: fc.integer({ min: 0, max: 40 }),
});

/** Whether all that moved below stood in the layout, the last part of the table. */
function isOfLayout(below: readonly string[], { info, values }: BlockContent): boolean {
  const first = info.row + values.findIndex(([label]) => label === LAYOUT_TITLE);
  return below.every((cell) => Number(/\d+/.exec(cell)) > first);
}

describe('the materials block in a sheet', () => {
  test.each([
    ['a grid in feet, all at once', planOf(GRID, { kind: 'all' }, 'US', { publicSide: 700, standing: 300 })],
    [
      'a grid in metres, two leapfrogging',
      planOf(GRID, { kind: 'set', paddocks: 2 }, 'metric', { groups: 2 }),
    ],
    ['a list in metres, all at once', planOf(LANE, { kind: 'all' }, 'metric', { lineInsulators: 1 })],
    [
      'a list in feet, three leapfrogging',
      planOf(LANE, { kind: 'set', paddocks: 3 }, 'US', { energizerJoules: 4 }),
    ],
    [
      'a list in feet, nets for three groups',
      planOf(LANE, { kind: 'set', paddocks: 2 }, 'US', { groups: 3, standing: 170 }, 'netting'),
    ],
    [
      'a list in the order of a rotation, two of nets',
      planOf({ ...LANE, inTurn: [[3, 0, 2], [1]] }, { kind: 'set', paddocks: 2 }, 'metric', {}, 'netting'),
    ],
    [
      'a list in the order of a rotation, a width worked out',
      planOf(
        {
          ...LANE,
          paddocks: [
            ...LANE.paddocks,
            {
              name: 'Rig',
              widthMeters: 20,
              lengthMeters: 150,
              guessedFromSquareMeters: 3000,
              givenSide: 'length',
            },
          ],
          inTurn: [
            [3, 4, 2],
            [0, 1, 0, 3],
          ],
        },
        { kind: 'set', paddocks: 2 },
        'metric',
      ),
    ],
    ['a grid in metres, all in nets', planOf(GRID, { kind: 'all' }, 'metric', {}, 'netting')],
  ])('%s: every need is what the core counts', async (_, plan) => {
    const book = await emptyFarm();
    const block = materialsBlock(plan, NOTHING_TYPED, { row: 1, column: 1 });
    const info = writeInSheet(book, MATERIALS_BLOCK, block, { at: 'new-tab', tab: 'Fence' });
    expectAsPlanned(readFromSheet(book, info), plan);
  });

  test.each([
    ['a grid in feet, all at once', GRID, { kind: 'all' }, 'US'],
    ['a list in metres, two leapfrogging', LANE, { kind: 'set', paddocks: 2 }, 'metric'],
    ['a grid in metres of nets, two at once', GRID, { kind: 'set', paddocks: 3 }, 'metric', 'netting'],
    ['a list in feet of nets, all at once', LANE, { kind: 'all' }, 'US', 'netting'],
  ] as const)(
    '%s, with any settings: every need is what the core counts',
    async (_, layout, atATime, units, kind: FenceKind = 'wire') => {
      const book = await emptyFarm();
      const start = planOf(layout, atATime, units, {}, kind);
      const block = materialsBlock(start, NOTHING_TYPED, { row: 1, column: 1 });
      const info = writeInSheet(book, MATERIALS_BLOCK, block, { at: 'new-tab', tab: 'Fence' });
      const content = readFromSheet(book, info);
      for (const typed of fc.sample(ANY_SETTINGS, { seed: 13, numRuns: 12 })) {
        for (const { key, label } of MATERIALS_SETTINGS) {
          const value = typed[key as keyof typeof typed];
          if (value !== undefined) book.type('Fence', cellBeside(content, label), String(value));
        }
        expectAsPlanned(readFromSheet(book, info), planOf(layout, atATime, units, typed, kind));
      }
    },
  );

  test('FENCE_GRID’s own example stands in the sheet: 1680, 1560, 3240', async () => {
    const book = await emptyFarm();
    const block = materialsBlock(planOf(GRID, { kind: 'all' }, 'US'), NOTHING_TYPED, { row: 1, column: 1 });
    const info = writeInSheet(book, MATERIALS_BLOCK, block, { at: 'new-tab', tab: 'Fence' });
    const content = readFromSheet(book, info);
    const row = [1, 2, 3].map((column) => beside(content, 'Fence, shared sides once', column));
    expect(row.map((value) => Number(value).toFixed(6))).toEqual([
      '1680.000000',
      '1560.000000',
      '3240.000000',
    ]);
    // Two strands of a growing pig's fence stand at 10 and 18 in (extension FAQ, second hand); 50 lb pigs.
    const heights = [1, 2].map((column) => beside(content, 'Wire heights, lowest first', column));
    expect(heights.map((value) => Number(value).toFixed(6))).toEqual(['10.000000', '18.000000']);
  });

  test('Iowa State’s quarter mile of woven wire, typed into the sheet: 2,553.30 and 1.93 a foot', async () => {
    const book = await emptyFarm();
    const quarterMile: Layout = {
      kind: 'list',
      touching: 'alone',
      paddocks: [{ name: 'Run', fenceMeters: 1320 * FOOT }],
    };
    const block = materialsBlock(planOf(quarterMile, { kind: 'all' }, 'US'), NOTHING_TYPED, {
      row: 1,
      column: 1,
    });
    const info = writeInSheet(book, MATERIALS_BLOCK, block, { at: 'new-tab', tab: 'Fence' });
    let content = readFromSheet(book, info);
    book.type('Fence', cellBeside(content, 'Pay for an hour of work'), '15.05');
    const typed: [string, number | undefined, number][] = [
      ['Corner and brace posts', 4, 28],
      ['Line posts, wood', 57, 9],
      ['Line posts, steel', 55, 5],
      ['Staples and clips', undefined, 1.8],
      ['Barbed wire, one strand', undefined, 0.06],
      ['Woven wire', undefined, 0.7],
    ];
    for (const [item, quantity, price] of typed) {
      const row = content.values.findIndex((cells) => cells[0] === 'Woven wire' && cells[1] === item) + 1;
      if (quantity !== undefined) book.type('Fence', `C${row}`, String(quantity));
      book.type('Fence', `E${row}`, String(price));
    }
    content = readFromSheet(book, info);
    expect(errorsIn(content)).toEqual([]);
    expect(beside(content, 'First cost', 2)).toBeCloseTo(2553.3, 2);
    expect(beside(content, 'First cost for each ft', 2)).toBeCloseTo(1.93, 2);
    expect(beside(content, 'Items without a price', 2)).toBe(0);
    expect(beside(content, 'First cost', 3)).toBe('prices missing');
    expect(beside(content, 'A year, together', 3)).toBe('');
    // 20 years, 8 % upkeep and 8 % on half, as in the yearly table of FM-1855: 5 + 8 + 4 = 17 % of the first cost.
    expect(beside(content, 'A year, together', 2)).toBeCloseTo(2553.3 * 0.17, 2);
  });

  test('a changed setting and typed stock change the list; a rebuild keeps what was typed', async () => {
    const book = await emptyFarm();
    const plan = planOf(GRID, { kind: 'all' }, 'US');
    const place = { at: 'area', tab: 'Notes', row: 3, column: 2 } as const;
    const info = writeInSheet(book, MATERIALS_BLOCK, materialsBlock(plan, NOTHING_TYPED, place), place);
    let content = readFromSheet(book, info);
    const posts = Number(beside(content, 'Line posts'));
    book.type('Notes', cellBeside(content, 'Gap between posts, at most'), '12.5');
    book.type('Notes', cellBeside(content, 'Rolls of wire', 3), '2');
    book.type('Notes', cellBeside(content, 'Rolls of wire', 5), '80');
    const free = content.values.findIndex((row) => row[0] === ITEM_NAMES.tester) + 3;
    const own = info.row + free - 1;
    for (const [column, value] of [
      ['B', 'Sledge'],
      ['C', '2'],
      ['E', '1'],
      ['G', '31.5'],
    ] as const) {
      book.type('Notes', `${column}${own}`, value);
    }
    content = readFromSheet(book, info);
    expect(Number(beside(content, 'Line posts'))).toBeGreaterThan(posts * 1.8);
    // 3240 ft × 2 strands × 1.1 = 7128 ft, ⌈5.4⌉ = 6 rolls, 4 to buy at 80; the sledge 31.50.
    expect(beside(content, 'Rolls of wire', 4)).toBe(4);
    expect(beside(content, 'Rolls of wire', 6)).toBe(320);
    expect(beside(content, 'To buy, together', 6)).toBe(351.5);
    // Twelve items, less the rolls that have a price and the signs that nobody needs.
    expect(beside(content, 'To buy, but without a price', 6)).toBe(10);

    const read = readMaterials(content);
    expect(read.settings.values.postSpacing).toBe(12.5);
    expect(read.atATime).toEqual({ kind: 'all' });
    const settings = { ...plan.settings, ...read.settings.values };
    const again = () => materialsBlock({ ...plan, settings }, read.typed, info);
    expect(rebuildBlock(MATERIALS_BLOCK, content, again).kept).toEqual(NOTHING_KEPT);
    // From the grid to a list, all at once to a set: nothing of the layout is taken for typed over ours; the grid's
    // own numbers, which are there to be typed over, have no place in a list.
    const other = () =>
      materialsBlock({ ...planOf(LANE, { kind: 'set', paddocks: 2 }, 'US'), settings }, read.typed, info);
    const toList = rebuildBlock(MATERIALS_BLOCK, content, other).kept;
    expect(toList.inPlace).toEqual([]);
    expect(isOfLayout(toList.below, content)).toBe(true);
    const remark = cellBeside(content, 'To buy, together', 7);
    book.type('Notes', remark, 'by May');
    const { info: rebuilt, kept } = writeAnew(book, MATERIALS_BLOCK, info, again);
    expect(kept).toMatchObject({ inPlace: [`${remark} (“by May”)`], below: [] });
    const after = readFromSheet(book, rebuilt);
    expect(beside(after, 'To buy, together', 7)).toBe('by May');
    expect(beside(after, 'Rolls of wire', 3)).toBe(2);
    expect(beside(after, 'To buy, together', 6)).toBe(351.5);
    expect(beside(after, 'Sledge', 4)).toBe(1);
    expectAsPlanned(after, { ...plan, settings });
  });

  test('a value or a formula typed over a formula stays and is named; a formula typed as a setting stays', async () => {
    const book = await emptyFarm();
    const plan = planOf(GRID, { kind: 'set', paddocks: 2 }, 'US');
    const block = materialsBlock(plan, NOTHING_TYPED, { row: 1, column: 1 });
    const info = writeInSheet(book, MATERIALS_BLOCK, block, { at: 'new-tab', tab: 'Fence' });
    const content = readFromSheet(book, info);
    const over = () =>
      rebuildBlock(MATERIALS_BLOCK, readFromSheet(book, info), (corner, old) => {
        const { settings, typed } = readMaterials(old);
        return materialsBlock({ ...plan, settings: { ...plan.settings, ...settings.values } }, typed, corner);
      });
    const cellOf = (cell: string) => {
      const [, column = '', row = ''] = /^([A-Z])(\d+)$/.exec(cell) ?? [];
      return over().cells[Number(row) - 1]?.[column.charCodeAt(0) - 65];
    };
    const withoutMemory = over().cells.map((row) => row.slice(0, -1));
    expect(withoutMemory).toMatchObject(block.cells);
    expect(over().kept).toEqual(NOTHING_KEPT);
    // The need of posts, a figure, a warning of the cost: also a number that stands elsewhere in the block.
    for (const cell of [
      cellBeside(content, 'Line posts'),
      cellBeside(content, 'Rolls of wire', 4),
      cellBeside(content, 'Line to put up'),
      cellBeside(content, 'To buy, together', 6),
    ]) {
      const before = book.range('Fence', cell).getFormula();
      book.type('Fence', cell, '25');
      expect(over().kept).toMatchObject({ inPlace: [`${cell} (25)`], below: [] });
      expect(cellOf(cell)).toMatchObject({ k: 'n', v: 25 });
      book.type('Fence', cell, '=SQRT(25)');
      expect(over().kept).toMatchObject({ inPlace: [`${cell} (=SQRT(25))`], below: [] });
      expect(cellOf(cell)).toMatchObject({ k: 'f', v: '=SQRT(25)' });
      book.range('Fence', cell).setValue(before);
    }
    // A formula beside our rows, where nothing of ours stands.
    const beyond = cellBeside(content, 'Line to put up', 6);
    book.type('Fence', beyond, '=1+1');
    expect(over().kept).toMatchObject({ inPlace: [`${beyond} (=1+1)`], below: [] });
    expect(cellOf(beyond)).toMatchObject({ k: 'f', v: '=1+1' });
    book.type('Fence', beyond, '');

    // A word over one of ours, in the figures and in the row of units.
    for (const word of [
      cellBeside(content, 'Posts along it, corners among them', 2),
      cellBeside(content, 'Line to put up', 3),
      cellBeside(content, 'Paddocks fenced at a time', 2),
    ]) {
      const before = String(book.range('Fence', word).getValue());
      book.type('Fence', word, 'T-posts');
      expect(over().kept).toMatchObject({ inPlace: [`${word} (“T-posts”)`], below: [] });
      expect(cellOf(word)).toMatchObject({ k: 't', v: 'T-posts' });
      book.type('Fence', word, before);
    }

    const gap = cellBeside(content, 'Gap between posts, at most');
    book.type('Fence', gap, '=40/2');
    expect(over().kept).toEqual(NOTHING_KEPT);
    expect(cellOf(gap)).toMatchObject({ k: 'f', v: '=40/2' });
  });

  test('an item written twice keeps the stock and price of both rows', async () => {
    const book = await emptyFarm();
    const plan = planOf(GRID, { kind: 'all' }, 'US');
    const block = materialsBlock(plan, NOTHING_TYPED, { row: 1, column: 1 });
    const info = writeInSheet(book, MATERIALS_BLOCK, block, { at: 'new-tab', tab: 'Fence' });
    const content = readFromSheet(book, info);
    const rolls = cellBeside(content, 'Rolls of wire', 3);
    const free = info.row + content.values.findIndex((row) => row[0] === ITEM_NAMES.tester) + 2;
    book.type('Fence', rolls, '2');
    for (const [cell, typed] of [
      [`A${free}`, 'Rolls of wire'],
      [`D${free}`, '5'],
      [`F${free}`, '70'],
    ] as const)
      book.type('Fence', cell, typed);
    const anew = writeAnew(book, MATERIALS_BLOCK, info, (corner, old) =>
      materialsBlock(plan, readMaterials(old).typed, corner),
    );
    const stock = readFromSheet(book, anew.info)
      .values.filter((row) => row[0] === 'Rolls of wire')
      .map((row) => [row[3], row[5]]);
    expect(stock).toEqual([
      [2, ''],
      [5, 70],
    ]);
  });

  test('going over to another layout or to another set names nothing but the numbers of the layout left', async () => {
    const book = await emptyFarm();
    const all: MaterialsPlan[] = [GRID, LANE].flatMap((layout) =>
      ([{ kind: 'all' }, { kind: 'set', paddocks: 1 }, { kind: 'set', paddocks: 3 }] as AtATime[]).flatMap(
        (atATime) =>
          (['wire', 'netting'] as const).map((kind) => planOf(layout, atATime, 'US', { strands: 3 }, kind)),
      ),
    );
    const first = materialsBlock(all[0]!, NOTHING_TYPED, { row: 1, column: 1 });
    let info = writeInSheet(book, MATERIALS_BLOCK, first, { at: 'new-tab', tab: 'Fence' });
    for (const plan of [...all, ...all.reverse()]) {
      const old = readFromSheet(book, info);
      const anew = writeAnew(book, MATERIALS_BLOCK, info, (corner, old) =>
        materialsBlock(plan, readMaterials(old).typed, corner),
      );
      expect(anew.kept.inPlace).toEqual([]);
      expect(isOfLayout(anew.kept.below, old)).toBe(true);
      info = anew.info;
      expectAsPlanned(readFromSheet(book, info), plan);
    }
  });

  test('in a decimal-comma spreadsheet every need is the same', async () => {
    const book = await emptyFarm({ locale: 'de_DE' });
    const plan = planOf(LANE, { kind: 'set', paddocks: 2 }, 'metric');
    const block = materialsBlock(plan, NOTHING_TYPED, { row: 1, column: 1 });
    const info = writeInSheet(book, MATERIALS_BLOCK, block, { at: 'new-tab', tab: 'Fence' });
    expectAsPlanned(readFromSheet(book, info), plan);
  });

  test('each cell function stands in at most one cell', () => {
    const { cells } = materialsBlock(planOf(GRID, { kind: 'all' }, 'US'), NOTHING_TYPED, {
      row: 1,
      column: 1,
    });
    const formulas = cells.flat().flatMap((cell) => (cell.k === 'f' ? [cell.v] : []));
    for (const name of ['FENCE_GRID', 'ENERGIZER_JOULES', 'GROUND_RODS', 'STRAND_HEIGHTS']) {
      expect(formulas.filter((body) => body.includes(`${name}(`))).toHaveLength(1);
    }
    // No decimal point or comma: every locale reads the formulas.
    expect(formulas.filter((body) => /\d[.,]\d|\{/.test(body))).toEqual([]);
  });
});
