import { describe, expect, it } from 'vitest';
import { dayWords } from '../../shared/core/calendar/day-words';
import { explainPlan } from '../../shared/plan/explain-plan';
import type { PlanProblem } from '../../shared/plan/model';
import { planRotation } from '../../shared/plan/plan-rotation';
import { checkPlan } from './check-plan';
import { plainFarm, START } from './plain-farm';

function farm(paddocks: number, more: Partial<PlanProblem['rules']> = {}, groups = 1): PlanProblem {
  return plainFarm(paddocks, groups, { rest: { kind: 'fixed', days: 28 }, seasonEnd: START + 70, ...more });
}

describe('explainPlan', () => {
  it('says that nothing is wrong where nothing is', () => {
    // 28 days of rest and 7 days of stay need 5 paddocks; 70 days ÷ 7 = 10 moves.
    const problem = farm(5);
    expect(explainPlan(problem, planRotation(problem))).toEqual({
      score: ['Every paddock gets the rest it is due.', '10 moves in all.'],
      mend: undefined,
      changes: [],
      offers: [],
    });
  });

  it('offers a longer stay where a small paddock is used hard', () => {
    // Five paddocks, one of a fifth of the others' area, and 28 days of rest: of 7 days each, none can be shorter, and the
    // small one bears 5 times as much. 8 days: the small one needs 4 (3 × 8 + 4 = 28), 5 × 4 ÷ 8 = 2.5 times. 9 days: 3 will
    // do (3 × 9 + 3 = 30), 5 × 3 ÷ 9 = 1.7 times.
    const five = farm(5, { evenness: 1, seasonEnd: START + 140 });
    const paddocks = five.paddocks.map((paddock, p) =>
      p === 2 ? { ...paddock, areaSquareMeters: paddock.areaSquareMeters / 5 } : paddock,
    );
    const problem = { ...five, paddocks };
    const words = explainPlan(problem, planRotation(problem));
    expect(words.score[1]).toMatch(/^P3 bears 5\.0 times/);
    expect(words.mend).toBe(
      'Stays of up to 9 days would spread the load: the large paddocks carry more of it.',
    );
    expect(words.offers.map(({ button }) => button)).toEqual(['Use 9 days']);
    const eased = planRotation({ ...problem, rules: words.offers[0]!.rules });
    if (!('stays' in eased)) throw new Error(eased.reason);
    const loads = eased.stays.map(
      ({ inDay, outDay, paddock }) => (outDay - inDay) / paddocks[paddock]!.areaSquareMeters,
    );
    const middle = [...loads].sort((a, b) => a - b)[loads.length >> 1]!;
    expect(Math.max(...loads)).toBeLessThan(2 * middle);
  });

  it('says that a group stays on after the last day of the plan', () => {
    const problem = farm(5);
    const until = problem.rules.seasonEnd + 11;
    const longer = { ...problem, groups: problem.groups.map((group) => ({ ...group, until })) };
    const { score } = explainPlan(longer, planRotation(longer));
    expect(score).toContain(
      `The plan ends on ${dayWords(until - 11)}, 11 days before G1 leaves (${dayWords(until)}): set the season end later to plan those days too.`,
    );
  });

  it('finds the paddock that is missing, the shorter rest and the longer stay', () => {
    // With 4 paddocks and 7 days a paddock rests 21 days, 7 short, on each of the 6 moves of 10 that come back. One
    // more paddock makes it 28; a rest of 21 days fits; stays of 10 days (7 moves) give 30.
    const problem = farm(4);
    const words = explainPlan(problem, planRotation(problem));
    expect(words.score[0]).toBe('Rest falls short on 6 moves, 7 days at most.');
    expect(words.changes).toEqual([
      'stays of up to 10 days',
      'one more paddock as large as P2',
      'a rest 7 days shorter (which helps the plan, not the ground)',
    ]);
    expect(words.mend).toBe(
      'Stays of up to 10 days, one more paddock as large as P2 or a rest 7 days shorter (which helps the plan, not the ground) would close it.',
    );
    expect(words.offers.map(({ button, rules }) => [button, rules.longestStayDays, rules.rest])).toEqual([
      ['Use 10 days', 10, problem.rules.rest],
      ['Use a rest 7 days shorter', 7, { kind: 'fixed', days: 21 }],
    ]);
  });

  it('finds how many pigs fewer the ground would bear', () => {
    // The ground bears 1.2 × 1000 m² = 1200 kg·day. 10 head × 50 kg × 3 days = 1500 and 9 head 1350 are too much, so
    // those would have to move after 2 days; but 12 paddocks × 2 days give 22 days of rest, not 28. 8 head × 50 kg ×
    // 3 days = 1200 is borne, and 12 paddocks × 3 days give 33.
    const problem = farm(12, { groundLimit: 1.2, shortestStayDays: 3, longestStayDays: 3 });
    const words = explainPlan(problem, planRotation(problem));
    expect(words.changes).toContain('2 fewer pigs in G1');
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
    expect(plan.reason).toBe('On Mon 4 May there are 3 groups in the rotation and 2 open paddocks.');
    expect(plan.mend).toMatch(/more paddock.* as large as P1 would make a plan possible\.$/);
  });

  it('a day on which nothing is open', () => {
    const problem = farm(2);
    const closed = problem.paddocks.map((paddock) => ({ ...paddock, openUntil: START + 40 }));
    const plan = noPlan({ ...problem, paddocks: closed });
    expect(plan.reason).toBe('On Sun 14 Jun there is 1 group in the rotation and 0 open paddocks.');
    expect(plan.mend).toBeDefined();
  });

  it('stays that no row of open days fits', () => {
    // For two days only P1 is open, then only P2; the shortest stay is three days.
    const [first, second] = farm(2).paddocks;
    const paddocks = [
      { ...first!, openUntil: START + 1 },
      { ...second!, openFrom: START + 2 },
    ];
    expect(noPlan({ ...farm(2), paddocks }).reason).toMatch(/^Even alone, G1 finds no row of stays/);
  });

  it('two groups that stand in the same paddock', () => {
    const problem = farm(6, {}, 2);
    const groups = problem.groups.map((group) => ({ ...group, standing: { paddock: 2, since: START - 2 } }));
    expect(noPlan({ ...problem, groups }).reason).toBe('G1 and G2 both stand in P3.');
  });
});

