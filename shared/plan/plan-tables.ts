import { evenShare } from './even-share';
import { type GroupTable, groupTable } from './group-table';
import { isStride } from './is-stride';
import type { PlanPaddock, PlanProblem } from './model';
import { moveDaysOf } from './move-days';
import { NEVER } from './never';
import { restDue } from './rest-due';
import type { Steps } from './steps';

/** Any paddock that follows the farm's rest rule. */
const PLAIN = { name: '', areaSquareMeters: 1 };

/**
 * What the search looks up instead of working out: the problem in days counted from the season start, with the
 * choices of out day of every (group, paddock, in day) as a range of move days.
 */
export interface PlanTables {
  readonly problem: PlanProblem;
  readonly days: number;
  readonly groupCount: number;
  readonly paddockCount: number;
  readonly groups: readonly GroupTable[];
  /** First open day of each paddock, and the day it closes: the one after the last open day. */
  readonly openFrom: Int32Array;
  readonly closes: Int32Array;
  /** ready[paddock · (days + 1) + day]: the first day with the rest due, if last left on that day. */
  readonly ready: Int32Array;
  /** The same for the use before the plan; −NEVER where never used, or where a group stands: its entry is past. */
  readonly readyAtStart: Int32Array;
  /** Kind of paddock: equal kinds differ only by name, so the search tries one of them. */
  readonly kind: Int32Array;
  /** Points of a stay for each (kg·day)² that the paddock bears in it: evenness ÷ (even share × area)². */
  readonly unevenPoints: Float64Array;
  /** Whether any move can be a stride, and strides[left · paddockCount + entered]. */
  readonly anyStride: boolean;
  readonly strides: Uint8Array;
  /** The paddocks that each one can be left for without a stride. */
  readonly noStride: readonly (readonly number[])[];
}

/** `flawless`: without the stays that are too long or over the ground limit. */
export function* planTables(problem: PlanProblem, flawless = false): Steps<PlanTables> {
  const { paddocks, groups, rules } = problem;
  const start = rules.seasonStart;
  const days = Math.max(0, rules.seasonEnd - start);
  const moveDays = Int32Array.from(moveDaysOf(rules), (day) => day - start);
  const ready = new Int32Array(paddocks.length * (days + 1));
  const dueOnDay = new Int32Array(days + 1);
  for (let day = 0; day <= days; day++) {
    dueOnDay[day] = restDue(PLAIN, rules.rest, start + day);
  }
  for (const [p, paddock] of paddocks.entries()) {
    for (let day = 0; day <= days; day++) {
      ready[p * (days + 1) + day] =
        day + (paddock.restDays === undefined ? dueOnDay[day]! : restDue(paddock, rules.rest, start + day));
    }
  }
  const strides = new Uint8Array(paddocks.length ** 2);
  for (let a = 0; a < paddocks.length; a++) {
    for (let b = 0; b < paddocks.length; b++) {
      if (isStride(paddocks, a, b)) strides[a * paddocks.length + b] = 1;
    }
  }
  const unevenPoints = Float64Array.from(paddocks, unevenPointsOf(problem));
  const tables: GroupTable[] = [];
  for (const g of groups.keys()) {
    tables.push(groupTable(problem, g, days, moveDays, flawless));
    yield 0;
  }
  const stoodIn = new Set(tables.map(({ standing }) => standing?.paddock));
  return {
    problem,
    days,
    groupCount: groups.length,
    paddockCount: paddocks.length,
    groups: tables,
    openFrom: Int32Array.from(paddocks, (p) => (p.openFrom ?? -NEVER) - start),
    closes: Int32Array.from(paddocks, (p) => (p.openUntil === undefined ? NEVER : p.openUntil + 1 - start)),
    ready,
    readyAtStart: Int32Array.from(paddocks, (paddock, p) =>
      paddock.lastUsed === undefined || stoodIn.has(p)
        ? -NEVER
        : paddock.lastUsed + restDue(paddock, rules.rest, paddock.lastUsed) - start,
    ),
    kind: paddockKinds(problem),
    unevenPoints,
    anyStride: strides.includes(1),
    strides,
    noStride: paddocks.map((_, a) =>
      paddocks.flatMap((_, b) => (a !== b && !strides[a * paddocks.length + b] ? [b] : [])),
    ),
  };
}

function unevenPointsOf(problem: PlanProblem): (paddock: PlanPaddock) => number {
  const weight = problem.rules.evenness ?? 0;
  const share = weight > 0 ? (problem.evenShare ?? evenShare(problem)) : 0;
  return ({ areaSquareMeters }) => (share > 0 ? weight / (share * areaSquareMeters) ** 2 : 0);
}

/** Numbers paddocks by what the rules can tell apart; strides, wishes and the plan before make every paddock its own kind. */
function paddockKinds({ paddocks, rules, before, wishes }: PlanProblem): Int32Array {
  const kinds = new Map<string, number>();
  const isOwnKind = Boolean(before || wishes) || paddocks.some((paddock) => paddock.adjoins !== undefined);
  return Int32Array.from(paddocks, (paddock, p) => {
    const area = rules.groundLimit === undefined && !rules.evenness ? 0 : paddock.areaSquareMeters;
    const { openFrom, openUntil, shutFrom, shutUntil, restDays } = paddock;
    const key = isOwnKind ? String(p) : [area, openFrom, openUntil, shutFrom, shutUntil, restDays].join();
    if (!kinds.has(key)) kinds.set(key, kinds.size);
    return kinds.get(key)!;
  });
}
