import { describe, expect, it } from 'vitest';
import { planRotation } from '../../shared/plan/plan-rotation';
import { problemFromNow } from '../../shared/plan/problem-from-now';
import { AWKWARD_FARMS } from './awkward-farms';
import { checkPlan } from './check-plan';

const { problem } = AWKWARD_FARMS.hayField!;
const start = problem.rules.seasonStart;

describe('problemFromNow', () => {
  const past = [
    { group: 0, paddock: 4, inDay: start, outDay: start + 7 },
    // Came in two days late, so paddock 4 was left on day 9, whatever its stay says.
    { group: 0, paddock: 1, inDay: start + 9, outDay: start + 16 },
    // Planned only: not yet happened.
    { group: 0, paddock: 2, inDay: start + 16, outDay: start + 23 },
  ];
  const now = problemFromNow(problem, past, start + 12);

  it('stands where the last real move led, and knows when each paddock was left', () => {
    expect(now.groups[0]!.standing).toEqual({ paddock: 1, since: start + 9 });
    expect(now.paddocks.map((paddock) => paddock.lastUsed)).toEqual([
      undefined,
      undefined,
      undefined,
      undefined,
      start + 9,
      undefined,
      undefined,
    ]);
    expect(now.rules.seasonStart).toBe(start + 12);
  });

  it('plans the rest of the season lawfully, from there on', () => {
    const plan = planRotation(now);
    if (!('stays' in plan)) throw new Error(plan.reason);
    expect(checkPlan(now, plan.stays).faults).toEqual([]);
    expect(plan.stays[0]).toMatchObject({ paddock: 1, inDay: start + 9 });
    expect(plan.stays[0]!.outDay).toBeGreaterThanOrEqual(start + 12);
  });

  it('lets a group that is gone stand nowhere, its paddock left on its last day', () => {
    const leaves = { ...problem, groups: [{ ...problem.groups[0]!, until: start + 11 }] };
    const gone = problemFromNow(leaves, past, start + 12);
    expect(gone.groups[0]!.standing).toBeUndefined();
    expect(gone.paddocks[1]!.lastUsed).toBe(start + 11);
    expect(planRotation(gone)).toMatchObject({ stays: [] });
  });

  it('changes nothing before the first real move', () => {
    expect(problemFromNow(problem, [], start - 5)).toEqual(problem);
  });
});
