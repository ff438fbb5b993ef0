/** The bound that prices of paddock days give: weak duality, no plan that the independent checker lets pass costs less. */
import { describe, expect, it } from 'vitest';
import { paddockPrices, priceOfAll } from '../../shared/plan/paddock-prices';
import { planRotation } from '../../shared/plan/plan-rotation';
import { planTables } from '../../shared/plan/plan-tables';
import { wholeTask } from '../../shared/plan/search-task';
import { finish } from '../../shared/plan/steps';
import { checkPlan } from './check-plan';
import { randomFarm } from './random-farm';

describe('prices of paddock days', () => {
  it('give a bound that no lawful plan undercuts, also where a group stands in a paddock that was used before', () => {
    let standing = 0;
    for (let seed = 1; seed <= 12; seed++) {
      const problem = randomFarm(seed);
      const plan = planRotation(problem);
      if (!('stays' in plan)) continue;
      const { faults, score } = checkPlan(problem, plan.stays);
      expect(faults, `farm ${seed}`).toEqual([]);
      const tables = finish(planTables(problem));
      // As if a plan at hand were worse: prices then rise as far as they can.
      const prices = finish(paddockPrices(tables, 1.02 * score.total, { states: 0, most: 1e6 }));
      const bound = finish(wholeTask(tables, prices)).start.bound - priceOfAll(tables, prices);
      expect(bound, `farm ${seed}`).toBeLessThanOrEqual(score.total + 1e-6);
      if (problem.groups.some((g) => g.standing && problem.paddocks[g.standing.paddock]!.lastUsed))
        standing += 1;
    }
    expect(standing).toBeGreaterThan(0);
  });

  it('take a sixth of the effort at most', () => {
    const tables = finish(planTables(randomFarm(3)));
    for (const most of [200, 5000]) {
      const work = { states: 0, most };
      finish(paddockPrices(tables, 1000, work));
      expect(work.states).toBeGreaterThan(0);
      expect(work.states).toBeLessThanOrEqual(most / 6);
    }
  });
});
