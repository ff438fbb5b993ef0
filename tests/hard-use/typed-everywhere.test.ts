/**
 * A person may type anything anywhere. Every cell of every table that the sidebar builds is typed over, in memory, and
 * the table written anew: what was typed is kept, or the page refuses and names it.
 */
import { beforeAll, describe, expect, it, vi } from 'vitest';
import { cellA1 } from '../../shared/block/a1';
import { BUDGET_TASK, SEASON_LABELS } from '../../shared/tasks/budget/budget-task';
import { HERD_TASK } from '../../shared/tasks/herd/herd-task';
import { MATERIALS_TASK } from '../../shared/tasks/materials/materials-task';
import { pictureTask } from '../../shared/tasks/season/picture-task';
import { markTask } from '../../shared/tasks/share/mark-task';
import type { Answers } from '../../shared/tasks/task';
import type { UnitSystem } from '../../shared/units/units';
import { openWorkbook, type Workbook } from '../../src/headless';
import { scriptText } from '../tasks/script-text';
import { buildEveryBlock, seasonOf, unitsAnswer, write } from './every-block';
import { buildRotation, readBook } from './rotation-task';
import { taskInMemory } from './task-in-memory';
import { composed, type TypedTask, tryEveryCell, type Verdict } from './typed-cells';
import { FARM_RULES, farmToType, typeMoves } from './typed-farm';
import { rotationTask } from './typed-rotation';
import { MARK, otherTypedTasks, typedTasks } from './typed-tasks';
import { tryEveryBlank, trySameTwice } from './typed-together';

// The same function, which remembers: the same formulas come again and again.
vi.mock('../../shared/block/written-shape', async (original) => {
  const { writtenShape } = await original<typeof import('../../shared/block/written-shape')>();
  return { writtenShape: remembered(writtenShape) };
});

const { remembered } = vi.hoisted(() => ({
  remembered: (of: (text: string) => string) => {
    const known = new Map<string, string>();
    return (text: string): string => {
      const before = known.get(text) ?? of(text);
      known.set(text, before);
      return before;
    };
  },
}));

const tasks = new Map<string, TypedTask>();

beforeAll(async () => {
  for (const units of ['US', 'metric'] as const)
    for (const task of await tasksIn(units)) tasks.set(`${task.name}, ${units}`, task);
});

async function tasksIn(units: UnitSystem): Promise<readonly TypedTask[]> {
  const workbook = await farmIn(units);
  const rotated = await buildEveryBlock(workbook, units, { rules: FARM_RULES });
  await write(workbook, markTask(MARK), {});
  const other = await farmIn(units);
  await write(other, MATERIALS_TASK, equalPaddocks(units));
  await write(other, BUDGET_TASK, { ...unitsAnswer(units), [SEASON_LABELS.end]: '2026-04-11' });
  await buildRotation(other, { units, rules: FARM_RULES });
  await write(other, HERD_TASK, {});
  const book = readBook(workbook);
  const rotation = rotationTask('Rotation', book);
  typeMoves(workbook, book);
  return [
    ...(await typedTasks(book, units)),
    ...(await otherTypedTasks(readBook(other), units)),
    taskInMemory('Season picture', book, pictureTask(seasonOf(rotated))),
    rotation,
    rotationTask(
      'Rotation, three moves done',
      readBook(workbook),
      await composed(rotation, rotation.content),
    ),
  ];
}

async function farmIn(units: UnitSystem): Promise<Workbook> {
  const locale = units === 'US' ? 'en_US' : 'en_GB';
  const codeJs = await scriptText();
  return openWorkbook({ tabs: farmToType(units), codeJs, locale, today: '2026-04-01' });
}

/** Two of them fenced at a time. */
function equalPaddocks(units: UnitSystem): Answers {
  const grid = { 'Rows of paddocks': '3', 'Paddocks in a row': '5' };
  const sides = { 'Width of a paddock': '31', 'Length of a paddock': '43' };
  return {
    ...unitsAnswer(units),
    'What do you fence?': 'A block of equal paddocks, rows × columns',
    ...grid,
    ...sides,
    'Paddocks that stand together': '2',
  };
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
  it.each(TABLES)('%s', async (table) => {
    expectNothingLost(`${table}, US`, await tryEveryCell(tasks.get(`${table}, US`)!));
  });

  // Nothing but units and numbers differs: where sizes are written back, one kind of thing is enough.
  it.each(METRIC)('%s in metric units', async (table) => {
    expectNothingLost(`${table}, metric`, await tryEveryCell(tasks.get(`${table}, metric`)!, ['text']));
  });
});

/** Of single typed cells; the rest is refused by name. */
const LEAST_KEPT = { Rotation: 0.9, others: 0.6 } as const;

function expectNothingLost(table: string, verdicts: readonly Verdict[]): void {
  const lost = verdicts.filter(({ verdict }) => verdict === 'lost');
  const count = (wanted: string): number => verdicts.filter(({ verdict }) => verdict === wanted).length;
  const words = [
    `${verdicts.length.toLocaleString('en')} times typed (texts, numbers, formulas, cleared)`,
    `${count('kept')} kept`,
    `${count('refused')} refused by name`,
    `${lost.length} lost`,
  ];
  console.log(`typed everywhere: ${table}, ${words.join(', ')}`);
  expect(lost.map(({ cell, what, fault }) => `${cell} ${what}: ${fault}`.slice(0, 300))).toEqual([]);
  expect(count('kept') / verdicts.length).toBeGreaterThanOrEqual(
    table.startsWith('Rotation') ? LEAST_KEPT.Rotation : LEAST_KEPT.others,
  );
}

/** What the page says of the moves, whatever was typed. */
const OF_THE_PLAN = /^The rest of the plan stays|kept from now on with \d+ head/;

it.each(TABLES)('%s: nothing typed, nothing to tell', async (table) => {
  const task = tasks.get(`${table}, US`)!;
  const told = (await composed(task, task.content)).told ?? [];
  expect(told.filter((sentence) => !OF_THE_PLAN.test(sentence))).toEqual([]);
});

it.each(['Materials', 'Bite', 'Training pen'])(
  '%s: other units typed are refused as such, by their cell',
  async (table) => {
    const { content, rebuild } = tasks.get(`${table}, US`)!;
    const row = content.values.findIndex(([first]) => first === 'Units of this table');
    const values = content.values.map((cells, r) =>
      cells.map((cell, c) => (r === row && c === 1 ? 'metric' : cell)),
    );
    const rebuilt = await rebuild({ ...content, values });
    expect('refused' in rebuilt && rebuilt.refused.join()).toContain(
      `${cellA1(content.info.row + row, content.info.column + 1)}: the units of a table that stands`,
    );
  },
);

describe('several cells at once', () => {
  it.each(TABLES.filter((table) => table !== 'Rotation, three moves done'))('%s', async (table) => {
    const task = tasks.get(`${table}, US`)!;
    for (const [what, { tried, kept, refused, lost }] of [
      ['the same text twice', await trySameTwice(task)],
      ['every blank cell filled', await tryEveryBlank(task)],
    ] as const) {
      console.log(
        `typed everywhere: ${table}, ${what}: ${tried} cells, ${kept} kept, ${refused} refused by name, ${lost.length} lost`,
      );
      expect(lost).toEqual([]);
    }
  });
});
