/** Every task but the rotation, with what a person answers where its form asks. */
import type { Book } from '../../shared/block/book';
import { BITE_SETTINGS } from '../../shared/tasks/bite/bite-settings';
import { BITE_TASK, LINES_LABEL } from '../../shared/tasks/bite/bite-task';
import { WALK_SETTINGS } from '../../shared/tasks/bite/walk-block';
import { WALK_TASK } from '../../shared/tasks/bite/walk-task';
import { BUDGET_SETTINGS } from '../../shared/tasks/budget/budget-settings';
import { BUDGET_TASK } from '../../shared/tasks/budget/budget-task';
import { HERD_TASK } from '../../shared/tasks/herd/herd-task';
import { MAP_SETTINGS } from '../../shared/tasks/map/map-block';
import { CORNERS_LABEL, CORNERS_OF_TABLE, MAP_TASK } from '../../shared/tasks/map/map-task';
import { COMPARISON_SETTINGS } from '../../shared/tasks/materials/comparison-model';
import { GRID_SETTINGS, type GridKey } from '../../shared/tasks/materials/layout-rows';
import { MATERIALS_SETTINGS } from '../../shared/tasks/materials/materials-settings';
import { MATERIALS_TASK } from '../../shared/tasks/materials/materials-task';
import type { SettingSpec } from '../../shared/tasks/settings';
import { markTask } from '../../shared/tasks/share/mark-task';
import { TODAY_TASK } from '../../shared/tasks/today/today-task';
import { LOG_SETTINGS } from '../../shared/tasks/training/log-block';
import { LOG_TASK } from '../../shared/tasks/training/log-task';
import { PEN_SETTINGS } from '../../shared/tasks/training/pen-block';
import { PEN_TASK } from '../../shared/tasks/training/pen-task';
import type { UnitSystem } from '../../shared/units/units';
import { taskInMemory } from './task-in-memory';
import { composed, type TypedTask } from './typed-cells';
import { withOwnInputs, withOwnSettings } from './typed-settings';

export const MARK = 'SOUNDER_ORIGINAL_EPCK';
/** In cell units, for a form that asks. */
const GRID: Readonly<Record<GridKey, string>> = { rows: '3', columns: '5', width: '31', length: '43' };
const WIRE = { Length: '100' };

export async function typedTasks(book: Book, units: UnitSystem): Promise<readonly TypedTask[]> {
  return [
    await filledIn(materials('Materials', book), [...MATERIALS_SETTINGS, ...COMPARISON_SETTINGS], units),
    withSettings(
      taskInMemory('Bite', book, BITE_TASK, {
        asked: ({ lines, wires, lineProblems }) =>
          lineProblems.every((problem) => problem === undefined)
            ? {}
            : {
                [LINES_LABEL]: lines.map((line) => ({
                  ...line,
                  Length: line.Length || WIRE.Length,
                  Wire: wires.some(({ name }) => name === line.Wire) ? line.Wire : wires[0]!.name,
                })),
              },
      }),
      BITE_SETTINGS,
      units,
    ),
    withSettings(taskInMemory('Fence walk', book, WALK_TASK), WALK_SETTINGS, 'US'),
    await filledIn(taskInMemory('Budget', book, BUDGET_TASK), BUDGET_SETTINGS, units),
    withSettings(taskInMemory('Training pen', book, PEN_TASK), PEN_SETTINGS, units),
    withSettings(taskInMemory('Training log', book, LOG_TASK), LOG_SETTINGS, 'US'),
    await filledIn(
      taskInMemory('Map', book, MAP_TASK, {
        answers: { [CORNERS_LABEL]: CORNERS_OF_TABLE },
        shown: ({ map }) => map?.problems ?? [],
      }),
      MAP_SETTINGS,
      units,
    ),
    taskInMemory('Sharing mark', book, markTask(MARK)),
    taskInMemory('Today', book, TODAY_TASK),
  ];
}

/** The same tables made of something else: equal paddocks, and the lists where a rotation table stands too. */
export async function otherTypedTasks(book: Book, units: UnitSystem): Promise<readonly TypedTask[]> {
  return [
    await filledIn(
      materials('Materials of equal paddocks', book),
      [...MATERIALS_SETTINGS, ...COMPARISON_SETTINGS],
      units,
    ),
    taskInMemory('Herd log', book, HERD_TASK),
    await filledIn(taskInMemory('Budget of the lists', book, BUDGET_TASK), BUDGET_SETTINGS, units),
  ];
}

function materials(name: string, book: Book): TypedTask {
  return taskInMemory(name, book, MATERIALS_TASK, {
    asked: ({ layout: { grid } }) =>
      Object.fromEntries(
        GRID_SETTINGS.flatMap(({ key, label }) =>
          grid && grid.values[key] === undefined ? [[label, GRID[key]]] : [],
        ),
      ),
  });
}

function withSettings<Key extends string>(
  task: TypedTask,
  specs: readonly SettingSpec<Key>[],
  units: UnitSystem,
): TypedTask {
  return { ...task, content: withOwnSettings(task.content, specs, units) };
}

async function filledIn<Key extends string>(
  task: TypedTask,
  specs: readonly SettingSpec<Key>[],
  units: UnitSystem,
): Promise<TypedTask> {
  const { content } = withSettings(task, specs, units);
  const anew = await composed(task, content);
  // Where the page was told of a shorter season its table has fewer rows than it is written with anew.
  const isAligned = anew.cells.length === content.values.length;
  return { ...task, content: isAligned ? withOwnInputs(content, anew) : content };
}
