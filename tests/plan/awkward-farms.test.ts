import { describe, expect, it } from 'vitest';
import { dayFromCivil } from '../../shared/core/calendar/day';
import type { Plan } from '../../shared/plan/model';
import { planRotation } from '../../shared/plan/plan-rotation';
import { AWKWARD_FARMS } from './awkward-farms';
import { checkPlan } from './check-plan';

const plans = new Map<string, Plan>();
function planOf(name: string): Plan {
  const known = plans.get(name);
  if (known) return known;
  const plan = planRotation(AWKWARD_FARMS[name]!.problem);
  if (!('stays' in plan)) throw new Error(plan.reason);
  plans.set(name, plan);
  return plan;
}

describe('awkward farms', () => {
  for (const [name, { story, problem }] of Object.entries(AWKWARD_FARMS)) {
    it(`${story} Every rule holds and the score is the checker's`, () => {
      const plan = planOf(name);
      const verdict = checkPlan(problem, plan.stays);
      expect(verdict.faults).toEqual([]);
      expect(plan.score).toEqual(verdict.score);
    });
  }

  it('nobody stands in the hay field before July, and it is used after', () => {
    const inHay = planOf('hayField').stays.filter((stay) => stay.paddock >= 5);
    expect(inHay.length).toBeGreaterThan(0);
    expect(Math.min(...inHay.map((stay) => stay.inDay))).toBeGreaterThanOrEqual(dayFromCivil(2026, 7, 6));
  });

  it('moves fall on Tuesdays and Saturdays, and none in the week without help', () => {
    const { problem } = AWKWARD_FARMS.twoMoveDays!;
    for (const { outDay } of planOf('twoMoveDays').stays) {
      if (outDay === problem.rules.seasonEnd) continue;
      expect([2, 6]).toContain(new Date(outDay * 86_400_000).getUTCDay());
      expect(problem.rules.noMoveDays).not.toContain(outDay);
    }
  });

  it('after the wet week the sows leave on the first Tuesday', () => {
    const sows = planOf('wetWeek').stays.find((stay) => stay.group === 0)!;
    // 2026-04-06 is a Monday (ISO calendar), so the first move day is Tuesday 2026-04-07.
    expect(sows).toMatchObject({ paddock: 2, outDay: dayFromCivil(2026, 4, 7) });
  });

  it('round the ring with a rest of seven stays, every move goes to a neighbour and no rest is missed', () => {
    // 8 paddocks × 7 days: each rests 49 days, as due. 182 days ÷ 7 = 26 stays is the least there can be.
    expect(planOf('ring').score).toEqual({
      total: 26,
      restShortDays: 0,
      overLimitDays: 0,
      moves: 26,
      strides: 0,
    });
  });

  it('groups come and go on their days', () => {
    const { stays } = planOf('comeAndGo');
    const days = (g: number): number[] =>
      stays.filter((stay) => stay.group === g).flatMap((s) => [s.inDay, s.outDay]);
    // 62 → 75 kg at 0.9 kg a day is 14.4 days, 75 → 100 at 0.917 is 27.3, 100 → 110 at 0.867 is 11.5: 53.2 → day 54
    // (NRC 2012 Table 16-1 gains, from memory).
    expect(Math.max(...days(0))).toBe(dayFromCivil(2026, 4, 6) + 54);
    expect(Math.min(...days(1))).toBe(dayFromCivil(2026, 5, 12));
    expect(Math.max(...days(2))).toBe(dayFromCivil(2026, 8, 3));
  });

  it('the winter plan has as few moves as the days allow', () => {
    // 154 days (15 November 2027 to 17 April 2028, leap day included) ÷ 14 days at most = 11 stays. No paddock is
    // needed twice, so no rest can be missed: 11 is the least score there is.
    expect(planOf('winter').score.total).toBe(11);
  });

  it('the same farm gives the same plan', () => {
    const name = 'twoGroupsElevenPaddocks';
    expect(planRotation(structuredClone(AWKWARD_FARMS[name]!.problem))).toEqual(planOf(name));
  });
});
