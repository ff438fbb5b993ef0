import type { PlanGroup, PlanPaddock, PlanProblem, PlanScore, Stay } from '../../shared/plan/model';

/**
 * An independent judge of plans: reads the rules from a day × group table and keeps the score by walking through
 * the season day by day. It shares nothing with the planner but the types.
 */
export interface Verdict {
  /** Every hard rule that is broken, in words; empty for a lawful plan. */
  readonly faults: readonly string[];
  readonly score: PlanScore;
}

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

export function checkPlan(problem: PlanProblem, stays: readonly Stay[]): Verdict {
  const faults: string[] = [];
  problem.groups.forEach((group, g) => {
    judgeGroup(
      problem,
      group,
      g,
      stays.filter((stay) => stay.group === g),
      faults,
    );
  });
  judgePaddocks(stays, faults);
  return { faults, score: keepScore(problem, stays) };
}

function spanOf(problem: PlanProblem, group: PlanGroup): [number, number] {
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

function overDaysOf(
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

function judgeGroup(problem: PlanProblem, group: PlanGroup, own: readonly Stay[], faults: string[]): void {
  const { rules, paddocks } = problem;
  const fault = (text: string): void => void faults.push(`${group.name}: ${text}`);
  const [entry, end] = spanOf(problem, group);
  const sorted = [...own].sort((a, b) => a.inDay - b.inDay);
  if (entry >= end) {
    if (sorted.length > 0) fault('has stays but no days in the rotation');
    return;
  }
  if (sorted.length === 0) {
    fault('has no stays');
    return;
  }
  if (sorted[0]!.inDay !== entry) fault(`comes in on ${sorted[0]!.inDay}, not ${entry}`);
  if (sorted[sorted.length - 1]!.outDay !== end)
    fault(`leaves on ${sorted[sorted.length - 1]!.outDay}, not ${end}`);
  sorted.forEach((stay, i) => {
    const next = sorted[i + 1];
    const paddock = paddocks[stay.paddock];
    if (!paddock) {
      fault(`stands in paddock ${stay.paddock}, which is not there`);
      return;
    }
    if (![stay.inDay, stay.outDay].every(Number.isInteger)) fault('moves on a part of a day');
    if (stay.outDay <= stay.inDay) fault('stays no day');
    if (next && next.inDay !== stay.outDay) fault(`gap between ${stay.outDay} and ${next.inDay}`);
    if (next && next.paddock === stay.paddock) fault(`stays on in ${paddock.name}`);
    if (stay.outDay !== end && !isMoveDay(problem, stay.outDay))
      fault(`moves on ${stay.outDay}, no move day`);
    const standing = i === 0 ? group.standing : undefined;
    if (standing) {
      if (stay.paddock !== standing.paddock) fault('does not begin where it stands');
      if (stay.outDay < rules.seasonStart) fault('moves in the past');
      if (leavesAtOnce(problem, stay, end)) return;
    }
    const days = stay.outDay - stay.inDay;
    if (days > rules.longestStayDays) fault(`stays ${days} days in ${paddock.name}`);
    const pressed = overDaysOf(problem, group, paddock, stay.inDay, rules.shortestStayDays) > 0;
    if (days < rules.shortestStayDays && stay.outDay !== end && !pressed) fault(`stays only ${days} days`);
    for (
      let day = Math.max(stay.inDay, standing ? rules.seasonStart : stay.inDay);
      day < stay.outDay;
      day++
    ) {
      const early = !standing && paddock.openFrom !== undefined && day < paddock.openFrom;
      if (early || (paddock.openUntil !== undefined && day > paddock.openUntil)) {
        fault(`stands in ${paddock.name} on ${day}, when it is closed`);
        break;
      }
    }
  });
}

/** A group that stands somewhere may always leave on the first day on which it can be moved at all. */
function leavesAtOnce(problem: PlanProblem, stay: Stay, end: number): boolean {
  for (let day = Math.max(stay.inDay + 1, problem.rules.seasonStart); day < stay.outDay; day++) {
    if (isMoveDay(problem, day)) return false;
  }
  return stay.outDay === end || isMoveDay(problem, stay.outDay);
}

function judgePaddocks(stays: readonly Stay[], faults: string[]): void {
  const taken = new Map<string, number>();
  for (const stay of stays) {
    for (let day = stay.inDay; day < stay.outDay; day++) {
      const key = `${stay.paddock}/${day}`;
      const other = taken.get(key);
      if (other !== undefined)
        faults.push(`groups ${other} and ${stay.group} share paddock ${stay.paddock} on ${day}`);
      taken.set(key, stay.group);
    }
  }
}

function dueAfter(problem: PlanProblem, paddock: PlanPaddock, left: number): number {
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

/** Walks through the days, keeps for each paddock when it was left, and notes every point as it falls. */
function keepScore(problem: PlanProblem, stays: readonly Stay[]): PlanScore {
  const left = problem.paddocks.map((paddock) => paddock.lastUsed);
  const place = problem.groups.map(() => -1);
  let restShortDays = 0;
  let overLimitDays = 0;
  let moves = 0;
  let strides = 0;
  const first = Math.min(...stays.map((stay) => stay.inDay));
  const last = Math.max(...stays.map((stay) => stay.outDay));
  for (let day = first; day <= last; day++) {
    for (const stay of stays) if (stay.outDay === day) left[stay.paddock] = day;
    for (const stay of stays) {
      if (stay.inDay !== day) continue;
      const group = problem.groups[stay.group]!;
      const paddock = problem.paddocks[stay.paddock]!;
      moves += 1;
      overLimitDays += overDaysOf(problem, group, paddock, day, stay.outDay - day);
      const lastLeft = left[stay.paddock];
      const stoodThere = group.standing !== undefined && place[stay.group] === -1;
      if (lastLeft !== undefined && !stoodThere) {
        restShortDays += Math.max(0, dueAfter(problem, paddock, lastLeft) - (day - lastLeft));
      }
      const from = place[stay.group]!;
      if (from >= 0) {
        const there = problem.paddocks[from]!.adjoins;
        const here = paddock.adjoins;
        const known = there !== undefined || here !== undefined;
        const touch = there?.includes(stay.paddock) === true || here?.includes(from) === true;
        if (known && !touch) strides += 1;
      }
      place[stay.group] = stay.paddock;
    }
  }
  const total = 10 * restShortDays + 10 * overLimitDays + moves + 0.5 * strides;
  return { total, restShortDays, overLimitDays, moves, strides };
}
