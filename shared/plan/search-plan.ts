import { beamSearch, type SearchEffort } from './beam-search';
import { improveWindow } from './improve';
import { NEVER } from './never';
import type { PlanTables } from './plan-tables';
import { replay } from './replay';
import { type Move, movesOf } from './search-state';
import { type SearchTask, wholeTask } from './search-task';

/*
 * Why this search. A stay's cost depends on when its paddock was last left, so the future depends on all paddocks
 * at once: dynamic programming over days would need a state for every pattern of rests, and the days × groups ×
 * paddocks of a real farm are beyond exact solvers in a page. What does split up is each group's own moving (move
 * days, lengths, ground limit, open dates, strides): without rest and the other groups it is a small dynamic
 * program, solved backwards first. Its value is the bound with which a beam search forward over time compares
 * states and cuts off what cannot beat the best plan so far; a guess of the rest still to be missed ranks them.
 * Paddocks that the rules cannot tell apart are tried once, and states with the same future are kept once.
 * A beam forgets; so the plan is then improved piece by piece: all groups in a window of days, or one group over
 * the whole season, are searched again with the rest kept (large neighbourhood search), by the same beam. Several
 * weights of the guess give several starts, and the best end wins.
 *
 * The work is days × groups × paddocks × width, and the width shrinks to a floor as farms grow, so that large farms
 * cost time in proportion to their size.
 */

/** Farm size (days × groups × paddocks) up to which the widest search is affordable; judgement. */
const SMALL_FARM = 2000;
const WIDEST = 40;
const NARROWEST = 8;
/** Share of the widest search below which one start and one round of improvement must do. */
const FEW_TRIES = 0.2;
const MOST_ROUNDS = 4;
/** How much wider the last look is at most. */
const MOST_WIDENING = 10;
/** Points closer together than this are the same. */
const SAME = 1e-9;

/** Full for the plan itself; quick for the many plans that only tell what a change would bring. */
export type Thoroughness = 'full' | 'quick';

/** The best plan found, or undefined. */
export function searchPlan(tables: PlanTables, thoroughness: Thoroughness): readonly Move[] | undefined {
  const share = SMALL_FARM / Math.max(1, tables.days * tables.groupCount * tables.paddockCount);
  const width = Math.round(Math.min(WIDEST, Math.max(NARROWEST, WIDEST * share)));
  const thorough = thoroughness === 'full' && share >= FEW_TRIES;
  const whole = wholeTask(tables);
  let best: readonly Move[] | undefined;
  for (const effort of thorough ? thoroughStarts(width) : [{ width, looks: 3, restWeight: 0.5 }]) {
    const found = beamSearch(tables, whole, effort, Infinity);
    if (!found) continue;
    if (isProven(whole, found.total)) return movesOf(found.state);
    const moves = improve(tables, movesOf(found.state), width, thorough);
    if (!best || points(tables, moves) < points(tables, best)) best = moves;
    if (isProven(whole, points(tables, best))) break;
  }
  if (best && thorough)
    best = lookWide(tables, whole, best, Math.round(width * Math.min(MOST_WIDENING, 2.5 * share)));
  return best ?? searchWider(tables, width);
}

/** One wide look for something better than the best: cheap, since all that cannot beat it is cut off. */
function lookWide(
  tables: PlanTables,
  whole: SearchTask,
  best: readonly Move[],
  width: number,
): readonly Move[] {
  const effort = { width, looks: 12, restWeight: 0.5, longStays: true };
  const found = beamSearch(tables, whole, effort, points(tables, best));
  return found ? movesOf(found.state) : best;
}

/** At the bound that no plan can beat. */
function isProven(whole: SearchTask, total: number): boolean {
  return total <= whole.start.bound + SAME;
}

function thoroughStarts(width: number): SearchEffort[] {
  return [
    { width, looks: 12, restWeight: 0.5 },
    { width, looks: 12, restWeight: 1 },
    { width: 2 * width, looks: 3, restWeight: 0.5, longStays: true },
  ];
}

/** Where the beam met only dead ends: a few times more, ever wider. */
function searchWider(tables: PlanTables, width: number): readonly Move[] | undefined {
  for (const wider of [4, 16]) {
    const found = beamSearch(
      tables,
      wholeTask(tables),
      { width: width * wider, looks: 3, restWeight: 0 },
      Infinity,
    );
    if (found) return movesOf(found.state);
  }
  return undefined;
}

function improve(
  tables: PlanTables,
  first: readonly Move[],
  width: number,
  thorough: boolean,
): readonly Move[] {
  let moves = first;
  for (let round = 0; round < (thorough ? MOST_ROUNDS : 1); round++) {
    const before = moves;
    const effort = { width, looks: thorough ? 12 : 3, restWeight: 0.5, longStays: round % 2 === 0 };
    if (tables.groupCount > 1) moves = improveGroups(tables, moves, effort);
    moves = improveWindows(tables, moves, effort);
    if (moves === before && round > 0) break;
  }
  return moves;
}

function improveGroups(tables: PlanTables, first: readonly Move[], effort: SearchEffort): readonly Move[] {
  return tables.groups.reduce(
    (moves, _, g) => improveWindow(tables, moves, -NEVER, NEVER, [g], effort),
    first,
  );
}

/** Windows of about four stays, each beginning about one stay after the last. */
function improveWindows(tables: PlanTables, first: readonly Move[], effort: SearchEffort): readonly Move[] {
  const everyone = tables.groups.map((_, g) => g);
  const step = Math.max(2, Math.round(tables.problem.rules.longestStayDays));
  let moves = first;
  for (let day = 0; day < tables.days; day += step) {
    moves = improveWindow(tables, moves, day === 0 ? -NEVER : day, day + 4 * step, everyone, effort);
  }
  return moves;
}

function points(tables: PlanTables, moves: readonly Move[]): number {
  return replay(tables, moves).cost;
}
