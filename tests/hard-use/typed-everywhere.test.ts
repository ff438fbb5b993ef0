/**
 * A person may type anything anywhere. Every cell of every table that the sidebar builds is typed over, in memory, and
 * the table written anew: what was typed is kept, or the page refuses and names it.
 */
import { beforeAll, describe, expect, it, vi } from 'vitest';
import { cellA1 } from '../../shared/block/a1';
import { composeMarkBlock } from '../../shared/tasks/share/mark-block';
import { MARK_BLOCK } from '../../shared/tasks/share/original-mark';
import type { UnitSystem } from '../../shared/units/units';
import { openWorkbook } from '../../src/preview/headless';
import { scriptText } from '../tasks/script-text';
import { buildEveryBlock, writeNew } from './every-block';
import { readBook } from './rotation-task';
import { ALLOWED, type Known } from './typed-allowed';
import { biteTask, walkTask } from './typed-bite';
import { budgetTask, LISTS_BUDGET, listsBudget, listsBudgetTask } from './typed-budget';
import { composed, type TypedTask, tryEveryCell, type Verdict } from './typed-cells';
import { FARM_RULES, farmToType, typeMoves } from './typed-farm';
import { mapTask } from './typed-map';
import { GRID_MATERIALS, gridMaterials, gridMaterialsTask, materialsTask } from './typed-materials';
import { HERD_LOG, herdLog, herdTask, MARK, markTask, pictureTask, todayTask } from './typed-others';
import { rotationTask } from './typed-rotation';
import { tryEveryBlank, trySameTwice } from './typed-together';
import { logTask, penTask } from './typed-training';

// The same function, which remembers: the same formulas come again and again.
vi.mock('../../shared/block/formula-shape', async (original) => {
  const { formulaShape } = await original<typeof import('../../shared/block/formula-shape')>();
  const known = new Map<string, string>();
  return {
    formulaShape: (formula: string): string => {
      const shape = known.get(formula) ?? formulaShape(formula);
      known.set(formula, shape);
      return shape;
    },
  };
});

const tasks = new Map<string, TypedTask>();
const met = new Set<Known>();

beforeAll(async () => {
  for (const units of ['US', 'metric'] as const)
    for (const task of await tasksIn(units)) tasks.set(`${task.name}, ${units}`, task);
});

async function tasksIn(units: UnitSystem): Promise<readonly TypedTask[]> {
  const locale = units === 'US' ? 'en_US' : 'en_GB';
  const codeJs = await scriptText();
  const workbook = await openWorkbook({ tabs: farmToType(units), codeJs, locale, today: '2026-04-01' });
  buildEveryBlock(workbook, units, { rules: FARM_RULES });
  writeNew(workbook, GRID_MATERIALS, gridMaterials(units), 'Equal paddocks');
  writeNew(workbook, LISTS_BUDGET, listsBudget(readBook(workbook), units), 'Lists');
  writeNew(workbook, HERD_LOG, herdLog(), 'Herd log');
  writeNew(workbook, MARK_BLOCK, composeMarkBlock(MARK), 'Sharing');
  const book = readBook(workbook);
  const rotation = rotationTask('Rotation', book);
  typeMoves(workbook, book);
  return [
    materialsTask(book),
    gridMaterialsTask(book),
    biteTask(book),
    walkTask(book),
    budgetTask(book),
    listsBudgetTask(book, units),
    penTask(book),
    logTask(book),
    mapTask(book),
    markTask(book),
    pictureTask(book),
    todayTask(book),
    herdTask(book),
    rotation,
    rotationTask('Rotation, three moves done', readBook(workbook), composed(rotation, rotation.content)),
  ];
}

const TABLES = [
  'Materials',
  'Materials of equal paddocks',
  'Bite',
  'Fence walk',
  'Budget',
  'Budget of the lists',
  'Training pen',
  'Training log',
  'Map',
  'Sharing mark',
  'Season picture',
  'Today',
  'Herd log',
  'Rotation',
  'Rotation, three moves done',
];

const METRIC = ['Materials of equal paddocks', 'Bite', 'Training pen', 'Map'];

describe('whatever is typed into a table is kept, or refused by name', () => {
  it.each(TABLES)('%s', (table) => {
    expectNothingLost(`${table}, US`, tryEveryCell(tasks.get(`${table}, US`)!));
  });

  // Nothing but units and numbers differs: where sizes are written back, one kind of thing is enough.
  it.each(METRIC)('%s in metric units', (table) => {
    expectNothingLost(`${table}, metric`, tryEveryCell(tasks.get(`${table}, metric`)!, ['text']));
  });
});

/** Of single typed cells; the rest is refused by name, or planned anew as the page says. */
const LEAST_KEPT = 0.6;

function expectNothingLost(table: string, verdicts: readonly Verdict[]): void {
  const allowing = ({ what, fault }: Verdict) =>
    ALLOWED.find((known) => known.table.test(table) && known.what.test(`${what}: ${fault}`));
  const lost = verdicts.filter(({ verdict }) => verdict === 'lost');
  const unknown = lost.filter((one) => !allowing(one));
  for (const one of lost) met.add(allowing(one) as Known);
  const count = (wanted: string): number => verdicts.filter(({ verdict }) => verdict === wanted).length;
  const words = [
    `${verdicts.length.toLocaleString('en')} times typed (texts, numbers, formulas, cleared)`,
    `${count('kept')} kept`,
    `${count('refused')} refused by name`,
    `${lost.length - unknown.length} planned anew as the page says`,
    `${unknown.length} lost`,
  ];
  console.log(`typed everywhere: ${table}, ${words.join(', ')}`);
  expect(unknown.map(({ cell, what, fault }) => `${cell} ${what}: ${fault}`.slice(0, 300))).toEqual([]);
  expect(count('kept') / verdicts.length).toBeGreaterThanOrEqual(LEAST_KEPT);
}

it.each(TABLES.filter((table) => !table.startsWith('Rotation')))(
  '%s: nothing typed, nothing to tell',
  (table) => {
    const task = tasks.get(`${table}, US`)!;
    expect(composed(task, task.content).told ?? []).toEqual([]);
  },
);

it.each(['Materials', 'Bite', 'Training pen'])(
  '%s: other units typed are refused as such, by their cell',
  (table) => {
    const { content, rebuild } = tasks.get(`${table}, US`)!;
    const row = content.values.findIndex(([first]) => first === 'Units of this table');
    const values = content.values.map((cells, r) =>
      cells.map((cell, c) => (r === row && c === 1 ? 'metric' : cell)),
    );
    const rebuilt = rebuild({ ...content, values });
    expect('refused' in rebuilt && rebuilt.refused.join()).toContain(
      `${cellA1(content.info.row + row, content.info.column + 1)}: the units of a table that stands`,
    );
  },
);

describe('several cells at once', () => {
  it.each(TABLES.filter((table) => !table.startsWith('Rotation')))('%s', (table) => {
    const task = tasks.get(`${table}, US`)!;
    for (const [what, { tried, kept, refused, lost }] of [
      ['the same text twice', trySameTwice(task)],
      ['every blank cell filled', tryEveryBlank(task)],
    ] as const) {
      console.log(
        `typed everywhere: ${table}, ${what}: ${tried} cells, ${kept} kept, ${refused} refused by name, ${lost.length} lost`,
      );
      expect(lost).toEqual([]);
    }
  });
});

it('what may give way still does: else it must go from the list', () => {
  const gone = ALLOWED.filter((known) => !met.has(known));
  expect(gone.map(({ what, why }) => `${what}: ${why}`)).toEqual([]);
});
