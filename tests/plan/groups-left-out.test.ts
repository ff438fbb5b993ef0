/** Groups that are on no day in the rotation are told with the reason. Invented groups; days by hand. */
import { describe, expect, it } from 'vitest';
import { dayFromIso } from '../../shared/core/calendar/day';
import { groupsLeftOut } from '../../shared/plan/groups-left-out';
import type { PlanGroup, PlanProblem } from '../../shared/plan/model';

const day = (iso: string): number => dayFromIso(iso)!;
const GROUP: PlanGroup = {
  name: 'Reds',
  head: 10,
  weightKg: 30,
  weighedOn: day('2026-04-20'),
  from: day('2026-04-20'),
  dailyGainKg: 0.5,
};

function leftOut(...groups: Partial<PlanGroup>[]): string[] {
  const problem: PlanProblem = {
    groups: groups.map((group) => ({ ...GROUP, ...group })),
    paddocks: [],
    rules: {
      rest: { kind: 'fixed', days: 20 },
      shortestStayDays: 3,
      longestStayDays: 6,
      moveWeekdays: Array<boolean>(7).fill(true),
      noMoveDays: [],
      seasonStart: day('2026-04-20'),
      seasonEnd: day('2026-10-31'),
    },
  };
  return groupsLeftOut(problem);
}

describe('groups that are not in the plan', () => {
  it('none where each has a day', () => {
    expect(leftOut({}, { until: day('2026-04-21') }, { untilWeightKg: 30.4 })).toEqual([]);
  });

  it('says why: weight to leave at, left, not yet in', () => {
    expect(
      leftOut(
        { name: 'Heavy', weightKg: 120, untilWeightKg: 110 },
        { name: 'Old', from: day('2024-04-20'), until: day('2024-09-01') },
        { name: 'Later', from: day('2027-04-20') },
      ),
    ).toEqual([
      '“Heavy” is not in the plan: on 2026-04-20 it has the weight at which it leaves already.',
      '“Old” is not in the plan: it leaves on 2024-09-01, before the first day to plan.',
      '“Later” is not in the plan: it comes in on 2027-04-20, after the season has ended.',
    ]);
  });
});