describe('no move day within the longest stay lengthens it', () => {
  const tooLong = (problem: PlanProblem): number | undefined => {
    const plan = planRotation(problem);
    if (!('stays' in plan)) throw new Error(plan.reason);
    expect(checkPlan(problem, plan.stays)).toEqual({ faults: [], score: plan.score });
    return plan.score.tooLongDays;
  };

  it('moves on Mondays only, stays of up to 5 days', () => {
    // 10 weeks: 10 stays of 7 days, each 2 too long.
    const moveWeekdays = [false, true, false, false, false, false, false];
    const problem = farm(6, { longestStayDays: 5, moveWeekdays });
    expect(tooLong(problem)).toBe(20);
    expect(explainPlan(problem, planRotation(problem)).offers[0]?.button).toBe('Use 7 days');
  });

  it('moves on Mondays and Wednesdays, stays of 5 or 6 days', () => {
    // From a Monday, Wednesday is 2 days off, too short, and the next Monday 7, one too long; 10 weeks from a Monday.
    const moveWeekdays = [false, true, false, true, false, false, false];
    expect(tooLong(farm(6, { shortestStayDays: 5, longestStayDays: 6, moveWeekdays }))).toBe(10);
  });

  it('days that the grower typed are told as that, and call for no other longest stay', () => {
    const problem = farm(6, { longestStayDays: 9 });
    const since = START - 2;
    const groups = problem.groups.map((group) => ({ ...group, standing: { paddock: 0, since } }));
    const typed = { ...problem, groups, wishes: [{ group: 0, day: since, days: 13 }] };
    const plan = planRotation(typed);
    const { score, mend } = explainPlan(typed, plan);
    expect(plan).toMatchObject({ score: { tooLongDays: 4 } });
    expect(score[0]).toBe(
      'The 13 days of G1 in P1 are more than the longest stay of 9 days: they are kept as you typed them.',
    );
    expect(score.join(' ')).not.toContain('No move day');
    expect(mend).toBeUndefined();
  });

  it('no move day at all, for a group that already stands somewhere', () => {
    // It stays from 2 days before to the end on day 70, and 5 of its 7 days are still to come: 65 too long.
    const problem = farm(6, { moveWeekdays: [false, false, false, false, false, false, false] });
    const groups = problem.groups.map((group) => ({ ...group, standing: { paddock: 2, since: START - 2 } }));
    expect(tooLong({ ...problem, groups })).toBe(65);
  });
});
