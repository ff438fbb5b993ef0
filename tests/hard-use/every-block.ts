/** Builds every block that there is in one workbook, as a grower does: task after task, with answers to its form. */
import { columnLetters } from '../../shared/block/a1';
import { isoFromDay } from '../../shared/core/calendar/day';
import { UNITS_LEGEND, UNITS_OPTIONS } from '../../shared/tasks/ask';
import { BITE_TASK, LINES_LABEL } from '../../shared/tasks/bite/bite-task';
import { READING_LABELS, WALK_TASK } from '../../shared/tasks/bite/walk-task';
import { WIRES } from '../../shared/tasks/bite/wires';
import { BUDGET_TASK } from '../../shared/tasks/budget/budget-task';
import { mapFromGeojson } from '../../shared/tasks/map/map-from-geojson';
import { CORNERS_LABEL, MAP_TASK } from '../../shared/tasks/map/map-task';
import { MATERIALS_TASK } from '../../shared/tasks/materials/materials-task';
import { TAB_LABEL } from '../../shared/tasks/place';
import { pictureTask } from '../../shared/tasks/season/picture-task';
import type { Answers, Task } from '../../shared/tasks/task';
import { TODAY_TASK } from '../../shared/tasks/today/today-task';
import { LOG_HEADINGS } from '../../shared/tasks/training/log-headings';
import { LOG_TASK } from '../../shared/tasks/training/log-task';
import { PEN_TASK } from '../../shared/tasks/training/pen-task';
import type { UnitSystem } from '../../shared/units/units';
import { portOf, runTask, type Workbook } from '../../src/headless';
import { SAMPLE_MAP } from '../tasks/map/sample-map';
import { buildRotation, type Outcome, type Wish } from './rotation-task';

export type Written = Extract<Outcome, { kind: 'written' }>;

/** Runs the task; throws where it is not written. */
export async function write<Plan>(workbook: Workbook, task: Task<Plan>, answers: Answers) {
  const outcome = await runTask(portOf(workbook), task, answers);
  if (outcome.kind !== 'written') throw new Error(`${task.name}: ${JSON.stringify(outcome)}`);
  return outcome.done;
}

export function unitsAnswer(units: UnitSystem): Answers {
  return { [UNITS_LEGEND]: UNITS_OPTIONS[units] };
}

/** The table first, then everything that is made from it or stands beside it. */
export async function buildEveryBlock(
  workbook: Workbook,
  units: UnitSystem,
  wish: Wish = {},
): Promise<Written> {
  const outcome = await buildRotation(workbook, { units, ...wish });
  if (outcome.kind !== 'written') throw new Error(JSON.stringify(outcome));
  const day = outcome.rules.seasonStart;
  const first = <Plan>(task: Task<Plan>, tab: string, answers: Answers = {}) =>
    write(workbook, task, { [TAB_LABEL]: tab, ...answers });
  const asked = unitsAnswer(units);
  await first(pictureTask(seasonOf(outcome)), 'Picture');
  await first(TODAY_TASK, 'Today');
  await first(MATERIALS_TASK, 'Materials', {
    ...asked,
    'How many paddocks stand fenced at a time?': 'All of them',
  });
  await first(BITE_TASK, 'Bite', { ...asked, [LINES_LABEL]: linesIn(units) });
  await first(WALK_TASK, 'Fence walk');
  for (const after of [3, 11])
    for (const [i, volts] of [6200, 4100 - 90 * after].entries())
      await write(workbook, WALK_TASK, {
        [READING_LABELS.day]: isoFromDay(day + after),
        [READING_LABELS.place]: `=corner ${i}`,
        [READING_LABELS.volts]: String(volts),
      });
  await first(BUDGET_TASK, 'Budget', asked);
  await first(PEN_TASK, 'Pen', asked);
  await first(LOG_TASK, 'Training log');
  typeLog(workbook, day);
  await write(workbook, LOG_TASK, {});
  await first(MAP_TASK, 'Map', { ...asked, [CORNERS_LABEL]: mapFromGeojson(SAMPLE_MAP) });
  return outcome;
}

export function seasonOf({ problem, plan, rules, units }: Written): Parameters<typeof pictureTask>[0] {
  const settings = { rules, unitSystem: units, temperatureC: 20, outdoorFactor: 1.15, lists: {} };
  return { problem, plan, settings };
}

function linesIn(units: UnitSystem) {
  const [lane, hill] = units === 'US' ? ['1312', '18045'] : ['400', '5500'];
  return [
    { Name: 'Lane', Length: lane!, 'Live wires': '2', Wire: WIRES[0]!.name },
    { Name: '=Hill', Length: hill!, 'Live wires': '1', Wire: WIRES[1]!.name },
  ];
}

/** One batch that is ready, one that is not, and a row that has lost its name. */
function typeLog(workbook: Workbook, day: number): void {
  const tab = 'Training log';
  const head = workbook.values(tab).findIndex((row) => row.includes('Pig or batch'));
  const trained = (name: string, group: string, began: number) => ({
    'Pig or batch': name,
    Group: group,
    Head: '9',
    'In the pen on': isoFromDay(began),
    'Saw the wire on': isoFromDay(began),
    'Backed off on': isoFromDay(began + 1),
    'Passed check on': isoFromDay(began + 2),
    Observer: 'Ada',
  });
  const rows: Readonly<Record<string, string>>[] = [
    trained('Sows', 'Reds', day - 20),
    { 'Pig or batch': "'=Late", Group: "'=Blacks", 'In the pen on': isoFromDay(day - 3) },
    trained('', 'Greens', day - 20),
  ];
  for (const [i, row] of rows.entries())
    for (const [heading, typed] of Object.entries(row))
      if (typed !== '')
        workbook.type(
          tab,
          `${columnLetters((LOG_HEADINGS as readonly string[]).indexOf(heading) + 1)}${head + 2 + i}`,
          typed,
        );
}
