import { describe, expect, it } from 'vitest';
import { dayFromCivil } from '../../shared/core/calendar/day';
import { explainPlan } from '../../shared/plan/explain-plan';
import type { PlanProblem } from '../../shared/plan/model';
import { planRotation } from '../../shared/plan/plan-rotation';

const START = dayFromCivil(2026, 5, 4); // a Monday

function farm(paddocks: number, more: Partial<PlanProblem['rules']> = {}, groups = 1): PlanProblem {
  return {
    paddocks: Array.from({ length: paddocks }, (_, p) => ({ name: `P${p + 1}`, areaSquareMeters: 1000 })),
    groups: Array.from({ length: groups }, (_, g) => ({
      name: `G${g + 1}`,
      head: 10,
      weightKg: 50,
      weighedOn: START,
      dailyGainKg: 0,
      from: START,
    })),
    rules: {
      rest: { kind: 'fixed', days: 28 },
      shortestStayDays: 3,
      longestStayDays: 7,
      moveWeekdays: [true, true, true, true, true, true, true],
      noMoveDays: [],
      seasonStart: START,
      seasonEnd: START + 70,
      ...more,
    },
  };
}

describe('explainPlan', () => {
  it('says that nothing is wrong where nothing is', () => {
    // 28 days of rest and 7 days of stay need 5 paddocks; 70 days ÷ 7 = 10 moves.
    const problem = farm(5);
    expect(explainPlan(problem, planRotation(problem))).toEqual({
      score: ['Every paddock gets the rest it is due.', '10 moves in all.'],
      mend: undefined,
      changes: [],
    });
  });

  it('finds the paddock that is missing, the shorter rest and the longer stay', () => {
    // With 4 paddocks and 7 days a paddock rests 21 days, 7 short, on each of the 6 moves of 10 that come back. One
    // more paddock makes it 28; a rest of 21 days fits; stays of 10 days (7 moves) give 30.
    const problem = farm(4);
    const words = explainPlan(problem, planRotation(problem));
    expect(words.score[0]).toBe('Rest falls short on 6 moves, 7 days at most.');
    expect(words.changes.slice(0, 2)).toEqual([
      'one more paddock like the smallest',
      'a rest 7 days shorter',
    ]);
    expect(words.changes[2]).toBe('stays of up to 10 days');
    expect(words.mend).toBe(
      'One more paddock like the smallest, a rest 7 days shorter or stays of up to 10 days would close it.',
    );
  });

  it('finds how many pigs fewer the ground would bear', () => {
    // The ground bears 1.2 × 1000 m² = 1200 kg·day. 10 head × 50 kg × 3 days = 1500 and 9 head 1350 are too much, so
    // those would have to move after 2 days; but 12 paddocks × 2 days give 22 days of rest, not 28. 8 head × 50 kg ×
    // 3 days = 1200 is borne, and 12 paddocks × 3 days give 33.
    const problem = farm(12, { groundLimit: 1.2, shortestStayDays: 3, longestStayDays: 3 });
    const words = explainPlan(problem, planRotation(problem));
    expect(words.changes).toContain('2 fewer pigs');
  });
});

describe('no plan', () => {
  const noPlan = (problem: PlanProblem) => {
    const plan = planRotation(problem);
    if ('stays' in plan) throw new Error('a plan was found');
    return plan;
  };

  it('more groups than paddocks', () => {
    const plan = noPlan(farm(2, {}, 3));
    expect(plan.reason).toBe('On 2026-05-04 there are 3 groups in the rotation and 2 open paddocks.');
    expect(plan.mend).toMatch(/more paddock.* like the smallest would make a plan possible\.$/);
  });

  it('no move day within the longest stay', () => {
    // Mondays only: 7 days apart, stays of 3 to 5. A Wednesday would split the week into 2 and 5 days, 2 too short;
    // a Friday into 4 and 3.
    const plan = noPlan(
      farm(6, { longestStayDays: 5, moveWeekdays: [false, true, false, false, false, false, false] }),
    );
    expect(plan.reason).toBe(
      'G1 cannot be moved between 2026-05-04 and 2026-05-11, 7 days, and the longest stay is 5 days.',
    );
    expect(plan.mend).toBe('Moving on Fridays as well would make a plan possible.');
  });

  it('a day on which nothing is open', () => {
    const problem = farm(2);
    const closed = problem.paddocks.map((paddock) => ({ ...paddock, openUntil: START + 40 }));
    const plan = noPlan({ ...problem, paddocks: closed });
    expect(plan.reason).toBe('On 2026-06-14 there is 1 group in the rotation and 0 open paddocks.');
    expect(plan.mend).toBeDefined();
  });

  it('stays that no row of move days fits', () => {
    // Shortest 5 days, longest 6, moves only on Mondays and Wednesdays: 7, 2 or 5 days; then Wednesday → Monday is 5,
    // but Monday → Wednesday 2 and Monday → Monday 7.
    const plan = noPlan(
      farm(6, {
        shortestStayDays: 5,
        longestStayDays: 6,
        moveWeekdays: [false, true, false, true, false, false, false],
      }),
    );
    expect(plan.reason).toMatch(/^Even alone, G1 finds no row of stays/);
  });

  it('two groups that stand in the same paddock', () => {
    const problem = farm(6, {}, 2);
    const groups = problem.groups.map((group) => ({ ...group, standing: { paddock: 2, since: START - 2 } }));
    expect(noPlan({ ...problem, groups }).reason).toBe('G1 and G2 both stand in P3.');
  });

  it('no move day at all, for a group that already stands somewhere', () => {
    const problem = farm(6, { moveWeekdays: [false, false, false, false, false, false, false] });
    const groups = problem.groups.map((group) => ({ ...group, standing: { paddock: 2, since: START - 2 } }));
    const plan = noPlan({ ...problem, groups });
    expect(plan.reason).toBe(
      'G1 cannot be moved between 2026-05-04 and 2026-07-13, 70 days, and the longest stay is 7 days.',
    );
    expect(plan.mend).toMatch(/^Moving on \w+ as well would make a plan possible\.$/);
  });
});
