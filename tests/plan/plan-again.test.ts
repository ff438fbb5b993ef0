/** Planning again: nothing changes without a reason; wishes are kept or named; skipped and unplanned moves. */
import { describe, expect, it } from 'vitest';
import { explainPlan } from '../../shared/plan/explain-plan';
import type { Plan, PlanProblem, Wish } from '../../shared/plan/model';
import { moveDaysOf } from '../../shared/plan/move-days';
import { scorePlan } from '../../shared/plan/score-plan';
import { checkPlan } from './check-plan';
import { keptShare, laterOn, ordinaryFarm, planned } from './plan-again';

const SEEDS = [2, 3, 7];
const farms = SEEDS.map((seed) => ordinaryFarm(seed, seed % 2 ? 0.25 : 0, 2));
const plans = farms.map(planned);

function expectLawful(problem: PlanProblem, plan: Plan): void {
  const verdict = checkPlan(problem, plan.stays);
  expect(verdict.faults).toEqual([]);
  expect(verdict.score.total).toBeCloseTo(plan.score.total, 6);
}

describe('the plan before', () => {
  it('nothing has changed: the same plan', () => {
    farms.forEach((farm, i) => {
      expect(planned({ ...farm, before: plans[i]!.stays })).toEqual(plans[i]);
    });
  });

  it('the points of a change, by hand: 0.2 soon, 0.05 later, none for what is kept or stands', () => {
    const farm = farms[0]!;
    const stays = plans[0]!.stays;
    const soon = stays.filter(({ inDay }) => inDay < farm.rules.seasonStart + 28).length;
    const before = [stays[0]!, stays[stays.length - 1]!];
    const known = scorePlan({ ...farm, before }, stays);
    expect(known.changePoints).toBeCloseTo(0.2 * (soon - 1) + 0.05 * (stays.length - soon - 1), 9);
    expect(known.total).toBeCloseTo(plans[0]!.score.total + known.changePoints!, 9);
    expect(scorePlan({ ...farm, before: stays }, stays).changePoints).toBeUndefined();
  });

  it('two months later, all done as planned: at least 9 of 10 moves stay, and the plan is no worse', () => {
    let kept = 0;
    let of = 0;
    farms.forEach((farm, i) => {
      const today = farm.rules.seasonStart + 60;
      const later = laterOn(farm, plans[i]!, today);
      const plan = planned(later);
      expectLawful(later, plan);
      const share = keptShare(plans[i]!, plan, today);
      kept += share.kept;
      of += share.of;
    });
    expect(of).toBeGreaterThan(50);
    expect(kept / of).toBeGreaterThan(0.9);
  });

  it('a paddock is shut where there are enough: at least 8 of 10 moves into the others stay', () => {
    let kept = 0;
    let of = 0;
    farms.forEach((farm, i) => {
      const today = farm.rules.seasonStart + 60;
      const later = laterOn(farm, plans[i]!, today);
      const shut = plans[i]!.stays.find(({ inDay }) => inDay >= today + 10)!.paddock;
      const paddocks = later.paddocks.map((paddock, p) =>
        p === shut ? { ...paddock, openUntil: today + 5 } : paddock,
      );
      const plan = planned({ ...later, paddocks });
      expectLawful({ ...later, paddocks }, plan);
      const share = keptShare(plans[i]!, plan, today, shut);
      kept += share.kept;
      of += share.of;
    });
    expect(kept / of).toBeGreaterThanOrEqual(0.8);
  });

  it('a move that was skipped: the paddock rests on, and may be entered before its planned rest would be over', () => {
    const farm = farms[0]!;
    const { stays } = plans[0]!;
    const today = farm.rules.seasonStart + 60;
    const next = stays.find(({ group, inDay }) => group === 0 && inDay >= today)!;
    const later = laterOn(farm, plans[0]!, next.outDay);
    // The group stayed where it was, in another paddock than the planned one.
    const there = stays.find(({ group, outDay }) => group === 0 && outDay === next.inDay)!;
    const skipped = {
      ...later,
      groups: later.groups.map((group, g) =>
        g === 0 ? { ...group, standing: { paddock: there.paddock, since: there.inDay } } : group,
      ),
      before: stays.filter((stay) => stay !== next),
    };
    expect(later.paddocks[next.paddock]!.lastUsed ?? -1).toBeLessThan(next.inDay);
    const plan = planned(skipped);
    expectLawful(skipped, plan);
    expect(plan.stays[0]).toMatchObject({ group: 0, paddock: there.paddock, inDay: there.inDay });
  });
});

describe('wishes', () => {
  const at = farms.findIndex(({ rules }) => rules.moveWeekdays.every(Boolean));
  const farm = farms[at]!;
  const plan = plans[at]!;
  const move = plan.stays[5]!;
  const other = farm.paddocks.findIndex(
    (_, p) =>
      !plan.stays.some((s) => s.paddock === p && s.inDay <= move.outDay + 10 && s.outDay >= move.inDay - 10),
  );

  it('a paddock and days that were typed are kept, and all else is lawful', () => {
    expect(other).toBeGreaterThanOrEqual(0);
    const wish: Wish = { group: move.group, day: move.inDay, paddock: other, days: 4 };
    const wishes = [wish];
    const now = planned({ ...farm, wishes, before: plan.stays });
    expectLawful({ ...farm, wishes, before: plan.stays }, now);
    expect(now.droppedWishes).toBeUndefined();
    expect(now.stays).toContainEqual({
      group: move.group,
      paddock: other,
      inDay: move.inDay,
      outDay: move.inDay + 4,
    });
    expect(keptShare(plan, now, farm.rules.seasonStart).kept).toBeGreaterThan(0);
  });

  it('what cannot be kept is named, the later of two that exclude each other; nothing else is given up', () => {
    const day = farm.rules.seasonStart + 40;
    const first: Wish = { group: 0, day, paddock: 2, days: 6 };
    const second: Wish = { group: 0, day: day + 3, paddock: 4 };
    const outside: Wish = { group: 0, day: farm.rules.seasonEnd + 5 };
    const problem = { ...farm, wishes: [outside, second, first] };
    const now = planned(problem);
    expectLawful(problem, now);
    expect(now.droppedWishes).toEqual([outside, second]);
    expect(now.stays).toContainEqual({ group: 0, paddock: 2, inDay: day, outDay: day + 6 });
    const words = explainPlan(problem, now).score;
    expect(words[1]).toMatch(
      /^G1 into P5 on Fri 15 May, as you typed it, is not kept: no plan was found with it\.$/,
    );
  });

  it('two groups cannot both have a paddock on one day', () => {
    const pair = farms.find(({ groups }) => groups.length > 1)!;
    const day = moveDaysOf(pair.rules).find((moveDay) => moveDay >= pair.rules.seasonStart + 50)!;
    const wishes: Wish[] = [
      { group: 0, day, paddock: 3 },
      { group: 1, day, paddock: 3 },
    ];
    const now = planned({ ...pair, wishes });
    expect(now.droppedWishes).toEqual([wishes[1]]);
    expect(now.stays.some((s) => s.group === 0 && s.paddock === 3 && s.inDay === day)).toBe(true);
  });
});
