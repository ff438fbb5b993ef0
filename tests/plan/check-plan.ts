import type { PlanGroup, PlanProblem, PlanScore, Stay } from '../../shared/plan/model';
import {
  changeCost,
  dueAfter,
  isFarMove,
  overDaysOf,
  spanOf,
  stayFaults,
  tooLongOf,
  unevenPoints,
} from './stay-rules';

/**
 * An independent judge of plans: reads the rules from a day × group table and keeps the score by walking through
 * the season day by day. It shares nothing with the planner but the types.
 */
export interface Verdict {
  /** Every hard rule that is broken, in words; empty for a lawful plan. */
  readonly faults: readonly string[];
  readonly score: PlanScore;
}

export function checkPlan(problem: PlanProblem, stays: readonly Stay[]): Verdict {
  const faults: string[] = [];
  problem.groups.forEach((group, g) => {
    judgeGroup(
      problem,
      group,
      stays.filter((stay) => stay.group === g),
      faults,
    );
  });
  judgePaddocks(stays, faults);
  return { faults, score: keepScore(problem, stays) };
}

function judgeGroup(problem: PlanProblem, group: PlanGroup, own: readonly Stay[], faults: string[]): void {
  const fault = (text: string): void => void faults.push(`${group.name}: ${text}`);
  const [entry, end] = spanOf(problem, group);
  const sorted = [...own].sort((a, b) => a.inDay - b.inDay);
  const first = sorted[0];
  const last = sorted[sorted.length - 1];
  if (entry >= end) {
    if (first) fault('has stays but no days in the rotation');
    return;
  }
  if (first?.inDay !== entry) fault(`comes in on ${first?.inDay}, not ${entry}`);
  if (last?.outDay !== end) fault(`leaves on ${last?.outDay}, not ${end}`);
  for (const [i, stay] of sorted.entries()) {
    for (const text of stayFaults(problem, stay)) fault(text);
    const next = sorted[i + 1];
    if (next && next.inDay !== stay.outDay) fault(`gap between ${stay.outDay} and ${next.inDay}`);
    if (next && next.paddock === stay.paddock) fault(`goes from paddock ${stay.paddock} into the same`);
  }
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

/** Walks through the days, keeps for each paddock when it was left, and notes every point as it falls. */
function keepScore(problem: PlanProblem, stays: readonly Stay[]): PlanScore {
  const left = problem.paddocks.map((paddock) => paddock.lastUsed);
  const place = problem.groups.map(() => -1);
  let restShortDays = 0;
  let overLimitDays = 0;
  let moves = 0;
  let strides = 0;
  let tooLongDays = 0;
  let uneven = 0;
  let changes = 0;
  const unevenOf = unevenPoints(problem);
  const first = Math.min(...stays.map((stay) => stay.inDay));
  const last = Math.max(...stays.map((stay) => stay.outDay));
  for (let day = first; day <= last; day++) {
    for (const stay of stays) if (stay.outDay === day) left[stay.paddock] = day;
    for (const stay of stays) {
      if (stay.inDay !== day) continue;
      const group = problem.groups[stay.group]!;
      const paddock = problem.paddocks[stay.paddock]!;
      moves += 1;
      tooLongDays += tooLongOf(problem, stay);
      uneven += unevenOf(stay);
      changes += changeCost(problem, stay);
      overLimitDays += overDaysOf(problem, group, paddock, day, stay.outDay - day);
      const lastLeft = left[stay.paddock];
      const stoodThere = group.standing !== undefined && place[stay.group] === -1;
      if (lastLeft !== undefined && !stoodThere) {
        restShortDays += Math.max(0, dueAfter(problem, paddock, lastLeft) - (day - lastLeft));
      }
      const from = place[stay.group]!;
      if (from >= 0 && isFarMove(problem, from, stay.paddock)) strides += 1;
      place[stay.group] = stay.paddock;
    }
  }
  const total =
    10 * restShortDays + 10 * (overLimitDays + tooLongDays) + moves + 0.5 * strides + uneven + changes;
  return {
    total,
    restShortDays,
    overLimitDays,
    moves,
    strides,
    ...(tooLongDays > 0 && { tooLongDays }),
    ...(uneven > 0 && { unevenPoints: uneven }),
    ...(changes > 0 && { changePoints: changes }),
  };
}
