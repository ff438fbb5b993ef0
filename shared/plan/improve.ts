import { beamSearch, endPoints, type SearchEffort, type Work } from './beam-search';
import type { PlanTables } from './plan-tables';
import { replay } from './replay';
import { type Move, movesOf } from './search-state';
import { searchTask } from './search-task';
import type { Steps } from './steps';

/**
 * Large neighbourhood search: takes the stays of some groups that begin from `from` to the day before `until` out
 * of the plan and searches for better ones, everything else kept. Returns the plan unchanged if there are none.
 */
export function* improveWindow(
  tables: PlanTables,
  moves: readonly Move[],
  from: number,
  until: number,
  groups: readonly number[],
  effort: SearchEffort,
  work: Work,
): Steps<readonly Move[]> {
  const before = moves.filter((move) => move.inDay < from);
  const after = moves.filter((move) => move.inDay >= from);
  const start = replay(tables, before);
  const goal = tables.groups.map(({ end }, g) => {
    const own = after.filter((move) => move.g === g && (!groups.includes(g) || move.inDay >= until));
    return own[0]?.inDay ?? end;
  });
  const finish = Math.max(...goal.filter((_, g) => groups.includes(g)));
  const kept = after.filter((move) => move.inDay >= goal[move.g]!);
  const task = yield* searchTask(tables, kept, start, finish, goal);
  const now = endPoints(
    tables,
    task,
    replay(
      tables,
      moves.filter((move) => move.inDay < finish),
    ),
  );
  const found = yield* beamSearch(tables, task, effort, now, work);
  if (!found) return moves;
  const later = kept.filter((move) => move.inDay >= finish);
  return [...before, ...movesOf(found.state), ...later].sort((a, b) => a.inDay - b.inDay || a.g - b.g);
}
