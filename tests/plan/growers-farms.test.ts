/** The samples and two growers' books (invented), planned for the ground's sake: what a grower's eye would look for. */
import { readFile } from 'node:fs/promises';
import { describe, expect, it } from 'vitest';
import type { Plan, PlanProblem, Stay } from '../../shared/plan/model';
import { planRotation } from '../../shared/plan/plan-rotation';
import { ROTATION_TASK } from '../../shared/tasks/rotation/rotation-task';
import { openWorkbook } from '../../src/headless';
import { readBook } from '../hard-use/rotation-task';
import { scriptText } from '../tasks/script-text';

const FARMS = {
  'Marrow Creek': 'feet-marrow-creek',
  'Larch Vale': 'metric-larch-vale',
  Hof: 'hof.xlsx',
  Hogbook: 'hogbook.xlsx',
} as const;
type Farm = keyof typeof FARMS;

/** As the form proposes it, but with most moves for the ground's sake, and stays of up to so many days. */
async function farm(name: Farm, longestStayDays: number): Promise<PlanProblem> {
  const file = FARMS[name];
  const bytes = file.endsWith('.xlsx') ? await readFile(`tests/lists/books/${file}`) : file;
  const options = {
    codeJs: await scriptText(),
    today: '2026-04-14',
    ...(name === 'Hof' && { locale: 'de_DE' }),
  };
  const { season } = ROTATION_TASK.read(readBook(await openWorkbook(bytes as string, options)), {});
  if ('missing' in season) throw new Error(season.missing);
  const { problem } = season;
  return { ...problem, rules: { ...problem.rules, longestStayDays, evenness: 1 } };
}

function planned(problem: PlanProblem): Plan {
  const plan = planRotation(problem);
  if (!('stays' in plan)) throw new Error(plan.reason);
  return plan;
}

/** Pairs of stays of one group, six weeks apart at most, the first in the smaller paddock; without its first and last. */
function pairs({ paddocks, rules }: PlanProblem, { stays }: Plan): [Stay, Stay][] {
  const area = ({ paddock }: Stay): number => paddocks[paddock]!.areaSquareMeters;
  const inner = stays.filter(
    ({ group, inDay }) =>
      inDay > rules.seasonStart && stays.some((other) => other.group === group && other.inDay > inDay),
  );
  return inner.flatMap((a) =>
    inner
      .filter((b) => a.group === b.group && Math.abs(a.inDay - b.inDay) <= 42 && area(b) >= 1.2 * area(a))
      .map((b): [Stay, Stay] => [a, b]),
  );
}

const days = ({ inDay, outDay }: Stay): number => outDay - inDay;

describe('farms of growers', () => {
  it.each(Object.keys(FARMS) as Farm[])('%s: small paddocks get short stays', async (name) => {
    const problem = await farm(name, 14);
    const plan = planned(problem);
    const some = pairs(problem, plan);
    expect(some.length).toBeGreaterThan(10);
    const notLonger = some.filter(([small, large]) => days(small) <= days(large)).length;
    const shorter = some.filter(([small, large]) => days(small) < days(large)).length;
    // Shares are judgement. Where the rest cannot be had, all stays are as long as may be, and none is shorter.
    expect(notLonger / some.length).toBeGreaterThan(0.75);
    if (plan.score.restShortDays === 0) expect(shorter / some.length).toBeGreaterThan(0.5);
  });

  it.each(['Larch Vale', 'Hogbook'] as const)(
    '%s: a longer longest stay gives no worse plan',
    async (name) => {
      const points: number[] = [];
      for (const longest of [10, 12, 14]) points.push(planned(await farm(name, longest)).score.total);
      // What may be done with 10 days may be done with 14. The search is not exact: 1 % is let pass.
      for (const [i, more] of points.entries())
        for (const less of points.slice(0, i)) expect(more).toBeLessThanOrEqual(1.01 * less);
      // Once 155, where 119 was known.
      if (name === 'Hogbook') expect(points[2]).toBeLessThanOrEqual(119);
    },
  );
});
