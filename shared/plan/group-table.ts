import { changePoints } from './change-points';
import { groupSpan } from './group-span';
import { groupLoadOn } from './group-weights';
import { keepWishes, wishedOuts } from './keep-wishes';
import type { PlanProblem } from './model';
import { NEVER } from './never';
import { closesAfter, isOpen } from './open-days';

const ROUNDING = 1e-9;

/** What the search looks up about one group; days are counted from the season start. */
export interface GroupTable {
  /** First day on which the group needs a paddock to enter; for a standing group the choices are below. */
  readonly entry: number;
  readonly end: number;
  /** Typical stay in days, for guesses: within the ground limit, and as long as the rules let it. */
  readonly usualStay: number;
  readonly longStay: number;
  /** Days on which a stay may end, in rising order: the move days before the group's end, and its end. */
  readonly outs: Int32Array;
  /**
   * The stays that may begin, for [paddock · (days + 1) + in day]: they end on outs[firstOut] … outs[afterOut − 1].
   * Every rule about one stay alone is in these ranges.
   */
  readonly firstOut: Int32Array;
  readonly afterOut: Int32Array;
  /** Whole days within the ground limit, for the same. */
  readonly withinLimit: Int32Array;
  /** Points for entering, for the same: none but for moves that are not in the plan before; absent: none at all. */
  readonly entryPoints?: Float64Array;
  /** loads[day − loadsFrom]: liveweight-days of the group from day loadsFrom to before `day`. */
  readonly loads: Float64Array;
  readonly loadsFrom: number;
  /** Where it stands: paddock, since when, and the days on which it may leave, each with days over the limit or too long. */
  readonly standing?: {
    readonly paddock: number;
    readonly outs: readonly number[];
    readonly flawed: readonly number[];
  };
}

/** The choices of one group; `moveDays` in rising order, days after the season start. */
export function groupTable(
  problem: PlanProblem,
  g: number,
  days: number,
  moveDays: Int32Array,
  flawless: boolean,
): GroupTable {
  const { paddocks, rules } = problem;
  const group = problem.groups[g]!;
  const start = rules.seasonStart;
  const span = groupSpan(group, rules);
  const first = Math.min(span.entry, start);
  const loads = new Float64Array(start + days - first + rules.longestStayDays + 1);
  for (let i = 1; i < loads.length; i++) loads[i] = loads[i - 1]! + groupLoadOn(group, first + i - 1);
  const within = (paddock: number, inDay: number): number => {
    const limit = rules.groundLimit;
    if (limit === undefined) return NEVER;
    const borne = limit * paddocks[paddock]!.areaSquareMeters * (1 + ROUNDING);
    const from = loads[start + inDay - first]!;
    let low = 0;
    let high = loads.length - 1 - (start + inDay - first);
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (loads[start + inDay - first + middle]! - from <= borne) low = middle;
      else high = middle - 1;
    }
    return low;
  };
  const entry = span.entry - start;
  const end = span.end - start;
  const outs = Int32Array.from([...moveDays.filter((day) => day < end), end]);
  const { firstOut, afterOut, withinLimit } = stayRanges(problem, days, entry, outs, within, flawless);
  const longStay = longStayDays(problem, moveDays);
  const usualStay = usualStayDays(problem, longStay, withinLimit);
  const loadsFrom = first - start;
  keepWishes(problem, g, days, { outs, firstOut, afterOut });
  const entryPoints = entryPointsOf(problem, g, days);
  const table = { entry, end, usualStay, longStay, outs, firstOut, afterOut, withinLimit, loads, loadsFrom };
  const base = entryPoints ? { ...table, entryPoints } : table;
  if (!group.standing || entry >= end) return base;
  const p = group.standing.paddock;
  const isWished = wishedOuts(problem, g, span.entry, p);
  const wished = problem.wishes?.find((wish) => wish.group === g && wish.day === span.entry)?.days;
  const leaves = standingOuts(problem, p, entry, end, within(p, entry), moveDays, wished).filter((out) =>
    isWished(out + start),
  );
  const flawed = leaves.map((out) => {
    const over = Math.max(0, out - entry - within(p, entry));
    // What has happened costs nothing: only the days still ahead count as too long.
    const tooLong = Math.max(0, out - Math.max(entry + problem.rules.longestStayDays, 0));
    return over + tooLong;
  });
  return { ...base, standing: { paddock: p, outs: leaves, flawed } };
}

