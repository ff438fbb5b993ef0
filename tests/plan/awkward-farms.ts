import { type Day, dayFromCivil } from '../../shared/core/calendar/day';
import type { PlanGroup, PlanPaddock, PlanProblem, PlanRules } from '../../shared/plan/model';

/** Farms made awkward on purpose, each with its story. Names and numbers are invented. */
export interface AwkwardFarm {
  readonly story: string;
  readonly problem: PlanProblem;
}

const EVERY_DAY = [true, true, true, true, true, true, true];
const TUESDAY_SATURDAY = [false, false, true, false, false, false, true];

function paddocks(areas: readonly number[]): PlanPaddock[] {
  return areas.map((area, p) => ({ name: `Paddock ${p + 1}`, areaSquareMeters: area }));
}

function pigs(
  name: string,
  head: number,
  weightKg: number,
  from: Day,
  more: Partial<PlanGroup> = {},
): PlanGroup {
  return { name, head, weightKg, weighedOn: from, from, ...more };
}

function season(from: Day, until: Day, more: Partial<PlanRules> = {}): PlanRules {
  return {
    rest: { kind: 'fixed', days: 30 },
    shortestStayDays: 3,
    longestStayDays: 7,
    moveWeekdays: EVERY_DAY,
    noMoveDays: [],
    seasonStart: from,
    seasonEnd: until,
    ...more,
  };
}

const APRIL = dayFromCivil(2026, 4, 6);
const OCTOBER = dayFromCivil(2026, 10, 5);
const UNEVEN = [900, 1100, 1400, 1500, 1500, 1800, 2000, 2100, 2600, 3000, 4200];

export const AWKWARD_FARMS: Readonly<Record<string, AwkwardFarm>> = {
  hayField: {
    story: 'Two of seven paddocks are a hay field, closed until the hay is off in July.',
    problem: {
      paddocks: paddocks([2000, 2000, 2000, 2000, 2000, 3500, 3500]).map((paddock, p) =>
        p >= 5 ? { ...paddock, openFrom: dayFromCivil(2026, 7, 6) } : paddock,
      ),
      groups: [pigs('Spring pigs', 14, 22, APRIL)],
      rules: season(APRIL, OCTOBER),
    },
  },
  twoMoveDays: {
    story: 'Help comes on Tuesdays and Saturdays only, and in one week of August nobody can move pigs.',
    problem: {
      paddocks: paddocks([1500, 1500, 1500, 1800, 1800, 1800, 2200, 2200, 2200]),
      groups: [pigs('Red pigs', 12, 30, APRIL)],
      rules: season(APRIL, OCTOBER, {
        longestStayDays: 11,
        moveWeekdays: TUESDAY_SATURDAY,
        noMoveDays: [dayFromCivil(2026, 8, 11), dayFromCivil(2026, 8, 15)],
      }),
    },
  },
  doublingWeight: {
    story: 'Pigs that more than double their weight; from midsummer the ground bears only short stays.',
    problem: {
      paddocks: paddocks([1200, 1300, 1400, 1500, 1600, 1700, 1800, 1900, 2000, 2100, 2200, 2300]),
      groups: [pigs('Growers', 20, 30, APRIL, { dailyGainKg: 0.75 })],
      rules: season(APRIL, dayFromCivil(2026, 8, 10), { groundLimit: 4.5 }),
    },
  },
  wetWeek: {
    story:
      'A wet week: the pigs have stood in one paddock for nine days, two over the longest stay, when planning begins.',
    problem: {
      paddocks: paddocks([1500, 1500, 1500, 1500, 1500, 1500, 1500]).map((paddock, p) =>
        p === 2 || p === 3 ? paddock : { ...paddock, lastUsed: APRIL - 9 - 5 * p },
      ),
      groups: [
        pigs('Sows', 4, 180, APRIL - 60, { dailyGainKg: 0, standing: { paddock: 2, since: APRIL - 9 } }),
        pigs('Weaners', 10, 15, APRIL - 3, { standing: { paddock: 3, since: APRIL - 3 } }),
      ],
      rules: season(APRIL, dayFromCivil(2026, 7, 1), { moveWeekdays: TUESDAY_SATURDAY, longestStayDays: 7 }),
    },
  },
  ring: {
    story: 'Eight paddocks in a ring along a lane: pigs should walk on to a neighbour wherever rest allows.',
    problem: {
      paddocks: paddocks([1600, 1600, 1600, 1600, 1600, 1600, 1600, 1600]).map((paddock, p) => ({
        ...paddock,
        adjoins: [(p + 7) % 8, (p + 1) % 8],
      })),
      groups: [pigs('Store pigs', 16, 35, APRIL)],
      rules: season(APRIL, OCTOBER, { rest: { kind: 'fixed', days: 49 } }),
    },
  },
  comeAndGo: {
    story:
      'Weaners join from the training pen in May; the finishers leave when they reach 110 kg, the sows in August.',
    problem: {
      paddocks: paddocks([1300, 1300, 1500, 1500, 1700, 1700, 1900, 1900, 2100, 2100, 2300, 2300]),
      groups: [
        pigs('Finishers', 9, 62, APRIL, { untilWeightKg: 110 }),
        pigs('Weaners', 14, 18, dayFromCivil(2026, 5, 12)),
        pigs('Sows', 3, 190, APRIL, { dailyGainKg: 0, until: dayFromCivil(2026, 8, 3) }),
      ],
      rules: season(APRIL, OCTOBER, {
        rest: { kind: 'monthly', days: [60, 60, 50, 35, 28, 28, 35, 40, 35, 45, 60, 60] },
      }),
    },
  },
  winter: {
    story: 'A winter over the new year and the leap day of 2028, with forage that stands still until March.',
    problem: {
      paddocks: paddocks([2500, 2500, 2500, 2500, 2500, 2500, 2500, 2500, 2500, 2500]),
      groups: [pigs('Winter pigs', 8, 40, dayFromCivil(2027, 11, 15))],
      rules: season(dayFromCivil(2027, 11, 15), dayFromCivil(2028, 4, 17), {
        rest: { kind: 'forage', growth: [2, 4, 20, 50, 80, 60, 35, 30, 40, 25, 5, 2], needed: 300 },
        longestStayDays: 14,
      }),
    },
  },
  twoGroupsElevenPaddocks: {
    story:
      'Two groups, eleven uneven paddocks, a hay field closed till July, moves on Tuesday and Saturday, pigs that double.',
    problem: {
      paddocks: paddocks(UNEVEN).map((paddock, p) =>
        p === 10 ? { ...paddock, openFrom: dayFromCivil(2026, 7, 4) } : paddock,
      ),
      groups: [
        pigs('North group', 10, 40, APRIL),
        pigs('South group', 13, 25, dayFromCivil(2026, 4, 20), { dailyGainKg: 0.6 }),
      ],
      rules: season(APRIL, OCTOBER, {
        rest: { kind: 'fixed', days: 28 },
        groundLimit: 5,
        moveWeekdays: TUESDAY_SATURDAY,
      }),
    },
  },
};
