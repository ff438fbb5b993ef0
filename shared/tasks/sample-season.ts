/**
 * A sample farm as it stands six weeks into its season: the lists, and over them what the tasks make of them, as
 * somebody would have had them written day by day. Moves up to a few days ago are counted as done, the next one is late.
 */
import type { Reply } from '../contract';
import { type Day, dayFromIso, isoFromDay } from '../core/calendar/day';
import type { PlanProblem } from '../plan/model';
import type { SampleFarm, SampleWeighing } from '../samples/sample-farm';
import { CHANGE_LABELS, HERD_TASK } from './herd/herd-task';
import { standingRotation } from './rotation/rotation-standing';
import { COUNT_OPTIONS, PLAN_LABEL, type Planned, ROTATION_TASK } from './rotation/rotation-task';
import { COUNT_LABEL } from './rotation/words';
import { type Port, readBook, runTask } from './run-task';
import type { Answers, Task } from './task';
import { TODAY_TASK } from './today/today-task';
import * as words from './words';

/** How a plan is worked out where the season is made: at once, or beside the page. */
export type Planner = (problem: PlanProblem) => Promise<Planned> | Planned;

/** Writes it all. Throws a sentence that says what stands by then. */
export async function playSample(port: Port, { id, weighings }: SampleFarm, plan: Planner): Promise<void> {
  const { tabs } = await port('startSample', { sample: id });
  try {
    const { today } = (await readBook(port)).overview;
    const now = dayFromIso(today) ?? 0;
    for (const weighing of weighings) await write(port, HERD_TASK, weighed(weighing, now));
    await rotate(port, plan, {});
    const late = await lateMove(port, now);
    await rotate(asOf(port, late - 1), plan, { [COUNT_LABEL]: COUNT_OPTIONS.yes });
    await write(port, TODAY_TASK, {});
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    throw new Error(words.listsStand(tabs.map((tab) => `“${tab}”`).join(' and '), why));
  }
}

function weighed({ group, daysAgo, weight }: SampleWeighing, today: Day): Answers {
  return {
    [CHANGE_LABELS.group]: group,
    [CHANGE_LABELS.day]: isoFromDay(today - daysAgo),
    [CHANGE_LABELS.weight]: weight,
    [CHANGE_LABELS.note]: 'on the crate scale',
  };
}

async function rotate(port: Port, plan: Planner, answers: Answers): Promise<void> {
  const { season } = ROTATION_TASK.read(await readBook(port), answers);
  if ('missing' in season) throw new Error(season.missing);
  await write(port, ROTATION_TASK, { ...answers, [PLAN_LABEL]: await plan(season.problem) });
}

async function write<Plan>(port: Port, task: Task<Plan>, answers: Answers): Promise<void> {
  const outcome = await runTask(port, task, answers);
  if (outcome.kind === 'refused') throw new Error(outcome.sentence);
  if (outcome.kind === 'questions') throw new Error(outcome.questions.join(' '));
}

/** The last move before today: nobody has written down that it was made. */
async function lateMove(port: Port, today: Day): Promise<Day> {
  const table = standingRotation(await readBook(port));
  const days = table?.rotation.rows.flatMap(({ inDay = today }) => (inDay < today ? [inDay] : [])) ?? [];
  return Math.max(...days);
}

/** The same file on an earlier day. */
function asOf(port: Port, day: Day): Port {
  return async (name, request) => {
    const reply = await port(name, request);
    if (name !== 'readFile') return reply;
    const file = reply as Reply<'readFile'>;
    return { ...file, overview: { ...file.overview, today: isoFromDay(day) } } as typeof reply;
  };
}