function entryPointsOf(problem: PlanProblem, g: number, days: number): Float64Array | undefined {
  if (!problem.before) return undefined;
  const points = changePoints(problem);
  return Float64Array.from({ length: problem.paddocks.length * (days + 1) }, (_, i) =>
    points({
      group: g,
      paddock: Math.floor(i / (days + 1)),
      inDay: problem.rules.seasonStart + (i % (days + 1)),
    }),
  );
}

function stayRanges(
  { paddocks, rules }: PlanProblem,
  days: number,
  entry: number,
  outs: Int32Array,
  within: (paddock: number, inDay: number) => number,
  flawless: boolean,
): Pick<GroupTable, 'firstOut' | 'afterOut' | 'withinLimit'> {
  const size = paddocks.length * (days + 1);
  const firstOut = new Int32Array(size);
  const afterOut = new Int32Array(size);
  const withinLimit = new Int32Array(size);
  const end = outs[outs.length - 1]!;
  const position = new Int32Array(days + 2);
  for (let day = 0, at = 0; day < position.length; day++) {
    while (at < outs.length && outs[at]! < day) at += 1;
    position[day] = at;
  }
  const firstAtOrAfter = (day: number): number => position[Math.min(day, days + 1)]!;
  for (const [p, paddock] of paddocks.entries()) {
    for (let day = Math.max(0, entry); day < end; day++) {
      if (!isOpen(paddock, rules.seasonStart + day)) continue;
      const i = p * (days + 1) + day;
      withinLimit[i] = within(p, day);
      const shortest = withinLimit[i]! < rules.shortestStayDays ? 1 : rules.shortestStayDays;
      firstOut[i] = Math.min(firstAtOrAfter(day + shortest), outs.length - 1);
      const closes = closesAfter(paddock, rules.seasonStart + day) - rules.seasonStart;
      // A stretch without move days that is longer than the longest stay lengthens the stay over it.
      const latest = Math.min(Math.max(day + rules.longestStayDays, outs[firstOut[i]!]!), closes);
      const borne = flawless ? day + Math.min(withinLimit[i]!, rules.longestStayDays) : NEVER;
      const last = Math.min(latest, borne);
      afterOut[i] = last <= day ? 0 : firstAtOrAfter(last + 1);
    }
  }
  return { firstOut, afterOut, withinLimit };
}

/** The longest stay that move days allow on the mean. */
function longStayDays({ rules }: PlanProblem, moveDays: Int32Array): number {
  const last = moveDays[moveDays.length - 1] ?? 0;
  const gap = moveDays.length > 1 ? (last - moveDays[0]!) / (moveDays.length - 1) : 1;
  return Math.max(1, rules.longestStayDays - (gap - 1) / 2);
}

/** The same, but no longer than the mean paddock bears. */
function usualStayDays({ rules }: PlanProblem, longStay: number, withinLimit: Int32Array): number {
  if (rules.groundLimit === undefined) return longStay;
  let sum = 0;
  let count = 0;
  for (const days of withinLimit) {
    sum += days;
    if (days > 0) count += 1;
  }
  const mean = sum / Math.max(1, count);
  return Math.max(1, Math.min(longStay, Math.max(mean, rules.shortestStayDays)));
}

/**
 * Days on which a standing group may leave: after the days that the grower wishes, be they long; as the rules say; else
 * the first move day there is, or its end.
 */
function standingOuts(
  problem: PlanProblem,
  paddock: number,
  entry: number,
  end: number,
  within: number,
  moveDays: Int32Array,
  wishedDays: number | undefined,
): number[] {
  const { rules } = problem;
  const shortest = within < rules.shortestStayDays ? 1 : rules.shortestStayDays;
  const shut = closesAfter(problem.paddocks[paddock]!, rules.seasonStart + entry) - rules.seasonStart;
  const wished = wishedDays === undefined ? NEVER : entry + wishedDays;
  if (wished >= 0 && wished <= Math.min(end, shut)) return [wished];
  const latest = Math.min(entry + rules.longestStayDays, shut);
  const outs = [...moveDays].filter((day) => day >= entry + shortest && day <= latest && day < end);
  if (end <= latest) outs.push(end);
  if (outs.length > 0) return outs;
  const first = [...moveDays].find((day) => day > entry && day < end);
  return [first ?? end];
}
