import { describe, expect, it } from 'vitest';
import type { PlanProblem, PlanRules } from '../../shared/plan/model';
import { startLongestStay } from '../../shared/plan/start-longest-stay';
import { plainFarm, START } from './plain-farm';

function farm(paddocks: number, groups: number, rules: Partial<PlanRules> = {}): PlanProblem {
  return plainFarm(paddocks, groups, { rest: { kind: 'fixed', days: 40 }, seasonEnd: START + 180, ...rules });
}

describe('start of the longest stay', () => {
  // Stay = rest × groups ÷ (paddocks − groups); for one group it is Penn State Extension's paddocks = rest ÷ stay + 1.
  it.each([
    [farm(9, 1), 7], // 40 ÷ 8 = 5: the least that is offered
    [farm(5, 1), 10], // 40 ÷ 4
    [farm(11, 2), 9], // 80 ÷ 9 = 8.9
    [farm(4, 1), 14], // 40 ÷ 3 = 13.3
    [farm(3, 1), 14], // 40 ÷ 2 = 20 cannot be had
    [farm(3, 3), 14],
    [farm(9, 1, { shortestStayDays: 16 }), 16],
  ])('case %#', (problem, days) => {
    expect(startLongestStay(problem)).toBe(days);
  });

  it('move days: with Mondays alone a stay of 7 to 13 days lasts 7', () => {
    const moveWeekdays = [false, true, false, false, false, false, false];
    expect(startLongestStay(farm(6, 1, { moveWeekdays }))).toBe(14); // 40 ÷ 5 = 8
    expect(startLongestStay(farm(7, 1, { moveWeekdays }))).toBe(7); // 40 ÷ 6 = 6.7
  });

  it('a hay field that is closed for some weeks makes the others stay longer', () => {
    const problem = farm(7, 1);
    const paddocks = problem.paddocks.map((paddock, p) =>
      p > 4 ? { ...paddock, openFrom: START + 60 } : paddock,
    );
    expect(startLongestStay({ ...problem, paddocks })).toBe(10); // five are open at first
  });
});
