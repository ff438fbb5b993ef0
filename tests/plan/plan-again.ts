import { evenShare } from '../../shared/plan/even-share';
import type { Plan, PlanProblem, Stay } from '../../shared/plan/model';
import { planRotation } from '../../shared/plan/plan-rotation';
import { seededNumbers } from './random-farm';

const SEASON_START = 20_545; // 2026-04-02

/**
 * An invented ordinary farm: one to three groups, half a year, and `spare` times the paddocks that its rest needs at the
 * least, rest × groups ÷ longest stay + groups.
 */
export function ordinaryFarm(seed: number, evenness = 0.25, spare = 1): PlanProblem {
  const random = seededNumbers(seed);
  const whole = (low: number, high: number): number => low + Math.floor(random() * (high - low + 1));
  const groupCount = whole(1, 3);
  const paddockCount = whole(5, 8) * groupCount;
  const isTwice = random() < 0.3;
  const longestStayDays = whole(7, 10);
  const usual = isTwice ? 7 : longestStayDays;
  const restDays = Math.floor((usual * (paddockCount / spare - groupCount)) / groupCount);
  return {
    paddocks: Array.from({ length: paddockCount }, (_, p) => ({
      name: `P${p + 1}`,
      areaSquareMeters: whole(8, 40) * 100,
    })),
    groups: Array.from({ length: groupCount }, (_, g) => ({
      name: `G${g + 1}`,
      head: whole(5, 20),
      weightKg: whole(15, 80),
      weighedOn: SEASON_START,
      from: SEASON_START + (g > 0 ? whole(0, 20) : 0),
    })),
    rules: {
      rest: { kind: 'fixed', days: restDays },
      shortestStayDays: 3,
      longestStayDays,
      evenness,
      moveWeekdays: Array.from({ length: 7 }, (_, day) => !isTwice || day === 2 || day === 6),
      noMoveDays: [],
      seasonStart: SEASON_START,
      seasonEnd: SEASON_START + 180,
    },
  };
}

export function planned(problem: PlanProblem): Plan {
  const plan = planRotation(problem);
  if (!('stays' in plan)) throw new Error(plan.reason);
  return plan;
}

/** The farm on a later day of the season: everything went as planned, groups stand where the plan had them. */
export function laterOn(problem: PlanProblem, plan: Plan, today: number): PlanProblem {
  return {
    ...problem,
    rules: { ...problem.rules, seasonStart: today },
    groups: problem.groups.map((group, g) => {
      const stay = plan.stays.find((s) => s.group === g && s.inDay < today && s.outDay >= today);
      return stay ? { ...group, standing: { paddock: stay.paddock, since: stay.inDay } } : group;
    }),
    paddocks: problem.paddocks.map((paddock, p) => {
      const outs = plan.stays.filter((s) => s.paddock === p && s.outDay < today).map((s) => s.outDay);
      return outs.length > 0 ? { ...paddock, lastUsed: Math.max(...outs) } : paddock;
    }),
    before: plan.stays,
    evenShare: evenShare(problem),
  };
}

const keyOf = ({ group, paddock, inDay }: Stay): string => `${group}/${paddock}/${inDay}`;

/** Share of the moves ahead of the old plan that are in the new one, those into paddock `besides` left out. */
export function keptShare(
  old: Plan,
  now: Pick<Plan, 'stays'>,
  today: number,
  besides = -1,
): { kept: number; of: number } {
  const known = new Set(now.stays.map(keyOf));
  const ahead = old.stays.filter((stay) => stay.inDay >= today && stay.paddock !== besides);
  return { kept: ahead.filter((stay) => known.has(keyOf(stay))).length, of: ahead.length };
}
