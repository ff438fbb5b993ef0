import type { PlanGroup, PlanProblem, RestRule } from './model';
import { OPEN_DAYS } from './open-days';
import * as words from './words';

/** A change to the farm that comes in steps: `apply(problem, n)` makes it n steps large, `most` at most. */
export interface PlanChange {
  readonly most: number;
  /** "two more paddocks like the smallest (Creek)" */
  readonly words: (n: number) => string;
  readonly apply: (n: number) => PlanProblem;
  /** "Use 8 days"; only where the rules alone change. */
  readonly button?: (n: number) => string;
}

const WEEKDAYS = ['Sundays', 'Mondays', 'Tuesdays', 'Wednesdays', 'Thursdays', 'Fridays', 'Saturdays'];
/** Order in which move days are offered: a working week first. */
const WEEKDAY_ORDER = [3, 5, 1, 4, 2, 6, 0];

/** n more paddocks like the one of median area. */
export function morePaddocks(problem: PlanProblem): PlanChange {
  const byArea = [...problem.paddocks].sort((a, b) => a.areaSquareMeters - b.areaSquareMeters);
  const median = byArea[(byArea.length - 1) >> 1];
  const areaSquareMeters = median?.areaSquareMeters ?? 0;
  return {
    most: median ? Math.max(12, problem.paddocks.length) : 0,
    words: (n) => words.morePaddocks(n, median!.name),
    apply: (n) => ({
      ...problem,
      paddocks: [
        ...problem.paddocks,
        ...Array.from({ length: n }, (_, i) => ({ name: `new ${i + 1}`, areaSquareMeters })),
      ],
    }),
  };
}

/**
 * n fewer pigs in one group, half of it at most: one change for each group, the heaviest first. Only the ground
 * limit feels it.
 */
export function fewerHead(problem: PlanProblem): PlanChange[] {
  if (problem.rules.groundLimit === undefined) return [];
  const order = problem.groups.map((group, g) => ({ group, g }));
  order.sort((a, b) => b.group.head * b.group.weightKg - a.group.head * a.group.weightKg);
  return order.map(({ group, g }) => ({
    most: Math.floor(group.head / 2),
    words: (n) => words.fewerPigs(n, group.name),
    apply: (n) => ({
      ...problem,
      groups: problem.groups.map((other, i) => (i === g ? withFewer(group, n) : other)),
    }),
  }));
}

function withFewer(group: PlanGroup, n: number): PlanGroup {
  const fewer = (head: number): number => Math.max(0, head - n);
  const herd = group.herd?.map((step) =>
    step.head === undefined ? step : { ...step, head: fewer(step.head) },
  );
  return { ...group, head: fewer(group.head), ...(herd && { herd }) };
}

/**
 * Shortest rest that is ever offered, in days.
 *
 * Source: MLA (Australia), rest periods for pasture: generally not under 20 days in spring (published).
 */
const SHORTEST_REST_OFFERED = 20;

/** Every rest n days shorter, the longest of them never below what ground needs at the least. */
export function shorterRest(problem: PlanProblem): PlanChange {
  const { rest } = problem.rules;
  const own = problem.paddocks.map((paddock) => paddock.restDays ?? 0);
  return {
    most: Math.max(0, Math.ceil(Math.max(...own, longestRest(rest))) - SHORTEST_REST_OFFERED),
    words: words.shorterRest,
    ...(own.every((days) => days === 0) && { button: words.useRest }),
    apply: (n) => ({
      ...problem,
      paddocks: problem.paddocks.map((paddock) =>
        paddock.restDays === undefined
          ? paddock
          : { ...paddock, restDays: Math.max(0, paddock.restDays - n) },
      ),
      rules: { ...problem.rules, rest: restShortenedBy(rest, n) },
    }),
  };
}

/** The longest stay n days longer. */
export function longerStay(problem: PlanProblem): PlanChange {
  const { longestStayDays } = problem.rules;
  return {
    most: Math.max(7, longestStayDays),
    words: (n) => words.longerStays(longestStayDays + n),
    button: (n) => `Use ${longestStayDays + n} days`,
    apply: (n) => ({ ...problem, rules: { ...problem.rules, longestStayDays: longestStayDays + n } }),
  };
}

/** One more weekday for moves: one change for each weekday not yet used. */
export function moreMoveDays(problem: PlanProblem): PlanChange[] {
  return WEEKDAY_ORDER.filter((day) => !problem.rules.moveWeekdays[day]).map((day) => ({
    most: 1,
    words: () => words.movingAlso(WEEKDAYS[day]!),
    button: () => words.moveAlso(WEEKDAYS[day]!),
    apply: () => ({
      ...problem,
      rules: { ...problem.rules, moveWeekdays: problem.rules.moveWeekdays.map((yes, d) => yes || d === day) },
    }),
  }));
}

/** The rotation without one of the groups: one change for each. */
export function withoutGroup(problem: PlanProblem): PlanChange[] {
  return problem.groups.map(({ name }, g) => ({
    most: problem.groups.length > 1 ? 1 : 0,
    words: () => words.keptOut(name),
    apply: () => ({ ...problem, groups: problem.groups.filter((_, other) => other !== g) }),
  }));
}

/** A paddock open all season: one change for each that has open dates. */
export function wholeSeasonOpen(problem: PlanProblem): PlanChange[] {
  return problem.paddocks.flatMap((paddock, p) => {
    if (OPEN_DAYS.every((field) => paddock[field] === undefined)) return [];
    const { openFrom: _1, openUntil: _2, shutFrom: _3, shutUntil: _4, ...open } = paddock;
    return {
      most: 1,
      words: () => words.openAllSeason(paddock.name),
      apply: () => ({ ...problem, paddocks: problem.paddocks.map((other, q) => (q === p ? open : other)) }),
    };
  });
}

function longestRest(rest: RestRule): number {
  if (rest.kind === 'fixed') return rest.days;
  return rest.kind === 'monthly' ? Math.max(...rest.days) : 0;
}

/** Forage grows as it does: its rest cannot be set shorter. */
function restShortenedBy(rest: RestRule, n: number): RestRule {
  if (rest.kind === 'fixed') return { ...rest, days: Math.max(0, rest.days - n) };
  if (rest.kind === 'monthly') return { ...rest, days: rest.days.map((days) => Math.max(0, days - n)) };
  return rest;
}
