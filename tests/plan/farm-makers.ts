import type { PlanGroup, PlanPaddock, PlanProblem, PlanRules } from '../../shared/plan/model';
import { randomFarm, seededNumbers } from './random-farm';

const SEASON_START = 20_545; // 2026-04-02, a Thursday
const EVERY_DAY = Array<boolean>(7).fill(true);
const TUESDAY_SATURDAY = [false, false, true, false, false, false, true];

/** What a maker draws its farm from. */
class Draw {
  readonly #random: () => number;
  constructor(seed: number) {
    this.#random = seededNumbers(seed);
  }
  whole(low: number, high: number): number {
    return low + Math.floor(this.#random() * (high - low + 1));
  }
  chance(p: number): boolean {
    return this.#random() < p;
  }
  /** From low to high, each doubling as likely as the next. */
  spread(low: number, high: number): number {
    return Math.round(low * (high / low) ** this.#random());
  }
}

function rulesOf(days: number, more: Partial<PlanRules>): PlanRules {
  return {
    rest: { kind: 'fixed', days: 15 },
    shortestStayDays: 2,
    longestStayDays: 7,
    moveWeekdays: EVERY_DAY,
    noMoveDays: [],
    seasonStart: SEASON_START,
    seasonEnd: SEASON_START + days,
    ...more,
  };
}

function paddocksOf(count: number, area: () => number): PlanPaddock[] {
  return Array.from({ length: count }, (_, p) => ({ name: `P${p + 1}`, areaSquareMeters: area() }));
}

function groupOf(draw: Draw, g: number, more: Partial<PlanGroup> = {}): PlanGroup {
  return {
    name: `G${g + 1}`,
    head: draw.whole(5, 20),
    weightKg: draw.whole(15, 80),
    weighedOn: SEASON_START,
    from: SEASON_START,
    ...more,
  };
}

function groupsOf(draw: Draw, count: number, more: (g: number) => Partial<PlanGroup> = () => ({})) {
  return Array.from({ length: count }, (_, g) => groupOf(draw, g, more(g)));
}

/** Small invented farms of several kinds, each kind hard in its own way; the seed decides all. */
export const FARM_MAKERS: Readonly<Record<string, (seed: number) => PlanProblem>> = {
  mixed: randomFarm,

  'very uneven areas': (seed) => {
    const draw = new Draw(seed);
    const groups = draw.chance(0.3) ? 2 : 1;
    return {
      paddocks: paddocksOf(draw.whole(4, 6) + groups, () => draw.spread(200, 20_000)),
      groups: groupsOf(draw, groups),
      rules: rulesOf(draw.whole(28, groups === 1 ? 49 : 30), {
        rest: { kind: 'fixed', days: draw.whole(10, 28) },
        shortestStayDays: 1,
        longestStayDays: draw.whole(7, 10),
        ...(draw.chance(0.3) && { groundLimit: draw.whole(10, 60) / 10 }),
      }),
    };
  },

  'eight weeks on seven very uneven paddocks': (seed) => {
    const draw = new Draw(seed);
    return {
      paddocks: paddocksOf(7, () => draw.spread(200, 20_000)),
      groups: groupsOf(draw, 1),
      rules: rulesOf(56, {
        rest: { kind: 'fixed', days: draw.whole(14, 42) },
        shortestStayDays: 1,
        longestStayDays: draw.whole(7, 10),
        groundLimit: draw.whole(10, 60) / 10,
      }),
    };
  },

  'no paddock to spare': (seed) => {
    const draw = new Draw(seed);
    const groups = draw.whole(1, 3);
    const longest = draw.whole(4, 7);
    return {
      paddocks: paddocksOf(groups + (draw.chance(0.6) ? 0 : 1) + (groups === 1 ? 1 : 0), () =>
        draw.spread(800, 2400),
      ),
      groups: groupsOf(draw, groups),
      rules: rulesOf(draw.whole(18, 26), {
        rest: { kind: 'fixed', days: draw.whole(3, 14) },
        longestStayDays: longest,
        shortestStayDays: draw.whole(1, 3),
      }),
    };
  },

  'joins and leaves': (seed) => {
    const draw = new Draw(seed);
    const days = draw.whole(24, 32);
    const groups = draw.whole(2, 3);
    return {
      paddocks: paddocksOf(draw.whole(4, 5) + groups - 1, () => draw.whole(8, 24) * 100),
      groups: groupsOf(draw, groups, (g) => ({
        ...(g > 0 && { from: SEASON_START + draw.whole(0, days >> 1) }),
        ...(draw.chance(0.5) && { until: SEASON_START + draw.whole(days >> 1, days) }),
        ...(g === 0 && draw.chance(0.4) && { weightKg: 90, untilWeightKg: 90 + draw.whole(8, 20) }),
      })),
      rules: rulesOf(days, { rest: { kind: 'fixed', days: draw.whole(8, 20) } }),
    };
  },

  windows: (seed) => {
    const draw = new Draw(seed);
    const days = draw.whole(26, 36);
    const groups = draw.chance(0.3) ? 2 : 1;
    return {
      paddocks: paddocksOf(draw.whole(5, 6) + groups, () => draw.whole(8, 24) * 100).map((paddock, p) => ({
        ...paddock,
        ...(p > 1 && draw.chance(0.4) && { openFrom: SEASON_START + draw.whole(3, days >> 1) }),
        ...(p > 1 && draw.chance(0.4) && { openUntil: SEASON_START + draw.whole(days >> 1, days) }),
        ...(draw.chance(0.4) && { lastUsed: SEASON_START - draw.whole(1, 20) }),
      })),
      groups: groupsOf(draw, groups),
      rules: rulesOf(days, {
        rest: { kind: 'fixed', days: draw.whole(12, 24) },
        noMoveDays: Array.from({ length: draw.whole(0, 6) }, (_, i) => SEASON_START + 12 + i),
      }),
    };
  },

  'growing herds': (seed) => {
    const draw = new Draw(seed);
    const groups = draw.chance(0.3) ? 2 : 1;
    return {
      paddocks: paddocksOf(draw.whole(6, 8) + groups - 1, () => draw.whole(6, 16) * 100),
      groups: groupsOf(draw, groups, () => ({
        weightKg: draw.whole(8, 20),
        dailyGainKg: draw.whole(5, 9) / 10,
      })),
      rules: rulesOf(draw.whole(30, groups === 1 ? 45 : 32), {
        rest: { kind: 'monthly', days: [40, 40, 30, 15, 12, 14, 20, 20, 20, 25, 30, 40] },
        groundLimit: draw.whole(8, 20) / 10,
      }),
    };
  },

  'two move days a week': (seed) => {
    const draw = new Draw(seed);
    const groups = draw.whole(1, 2);
    return {
      paddocks: paddocksOf(draw.whole(4, 6) + groups - 1, () => draw.whole(8, 30) * 100),
      groups: groupsOf(draw, groups),
      rules: rulesOf(draw.whole(35, 49), {
        rest: { kind: 'fixed', days: draw.whole(14, 35) },
        longestStayDays: draw.whole(6, 11),
        moveWeekdays: TUESDAY_SATURDAY,
      }),
    };
  },
};

/** A farm whose best score is known without any solver. */
export interface Planted {
  readonly problem: PlanProblem;
  readonly best: number;
}

/**
 * A round is planted: k places for each of g groups, stays as long as may be, and a rest that this round just gives.
 * No plan has fewer moves than days ÷ longest stay for each group, and the planted one has just these, walks only to
 * neighbours, and misses no rest; so it is the best. The paddocks are listed in a shuffled order. In half of the farms
 * the round is under way: groups stand, paddocks were last used, and each is ready on the very day it is due.
 *
 * With evenness w ≤ 1 all areas and weights are alike and steady, and the even share is the load of one planted stay.
 * A row of m stays over D days then costs m + w·(D ÷ stay)² ÷ m at the least, when all are equally long; for m from
 * D ÷ stay on, and fewer there cannot be, that only rises.
 */
export function plantedFarm(seed: number, evenness = 0): Planted {
  const draw = new Draw(seed);
  const groups = draw.whole(1, 8);
  const each = draw.whole(3, Math.min(10, Math.floor(60 / groups)));
  const n = groups * each;
  const rounds = draw.whole(2, 5);
  const stay = draw.whole(3, 10);
  const days = Math.min(Math.floor(365 / stay), rounds * each) * stay;
  const isUnderWay = draw.chance(0.5);
  const isWeekly = stay === 7 && draw.chance(0.5);
  const order = Array.from({ length: n }, (_, p) => p);
  for (let i = n - 1; i > 0; i--) {
    const j = draw.whole(0, i);
    [order[i], order[j]] = [order[j]!, order[i]!];
  }
  const paddockAt = (place: number): number => order[place % n]!;
  const restDays = (each - 1) * stay;
  const paddocks = Array.from({ length: n }, (_, p): PlanPaddock => {
    const place = order.indexOf(p);
    const turnsAgo = each - (place % each);
    return {
      name: `P${p + 1}`,
      areaSquareMeters: 1000,
      adjoins: [paddockAt(place + 1), paddockAt(place + n - 1)],
      ...(isUnderWay && turnsAgo < each && { lastUsed: SEASON_START - (turnsAgo - 1) * stay }),
    };
  });
  const herd = Array.from({ length: groups }, (_, g): PlanGroup => {
    const place = g * each;
    return {
      name: `G${g + 1}`,
      head: 10,
      weightKg: 50,
      weighedOn: SEASON_START,
      dailyGainKg: 0,
      from: SEASON_START,
      ...(isUnderWay && { standing: { paddock: paddockAt(place), since: SEASON_START } }),
    };
  });
  const weekday = new Date(SEASON_START * 86_400_000).getUTCDay();
  const problem: PlanProblem = {
    paddocks,
    groups: herd,
    rules: rulesOf(days, {
      rest: { kind: 'fixed', days: restDays },
      shortestStayDays: Math.min(stay, 2),
      longestStayDays: stay,
      moveWeekdays: isWeekly ? EVERY_DAY.map((_, day) => day === weekday) : EVERY_DAY,
      ...(evenness > 0 && { evenness }),
    }),
    ...(evenness > 0 && { evenShare: (500 * stay) / 1000 }),
  };
  const moves = (groups * days) / stay;
  return { problem, best: moves * (1 + evenness) };
}
