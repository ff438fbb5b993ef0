/** What is true of a generated farm, before it is typed into a messy sheet. Days count from 1970-01-01. */
import fc from 'fast-check';
import type { PlanRules } from '../../shared/plan/model';
import { anyName, differentNames } from './messy-words';

export interface TruePaddock {
  readonly name: string;
  /** In the unit of the column. */
  readonly area: number;
  readonly openFrom?: number;
  readonly openUntil?: number;
  readonly lastUsed?: number;
  readonly rest?: number;
  readonly adjoins?: readonly number[];
}

export interface TrueGroup {
  readonly name: string;
  readonly head: number;
  readonly weight: number;
  readonly weighedOn: number;
  readonly gain?: number;
  readonly from?: number;
  readonly until?: number;
}

export interface TrueFarm {
  readonly paddocks: readonly TruePaddock[];
  readonly groups: readonly TrueGroup[];
  readonly rules: PlanRules;
  /** Nothing stands in the way of a plan: one spare paddock, moves on every day, all paddocks open. */
  readonly mustHavePlan: boolean;
}

/** Acre, hectare, pound: international yard and pound agreement, 1959; the others follow from the metre. */
export const AREA_UNITS = {
  ac: 4046.8564224,
  acres: 4046.8564224,
  ha: 10_000,
  hectares: 10_000,
  'm²': 1,
  'sq ft': 0.3048 ** 2,
} as const;
export const MASS_UNITS = { lb: 0.45359237, lbs: 0.45359237, kg: 1, KG: 1 } as const;
export type AreaUnit = keyof typeof AREA_UNITS;
export type MassUnit = keyof typeof MASS_UNITS;

/** Season starts that hold a leap day, a new year, both changes of the clock, and southern summers. */
const STARTS = [
  '2026-04-02',
  '2028-02-18',
  '2026-12-20',
  '2026-03-24',
  '2026-10-20',
  '2027-01-05',
  '2099-12-22',
].map((iso) => Date.parse(iso) / 86_400_000);

/** Sizes: mostly small, now and then what a large or a very large place has. */
const sizes = fc.oneof(
  { weight: 70, arbitrary: fc.integer({ min: 2, max: 8 }) },
  { weight: 26, arbitrary: fc.integer({ min: 9, max: 24 }) },
  { weight: 3, arbitrary: fc.integer({ min: 25, max: 80 }) },
  { weight: 1, arbitrary: fc.integer({ min: 100, max: 500 }) },
);
const rare = <T>(arbitrary: fc.Arbitrary<T>, oneIn: number) =>
  fc.option(arbitrary, { nil: undefined, freq: oneIn - 1 });
const often = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: undefined, freq: 1 });

const paddockParts = fc.record({
  area: fc.integer({ min: 20, max: 400 }),
  openFrom: often(fc.integer({ min: -5, max: 12 })),
  openUntil: often(fc.integer({ min: 10, max: 60 })),
  lastUsed: often(fc.integer({ min: -60, max: -1 })),
  rest: often(fc.integer({ min: 0, max: 60 })),
  adjoins: often(fc.array(fc.nat(499), { minLength: 1, maxLength: 3 })),
});
const groupParts = fc.record({
  head: fc.integer({ min: 1, max: 300 }),
  weight: fc.integer({ min: 20, max: 60 }),
  weighedOn: fc.integer({ min: -12, max: 5 }),
  gain: often(fc.integer({ min: 0, max: 18 })),
  from: often(fc.integer({ min: -4, max: 6 })),
  until: often(fc.integer({ min: 8, max: 40 })),
});
/** Which optional columns a farm has at all. */
const columns = fc.record({
  openFrom: fc.boolean(),
  openUntil: fc.boolean(),
  lastUsed: fc.boolean(),
  rest: fc.boolean(),
  adjoins: fc.boolean(),
  gain: fc.boolean(),
  from: fc.boolean(),
  until: fc.boolean(),
  closing: fc.integer({ min: 0, max: 4 }).map((one) => one === 0),
});
const twelve = (most: number) =>
  fc.array(fc.integer({ min: 1, max: most }), { minLength: 12, maxLength: 12 });
