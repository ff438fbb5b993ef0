/** Room for all nights with every rest had: counted by hand, and never denied where a plan has it. */
import { describe, expect, test } from 'vitest';
import { fallsShort } from '../../shared/plan/explain-plan';
import { hasRoom } from '../../shared/plan/has-room';
import type { PlanPaddock } from '../../shared/plan/model';
import { planRotation } from '../../shared/plan/plan-rotation';
import { plantedFarm } from './farm-makers';
import { plainFarm, START } from './plain-farm';
import { randomFarm } from './random-farm';

describe('room for the nights', () => {
  // One group, 40 nights. A paddock with stays of 5 and a rest of 15 bears 5 of every 20 nights: 10 in 40.
  test.each([
    [4, true],
    [3, false],
  ])('%i paddocks: %s', (count, has) => {
    const farm = plainFarm(count, 1, {
      rest: { kind: 'fixed', days: 15 },
      longestStayDays: 5,
      seasonEnd: START + 40,
    });
    expect(hasRoom(farm)).toBe(has);
    const [first, ...others] = farm.paddocks;
    const withFirst = (more: Partial<PlanPaddock>): boolean =>
      hasRoom({ ...farm, paddocks: [{ ...first!, ...more }, ...others] });
    // Closed after 20 days it bears one stay, after 26 still two; and two of the last 30 days where it rests till then.
    expect(withFirst({ openUntil: START + 19 })).toBe(false);
    expect(withFirst({ openUntil: START + 25 })).toBe(has);
    expect(withFirst({ lastUsed: START - 5 })).toBe(has);
  });

  // Five paddocks bear 25 nights in 20 days. A second group, in for some days of 60: all nights have room in the season
  // (5 × 15), but in the 20 days around those one group alone takes 20.
  test.each([
    [5, true],
    [12, false],
  ])('a second group for %i days: %s', (days, has) => {
    const farm = plainFarm(5, 2, {
      rest: { kind: 'fixed', days: 15 },
      longestStayDays: 5,
      seasonEnd: START + 60,
    });
    const [first, second] = farm.groups;
    const guest = { ...second!, from: START + 20, until: START + 20 + days };
    expect(hasRoom({ ...farm, groups: [first!, guest] })).toBe(has);
  });

  // The same four paddocks and 40 nights as above, but the ground bears only some of the 5 nights: with 4, the four
  // paddocks bear 16 nights in 4 + 15 days.
  test.each([
    [5, true],
    [4, false],
  ])('ground for %i nights: %s', (nights, has) => {
    const farm = plainFarm(4, 1, {
      rest: { kind: 'fixed', days: 15 },
      longestStayDays: 5,
      seasonEnd: START + 40,
    });
    const group = { ...farm.groups[0]!, head: 10, weightKg: 50, dailyGainKg: 0 };
    const groundLimit = (nights * 500) / farm.paddocks[0]!.areaSquareMeters;
    expect(hasRoom({ ...farm, groups: [group], rules: { ...farm.rules, groundLimit } })).toBe(has);
  });

  test('a farm that has a plan without a fault has room', () => {
    let flawless = 0;
    for (let seed = 1; seed <= 30; seed++) {
      const problem = randomFarm(seed);
      const plan = planRotation(problem);
      if ('reason' in plan || fallsShort(plan)) continue;
      flawless += 1;
      expect(hasRoom(problem), `farm ${seed}`).toBe(true);
    }
    expect(flawless).toBeGreaterThan(5);
    // Farms made around a plan without a fault, with no paddock to spare.
    for (let seed = 1; seed <= 50; seed++)
      expect(hasRoom(plantedFarm(seed).problem), `planted ${seed}`).toBe(true);
  });
});
