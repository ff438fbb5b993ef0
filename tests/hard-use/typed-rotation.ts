/** The rotation table, rebuilt as its page does: with the plan that is there as long as the problem is the same. */
import type { Book } from '../../shared/block/book';
import { ROTATION_NAME } from '../../shared/block/own-words';
import type { BlockContent } from '../../shared/block/read-block';
import { PLAN_LABEL, type Planned, ROTATION_TASK } from '../../shared/tasks/rotation/rotation-task';
import { quickPlan } from './rotation-task';
import { contentOf, taskInMemory } from './task-in-memory';
import type { Composed, TypedTask } from './typed-cells';

/** `written`: the table as it was built, where it is not built anew the same. */
export function rotationTask(name: string, book: Book, written?: Composed): TypedTask {
  const plans = new Map<string, Planned>();
  const task: typeof ROTATION_TASK = {
    ...ROTATION_TASK,
    solve: ({ season }) => {
      if ('missing' in season) return {};
      const key = JSON.stringify(season.problem);
      const planned = plans.get(key) ?? quickPlan(season.problem);
      plans.set(key, planned);
      return { [PLAN_LABEL]: planned };
    },
  };
  return {
    ...taskInMemory(name, book, task, {
      shown: ({ season, changes = [] }) => [
        ...('rebuild' in season && season.rebuild ? season.rebuild.notes : []),
        ...changes,
      ],
    }),
    placeOf: placesIn(contentOf(book, ROTATION_NAME)),
    ...(written && { written }),
  };
}

/** "past move, Days", "setting Rest": rows shift when the table changes, their kinds do not. */
function placesIn({ values }: BlockContent): (row: number, column: number) => string {
  const head = values.findIndex((row) => row.includes('Moved in'));
  const heading = (column: number): string => String(values[head]![column]);
  const movedIn = values[head]!.indexOf('Moved in');
  const end = values.findIndex((row, r) => r > head + 1 && row[0] === '');
  return (r, c) => {
    if (r < head) return `line ${r + 1} above, column ${c + 1}`;
    if (r === head) return `heading ${heading(c)}`;
    if (r === head + 1) return `row under the headings, ${heading(c)}`;
    if (r < end) return `${values[r]![movedIn] === '' ? 'move' : 'past move'}, ${heading(c)}`;
    if (r === end) return `row below the moves, ${heading(c)}`;
    return `${c === 0 ? 'label' : c === 1 ? 'value' : 'beside'} of setting ${values[r]![0]}`;
  };
}