const rules = fc.record({
  rest: fc.oneof(
    fc.integer({ min: 0, max: 40 }).map((days) => ({ kind: 'fixed' as const, days })),
    twelve(50).map((days) => ({ kind: 'monthly' as const, days })),
    twelve(60).map((growth) => ({ kind: 'forage' as const, growth, needed: 900 })),
  ),
  shortest: fc.integer({ min: 1, max: 4 }),
  more: fc.integer({ min: 0, max: 6 }),
  limit: rare(fc.integer({ min: 5, max: 60 }), 3),
  everyDay: fc.integer({ min: 0, max: 2 }).map((one) => one > 0),
  weekdays: fc.array(fc.boolean(), { minLength: 7, maxLength: 7 }),
  noMoves: fc.uniqueArray(fc.integer({ min: 1, max: 30 }), { maxLength: 3 }),
  days: fc.integer({ min: 10, max: 32 }),
});

type Parts<A> = A extends fc.Arbitrary<infer T> ? T : never;
interface Given {
  readonly size: number;
  readonly names: readonly string[];
  readonly groupNames: readonly string[];
  readonly paddocks: readonly Parts<typeof paddockParts>[];
  readonly groups: readonly Parts<typeof groupParts>[];
  readonly has: Parts<typeof columns>;
  readonly rule: Parts<typeof rules>;
  readonly start: number;
}

export const trueFarm: fc.Arbitrary<TrueFarm> = fc
  .record({
    size: sizes,
    names: fc.array(anyName, { minLength: 8, maxLength: 8 }),
    groupNames: fc.array(anyName, { minLength: 3, maxLength: 3 }),
    paddocks: fc.array(paddockParts, { minLength: 8, maxLength: 8 }),
    groups: fc.array(groupParts, { minLength: 1, maxLength: 3 }),
    has: columns,
    rule: rules,
    start: fc.constantFrom(...STARTS),
  })
  .map(farmFrom);

function farmFrom({
  size,
  names,
  groupNames,
  paddocks: parts,
  groups: herd,
  has,
  rule,
  start,
}: Given): TrueFarm {
  const closes = has.closing && (has.openFrom || has.openUntil);
  const paddocks = differentNames(names, size).map((name, i): TruePaddock => {
    const part = parts[i % parts.length]!;
    const adjoins = part.adjoins?.map((at) => (at + i) % size).filter((at) => at !== i);
    return {
      name,
      area: part.area + (i % 13),
      ...(closes && has.openFrom && part.openFrom !== undefined && { openFrom: start + part.openFrom }),
      ...(closes &&
        has.openUntil &&
        part.openUntil !== undefined && { openUntil: start + part.openUntil + 12 }),
      ...(has.lastUsed && part.lastUsed !== undefined && { lastUsed: start + part.lastUsed }),
      ...(has.rest && part.rest !== undefined && { rest: part.rest }),
      ...(has.adjoins && adjoins && adjoins.length > 0 && { adjoins: [...new Set(adjoins)] }),
    };
  });
  const groups = differentNames(groupNames, Math.min(herd.length, size - 1)).map((name, i): TrueGroup => {
    const { head, weight, weighedOn, gain, from, until } = herd[i]!;
    return {
      name,
      head,
      weight,
      weighedOn: start + weighedOn,
      ...(has.gain && gain !== undefined && { gain: gain / 10 }),
      ...(has.from && from !== undefined && { from: start + from }),
      ...(has.until && until !== undefined && { until: start + until }),
    };
  });
  const moveWeekdays =
    rule.everyDay || !rule.weekdays.includes(true) ? rule.weekdays.map(() => true) : rule.weekdays;
  const noMoveDays = rule.everyDay ? [] : rule.noMoves.map((day) => start + day).sort((a, b) => a - b);
  return {
    paddocks,
    groups,
    rules: {
      rest: rule.rest,
      shortestStayDays: rule.shortest,
      longestStayDays: rule.shortest + rule.more,
      ...(rule.limit !== undefined && { groundLimit: rule.limit / 10 }),
      moveWeekdays,
      noMoveDays,
      seasonStart: start,
      seasonEnd: start + rule.days,
    },
    mustHavePlan: !closes && rule.everyDay && size > groups.length,
  };
}
