import type { Day } from '../core/calendar/day';
import { groupSpan } from './group-span';
import type { PlanGroup, PlanPaddock, PlanProblem, Stay } from './model';

/**
 * The problem of the rest of the season, from what really happened: plan it with planRotation as any other.
 *
 * - The plan begins `today`, or on the season start if that is still to come.
 * - `pastStays` are the real stays, in any order, each with the day the group came in. A group's latest stay that
 *   began on or before today is where it stands; its outDay does not matter. The earlier ones ended when
 *   the next one of the group began, whatever outDay they carry: that is what happened.
 * - Each paddock was last used when the last real stay in it ended, or on its `lastUsed` if that is later. The
 *   stays that still go on do not count as a use yet.
 * - A group without a real stay comes in as planned, today at the earliest. A group whose time in the rotation
 *   is over stands nowhere; its last stay ended on its last day.
 *
 * Stays that begin after today are left out: they have not happened. Positions of paddocks and groups stay the same,
 * so that stays of the old and the new plan can be laid side by side.
 */
export function problemFromNow(problem: PlanProblem, pastStays: readonly Stay[], today: Day): PlanProblem {
  const start = Math.max(today, problem.rules.seasonStart);
  const happened = pastStays.filter((stay) => stay.inDay <= today);
  const left = new Map<number, Day>();
  const groups = problem.groups.map((group, g) => {
    const own = happened.filter((stay) => stay.group === g).sort((a, b) => a.inDay - b.inDay);
    const current = own[own.length - 1];
    const { standing: typed, ...rest } = group;
    if (!current) return typed ? group : rest;
    const end = groupSpan(
      { ...rest, from: own[0]!.inDay },
      { ...problem.rules, seasonStart: own[0]!.inDay },
    ).end;
    const gone = end <= start;
    own.forEach((stay, i) => {
      const next = own[i + 1];
      if (next || gone) noteUse(left, stay.paddock, next ? next.inDay : end);
    });
    return withPlace(rest, gone ? undefined : { paddock: current.paddock, since: current.inDay });
  });
  return {
    paddocks: problem.paddocks.map((paddock, p) => withLastUse(paddock, left.get(p))),
    groups,
    rules: { ...problem.rules, seasonStart: start },
  };
}

function noteUse(left: Map<number, Day>, paddock: number, day: Day): void {
  left.set(paddock, Math.max(left.get(paddock) ?? day, day));
}

function withPlace(group: PlanGroup, standing: PlanGroup['standing']): PlanGroup {
  return standing ? { ...group, standing } : group;
}

function withLastUse(paddock: PlanPaddock, left: Day | undefined): PlanPaddock {
  if (left === undefined) return paddock;
  return { ...paddock, lastUsed: Math.max(left, paddock.lastUsed ?? left) };
}
