import type { PlanGroup, PlanPaddock, PlanProblem, Stay } from '../../shared/plan/model';

/*
 * The rules that concern one stay or one paddock, as the independent checker reads them. Nothing here comes from
 * the planner but the types; days of the week and months come from JavaScript's own Date.
 */

/**
 * Mean daily gain by weight band: National Research Council, Nutrient Requirements of Swine (2012), Table 16-1
 * (from memory): upper weight of the band in kg, gain in kg a day.
 */
const GAINS: readonly [number, number][] = [
  [7, 0.21],
  [11, 0.335],
  [25, 0.585],
  [50, 0.758],
  [75, 0.9],
  [100, 0.917],
  [Infinity, 0.867],
];

/** Small steps forward in time, band edges met exactly; backwards by bisection on the starting weight. */
function weightOn(group: PlanGroup, day: number): number {
  const days = day - group.weighedOn;
  if (group.dailyGainKg !== undefined) return Math.max(0, group.weightKg + days * group.dailyGainKg);
  if (days >= 0) return grow(group.weightKg, days);
  let low = -1000;
  let high = group.weightKg;
  for (let i = 0; i < 80; i++) {
    const middle = (low + high) / 2;
    if (grow(middle, -days) < group.weightKg) low = middle;
    else high = middle;
  }
  return Math.max(0, (low + high) / 2);
}

function grow(start: number, days: number): number {
  let weight = start;
  let left = days;
  while (left > 1e-12) {
    const [edge, gain] = GAINS.find(([upTo]) => weight < upTo - 1e-12)!;
    const step = Math.min(left, (edge - weight) / gain);
    weight += step * gain;
    left -= step;
  }
  return weight;
}

function dateOf(day: number): Date {
  return new Date(day * 86_400_000);
}

/** Entry and end of a group; the same day where it is never in the rotation. */
export function spanOf(problem: PlanProblem, group: PlanGroup): [number, number] {
  const { seasonStart, seasonEnd } = problem.rules;
  const entry = group.standing ? group.standing.since : Math.max(group.from, seasonStart);
  let end = seasonEnd;
  if (group.until !== undefined && group.until < end) end = group.until;
  if (group.untilWeightKg !== undefined) {
    for (let day = entry; day < end; day++) {
      if (weightOn(group, day) >= group.untilWeightKg) end = day;
    }
  }
  return end <= seasonStart ? [entry, entry] : [entry, end];
}

function isMoveDay(problem: PlanProblem, day: number): boolean {
  return problem.rules.moveWeekdays[dateOf(day).getUTCDay()]! && !problem.rules.noMoveDays.includes(day);
}

/** Days of a stay over the ground limit. */
export function overDaysOf(
  problem: PlanProblem,
  group: PlanGroup,
  paddock: PlanPaddock,
  inDay: number,
  days: number,
) {
  const { groundLimit } = problem.rules;
  if (groundLimit === undefined) return 0;
  let sum = 0;
  let over = 0;
  for (let k = 0; k < days; k++) {
    sum += group.head * weightOn(group, inDay + k + 0.5);
    if (sum / paddock.areaSquareMeters > groundLimit * (1 + 1e-9)) over += 1;
  }
  return over;
}

/** Days beyond the longest stay that lie in the plan. */
export function tooLongOf({ rules }: PlanProblem, stay: Stay): number {
  let days = 0;
  for (let day = Math.max(stay.inDay, rules.seasonStart); day < stay.outDay; day++) {
    if (day - stay.inDay >= rules.longestStayDays) days += 1;
  }
  return days;
}

/** Liveweight-days per area of a stay, summed day by day. */
function loadOf(problem: PlanProblem, stay: Stay): number {
  const group = problem.groups[stay.group]!;
  let sum = 0;
  for (let day = stay.inDay; day < stay.outDay; day++) sum += group.head * weightOn(group, day + 0.5);
  return sum / problem.paddocks[stay.paddock]!.areaSquareMeters;
}

/** The even share, walked through day by day from its definition in the model. */
function shareOf(problem: PlanProblem): number {
  const { seasonStart, seasonEnd } = problem.rules;
  let kilograms = 0;
  let groups = 0;
  let rest = 0;
  for (let day = seasonStart; day < seasonEnd; day++) {
    for (const group of problem.groups) {
      const [entry, end] = spanOf(problem, group);
      if (day < entry || day >= end) continue;
      groups += 1;
      kilograms += group.head * weightOn(group, day + 0.5);
    }
    for (const paddock of problem.paddocks) rest += dueAfter(problem, paddock, day) / problem.paddocks.length;
  }
  const days = seasonEnd - seasonStart;
  const n = problem.paddocks.length;
  const round = (Math.max(1, rest / days) * n) / Math.max(1, n - groups / days);
  const area = problem.paddocks.reduce((sum, paddock) => sum + paddock.areaSquareMeters, 0);
  return ((kilograms / days) * round) / area;
}

