import type { PlanProblem } from '../../shared/plan/model';

/** A repeatable source of numbers from 0 to 1: mulberry32 (T. Ettinger, public domain; from memory). */
export function seededNumbers(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4_294_967_296;
  };
}

const SEASON_START = 20_545; // 2026-04-02

/** A small invented farm that still has everything the rules speak of; the seed decides it all. */
export function randomFarm(seed: number): PlanProblem {
  const random = seededNumbers(seed);
  const whole = (low: number, high: number): number => low + Math.floor(random() * (high - low + 1));
  const chance = (p: number): boolean => random() < p;
  const days = whole(18, 40);
  const groupCount = chance(0.45) ? 2 : 1;
  const paddockCount = whole(3 + groupCount, 5 + groupCount);
  const shortest = whole(1, 3);
  const longest = shortest + whole(2, 5);
  const adjoining = chance(0.4);
  const limited = chance(0.5);
  const equal = chance(0.3);
  const start = SEASON_START + whole(0, 200);
  const end = start + days;
  const paddocks = Array.from({ length: paddockCount }, (_, p) => ({
    name: `P${p + 1}`,
    areaSquareMeters: equal ? 1000 : whole(6, 20) * 100,
    ...(chance(0.15) ? { openFrom: start + whole(0, days) } : {}),
    ...(chance(0.1) ? { openUntil: start + whole(days >> 1, days) } : {}),
    ...(chance(0.3) ? { lastUsed: start - whole(0, 30) } : {}),
    ...(chance(0.15) ? { restDays: whole(5, 40) } : {}),
    ...(adjoining
      ? { adjoins: [p - 1, p + 1].filter((q) => q >= 0 && q < paddockCount && chance(0.85)) }
      : {}),
  }));
  const groups = Array.from({ length: groupCount }, (_, g) => ({
    name: `G${g + 1}`,
    head: whole(5, 20),
    weightKg: whole(15, 80),
    weighedOn: start - whole(0, 10),
    ...(chance(0.5) ? { dailyGainKg: whole(4, 10) / 10 } : {}),
    from: start + (chance(0.3) ? whole(0, 8) : 0),
    ...(chance(0.2) ? { until: end - whole(0, 8) } : {}),
    ...(chance(0.1) ? { untilWeightKg: whole(85, 100) } : {}),
    ...(g === 0 && chance(0.25) ? { standing: { paddock: 0, since: start - whole(1, longest) } } : {}),
  }));
  const kind = whole(0, 2);
  const rest = whole(4, 30);
  const month = (): number => Math.max(1, rest + whole(-4, 4));
  const weekdays = chance(0.5)
    ? Array.from({ length: 7 }, () => true)
    : Array.from({ length: 7 }, (_, day) => day === 2 || day === 6 || chance(0.3));
  const rules: PlanProblem['rules'] = {
    rest:
      kind === 0
        ? { kind: 'fixed', days: rest }
        : kind === 1
          ? { kind: 'monthly', days: Array.from({ length: 12 }, month) }
          : { kind: 'forage', growth: Array.from({ length: 12 }, () => whole(20, 90)), needed: rest * 50 },
    shortestStayDays: shortest,
    longestStayDays: longest,
    ...(limited ? { groundLimit: whole(15, 60) / 10 } : {}),
    moveWeekdays: weekdays,
    noMoveDays: chance(0.3) ? [start + whole(0, days), start + whole(0, days)] : [],
    seasonStart: start,
    seasonEnd: end,
  };
  // Drawn last, so that everything else of a seed is as it was before paddocks could be shut for a time.
  const shut = paddocks.map((paddock) => {
    if (!chance(0.2)) return paddock;
    const shutFrom = start + whole(0, days);
    return { ...paddock, shutFrom, ...(chance(0.8) && { shutUntil: shutFrom + whole(0, 12) }) };
  });
  return { paddocks: shut, groups, rules };
}