/** Points of each stay for uneven use; the share is worked out once. */
export function unevenPoints(problem: PlanProblem): (stay: Stay) => number {
  const { evenness } = problem.rules;
  if (!evenness) return () => 0;
  const share = problem.evenShare ?? shareOf(problem);
  return (stay) => evenness * (loadOf(problem, stay) / share) ** 2;
}

/** A group that stands somewhere may always leave on the first day on which it can be moved at all. */
function leavesAtOnce(problem: PlanProblem, stay: Stay, end: number): boolean {
  for (let day = Math.max(stay.inDay + 1, problem.rules.seasonStart); day < stay.outDay; day++) {
    if (isMoveDay(problem, day)) return false;
  }
  if (stay.outDay === end) return true;
  return isMoveDay(problem, stay.outDay);
}

/** Every hard rule that one stay breaks by itself. */
export function stayFaults(problem: PlanProblem, stay: Stay): string[] {
  const { rules } = problem;
  const group = problem.groups[stay.group]!;
  const paddock = problem.paddocks[stay.paddock];
  if (!paddock) return [`stands in paddock ${stay.paddock}, which is not there`];
  const faults: string[] = [];
  const [entry, end] = spanOf(problem, group);
  const standing = stay.inDay === entry ? group.standing : undefined;
  if (![stay.inDay, stay.outDay].every(Number.isInteger)) faults.push('moves on a part of a day');
  if (stay.outDay <= stay.inDay) faults.push('stays no day');
  if (stay.outDay !== end && !isMoveDay(problem, stay.outDay))
    faults.push(`moves on ${stay.outDay}, no move day`);
  if (standing) {
    if (stay.paddock !== standing.paddock) faults.push('does not begin where it stands');
    if (stay.outDay < rules.seasonStart) faults.push('moves in the past');
    if (leavesAtOnce(problem, stay, end)) return faults;
  }
  const days = stay.outDay - stay.inDay;
  const pressed = overDaysOf(problem, group, paddock, stay.inDay, rules.shortestStayDays) > 0;
  if (days > rules.longestStayDays) {
    // Lawful only where nobody could have moved the group sooner.
    for (let day = stay.inDay + (pressed ? 1 : rules.shortestStayDays); day < stay.outDay; day++) {
      if (!isMoveDay(problem, day)) continue;
      faults.push(`stays ${days} days in ${paddock.name}`);
      break;
    }
  }
  if (days < rules.shortestStayDays && stay.outDay !== end && !pressed)
    faults.push(`stays only ${days} days`);
  for (let day = standing ? Math.max(stay.inDay, rules.seasonStart) : stay.inDay; day < stay.outDay; day++) {
    const early = !standing && paddock.openFrom !== undefined && day < paddock.openFrom;
    const { shutFrom, shutUntil } = paddock;
    const shut =
      (shutFrom !== undefined || shutUntil !== undefined) &&
      !(shutFrom !== undefined && day < shutFrom) &&
      !(shutUntil !== undefined && day > shutUntil);
    if (early || shut || (paddock.openUntil !== undefined && day > paddock.openUntil)) {
      faults.push(`stands in ${paddock.name} on ${day}, when it is closed`);
      break;
    }
  }
  return faults;
}

/** Rest due for a paddock left on a day. */
export function dueAfter(problem: PlanProblem, paddock: PlanPaddock, left: number): number {
  if (paddock.restDays !== undefined) return Math.ceil(paddock.restDays);
  const rule = problem.rules.rest;
  if (rule.kind === 'fixed') return Math.ceil(rule.days);
  if (rule.kind === 'monthly') return Math.ceil(rule.days[dateOf(left).getUTCMonth()]!);
  let missing = rule.needed;
  let days = 0;
  for (let day = left; missing > 1e-9 && days < 730; day++) {
    missing -= rule.growth[dateOf(day).getUTCMonth()]!;
    days += 1;
  }
  return days;
}

/** Whether a move is one to a paddock that is known not to adjoin. */
export function isFarMove(problem: PlanProblem, left: number, entered: number): boolean {
  const there = problem.paddocks[left]!.adjoins;
  const here = problem.paddocks[entered]!.adjoins;
  if (there === undefined && here === undefined) return false;
  return !(there?.includes(entered) === true || here?.includes(left) === true);
}

/** A move that is not in the plan before: 0.2 in the first 28 days, then 0.05; where a group stands already it is none. */
export function changeCost(problem: PlanProblem, stay: Stay): number {
  const standing = problem.groups[stay.group]!.standing;
  if (!problem.before || standing?.since === stay.inDay) return 0;
  for (const old of problem.before) {
    if (old.group === stay.group && old.inDay === stay.inDay && old.paddock === stay.paddock) return 0;
  }
  return stay.inDay - problem.rules.seasonStart < 28 ? 0.2 : 0.05;
}
