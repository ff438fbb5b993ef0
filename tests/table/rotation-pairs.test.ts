/** What the rotation table says by formulas beside what the page works out, over any farm: recalculated by the engine. */
import fc from 'fast-check';
import { expect, test, vi } from 'vitest';
import type { WireCell } from '../../shared/contract';
import { dayFromIso, isoFromDay } from '../../shared/core/calendar/day';
import { feedNeeded } from '../../shared/core/herd/feed-needed';
import { waterNeeded } from '../../shared/core/herd/water-needed';
import { groupLoadOn, groupWeightOn } from '../../shared/plan/group-weights';
import type { PlanProblem, PlanRules, RestRule, Stay } from '../../shared/plan/model';
import { type StayScore, scoreStays } from '../../shared/plan/score-plan';
import { stayLoad } from '../../shared/plan/stay-loads';
import { rotationBlock } from '../../shared/table/rotation-block';
import { fromInside, type Quantity, type UnitSystem } from '../../shared/units/units';
import type { StartCell } from '../../src/headless';
import { cellUnder } from '../cell-under';
import { soonPlanned } from '../soon-planned';
import { openFarm, readFarm, readTab, writeBlock } from './farm-in-sheet';

// The engine's first evaluation takes seconds on a busy machine.
vi.setConfig({ testTimeout: 240_000 });

const START = dayFromIso('2026-04-01')!;
const DAYS = 70;
const FARMS = 10;
const TWELVE = fc.array(fc.integer({ min: 5, max: 60 }), { minLength: 12, maxLength: 12 });

const ANY_REST: fc.Arbitrary<RestRule> = fc.oneof(
  fc.record({ kind: fc.constant('fixed' as const), days: fc.integer({ min: 10, max: 45 }) }),
  fc.record({ kind: fc.constant('monthly' as const), days: TWELVE }),
  fc.record({
    kind: fc.constant('forage' as const),
    growth: TWELVE,
    needed: fc.integer({ min: 200, max: 1800 }),
  }),
);
/** Weights at which no pig without a gain of its own passes the growth table in the season. */
const ANY_GROUP = fc.record({
  head: fc.integer({ min: 1, max: 40 }),
  kg: fc.integer({ min: 12, max: 60 }),
  weighedBefore: fc.integer({ min: 0, max: 20 }),
  gain: fc.option(fc.integer({ min: 30, max: 110 }), { nil: undefined, freq: 1 }),
});
const ANY_PADDOCK = fc.record({
  hectares: fc.integer({ min: 5, max: 60 }),
  leftBefore: fc.option(fc.integer({ min: 1, max: 40 }), { nil: undefined }),
  rest: fc.option(fc.integer({ min: 8, max: 30 }), { nil: undefined, freq: 4 }),
});
const ANY_FARM = fc.record({
  system: fc.constantFrom<UnitSystem>('US', 'metric'),
  locale: fc.constantFrom('en_US', 'de_DE'),
  groups: fc.array(ANY_GROUP, { minLength: 1, maxLength: 3 }),
  paddocks: fc.array(ANY_PADDOCK, { minLength: 7, maxLength: 12 }),
  rest: ANY_REST,
  longestStayDays: fc.integer({ min: 4, max: 9 }),
  // Liveweight-days of the first group's first stay in the first paddock, without growth, are 1.
  limit: fc.option(fc.double({ min: 0.7, max: 2, noNaN: true }), { nil: undefined }),
  temperatureC: fc.integer({ min: 5, max: 36 }),
  outdoorFactor: fc.constantFrom(1, 1.15, 1.3),
});

type Farm = typeof ANY_FARM extends fc.Arbitrary<infer Value> ? Value : never;

function tabsOf({ system, groups, paddocks }: Farm): Record<string, StartCell[][]> {
  const say = (value: number, quantity: Quantity): number =>
    Number(fromInside(value, quantity, system).toFixed(3));
  const [area, mass] = system === 'US' ? ['ac', 'lb'] : ['ha', 'kg'];
  return {
    Land: [
      ['Paddock', `Area (${area})`, 'Last used', 'Rest (days)'],
      ...paddocks.map(({ hectares, leftBefore, rest }, i): StartCell[] => [
        `Field ${i + 1}`,
        say(hectares * 100, 'area'),
        leftBefore === undefined ? '' : { d: isoFromDay(START - leftBefore) },
        rest ?? '',
      ]),
    ],
    Pigs: [
      ['Group', 'Head', `Weight (${mass})`, 'Weighed on', `Daily gain (${mass}/day)`],
      ...groups.map(({ head, kg, weighedBefore, gain }, i): StartCell[] => [
        `Pigs ${i + 1}`,
        head,
        say(kg, 'mass'),
        { d: isoFromDay(START - weighedBefore) },
        gain === undefined ? '' : say(gain / 100, 'massPerDay'),
      ]),
    ],
  };
}

type Move = Record<string, WireCell>;

const dayOf = (cell: WireCell | undefined): number => dayFromIso((cell as { d: string }).d)!;

test('weight, liveweight, feed, water, rest and check of every move are those of the page', async () => {
  const seen = new Set<string>();
  let farms = 0;
  for (const any of fc.sample(ANY_FARM, { seed: 13, numRuns: 4 * FARMS })) {
    if (farms === FARMS) break;
    const { system, rest, longestStayDays, limit, temperatureC, outdoorFactor } = any;
    const [{ head, kg }, { hectares }] = [any.groups[0]!, any.paddocks[0]!];
    const groundLimit = limit && (limit * head * kg * longestStayDays) / (hectares * 100);
    const rules: PlanRules = {
      rest,
      shortestStayDays: longestStayDays - 2,
      longestStayDays,
      ...(groundLimit !== undefined && { groundLimit }),
      moveWeekdays: [true, true, true, true, true, true, true],
      noMoveDays: [],
      seasonStart: START,
      seasonEnd: START + DAYS,
    };
    const farm = await openFarm(tabsOf(any), rules, system, any.locale);
    const read = readFarm(farm);
    const plan = soonPlanned(read.problem);
    if ('reason' in plan) continue;
    farms += 1;
    const settings = { ...read.settings, temperatureC, outdoorFactor };
    const corner = { tab: 'Rotation', row: 1, column: 1 };
    const block = rotationBlock({ ...read, settings, plan, corner, warnings: [] });
    writeBlock(farm.book, block, { at: 'new-tab', tab: 'Rotation' });

    const compare = (isSkipped = (_: number): boolean => false): void => {
      const all = movesOf(readTab(farm.book, 'Rotation').values);
      expect(all).toHaveLength(plan.stays.length);
      for (const move of all.filter((_, i) => isSkipped(i)))
        expect(OF_THOSE_IN.map((head) => move[head])).toEqual(OF_THOSE_IN.map(() => ''));
      const moves = all.filter((_, i) => !isSkipped(i));
      const planned = plan.stays.filter((_, i) => !isSkipped(i));
      const stays = moves.map((move, i) => ({ ...planned[i]!, ...daysOf(move) }));
      for (const [i, move] of moves.entries()) {
        expectMove(move, read.problem, stays, i, { system, temperatureC, outdoorFactor });
        seen.add(String(move.Check).replace(/\d+ of \d+/, 'm of n'));
      }
    };
    compare();
    // A move comes late, a stay is longer: everything goes by the days really stayed.
    const values = readTab(farm.book, 'Rotation').values;
    const heading = values.findIndex((row) => row[0] === 'Group');
    const late = Math.floor(plan.stays.length / 2);
    farm.book.type(
      'Rotation',
      cellUnder(farm.book, 'Moved in', heading + 3 + late),
      isoFromDay(plan.stays[late]!.inDay + 1),
    );
    compare();
    // It was left out, and the group's next one typed later: the stay before lasts up to that.
    const ofGroup = [...plan.stays.keys()].filter((i) => plan.stays[i]!.group === plan.stays[late]!.group);
    const place = ofGroup.indexOf(late);
    const [before, next] = [ofGroup[place - 1]!, ofGroup[place + 1]!];
    farm.book.type('Rotation', `D${heading + 3 + late}`, SKIPPED_AS_TYPED[farms % SKIPPED_AS_TYPED.length]!);
    const day = dayOf(movesOf(readTab(farm.book, 'Rotation').values)[next]!.In) + 2;
    farm.book.type('Rotation', `D${heading + 3 + next}`, isoFromDay(day));
    compare((i) => i === late);
    expect(dayOf(movesOf(readTab(farm.book, 'Rotation').values)[before]!.Out)).toBe(day);
  }
  expect(farms).toBe(FARMS);
  expect([...seen].sort()).toEqual(expect.arrayContaining(['', 'Over the ground limit', 'Rest m of n days']));
});

const SKIPPED_AS_TYPED = ['skipped', 'SKIPPED', 'Skipped '];
const OF_THOSE_IN =
  'In,Out,Head,Mean head,Weight in,Weight out,Liveweight,Load,Rest before,Rest due,Check,Feed for the stay,Water'.split(
    ',',
  );

function movesOf(values: readonly (readonly WireCell[])[]): Move[] {
  const at = values.findIndex((row) => row[0] === 'Group');
  const heads = values[at]!.map((head) => String(head).replace(/ \(.*/, ''));
  const rows = values.slice(at + 2);
  const end = rows.findIndex((row) => row[0] === '');
  return rows.slice(0, end).map((row) => Object.fromEntries(heads.map((head, c) => [head, row[c]!])));
}

function daysOf(move: Move): Pick<Stay, 'inDay' | 'outDay'> {
  return { inDay: dayOf(move.In), outDay: dayOf(move.Out) };
}

interface Figures {
  readonly system: UnitSystem;
  readonly temperatureC: number;
  readonly outdoorFactor: number;
}

function expectMove(
  move: Move,
  problem: PlanProblem,
  stays: readonly Stay[],
  i: number,
  { system, temperatureC, outdoorFactor }: Figures,
): void {
  const { group: g, paddock: p, inDay, outDay } = stays[i]!;
  const group = problem.groups[g]!;
  const paddock = problem.paddocks[p]!;
  const same = (head: string, inside: number, quantity: Quantity): void => {
    const wanted = fromInside(inside, quantity, system);
    expect(
      Math.abs(Number(move[head]) / wanted - 1),
      `${head}: ${move[head]} against ${wanted}`,
    ).toBeLessThan(1e-9);
  };
  const weightKg = groupWeightOn(group, inDay);
  same('Weight in', weightKg, 'mass');
  same('Liveweight', (group.head * weightKg) / paddock.areaSquareMeters, 'massPerArea');
  same('Water', waterNeeded(group.head, weightKg, temperatureC), 'volumePerDay');
  same(
    'Feed for the stay',
    feedNeeded(group.head, weightKg, outDay - inDay, group.dailyGainKg, outdoorFactor),
    'mass',
  );
  const load = fromInside(stayLoad(problem, stays[i]!), 'loadPerArea', system);
  expect(Math.abs(Number(move.Load) / load - 1), `Load: ${move.Load} against ${load}`).toBeLessThan(
    ENDS_OR_DAYS,
  );
  // Two groups in one paddock at once: rest there means nothing, and the check says so.
  if (move.Check === 'Still occupied') return;
  const score = scoreStays(problem, stays)[i]!;
  expect(move['Rest before']).toBe(score.restDays ?? '');
  if (score.restDays !== undefined) expect(move['Rest due']).toBe(score.restDueDays);
  if (isNearLimit(problem, stays[i]!)) return;
  expect(move.Check).toBe(checkOf(score));
}

/** The formula takes the mean of the weights at both ends, the page adds up the days: apart by less than this. */
const ENDS_OR_DAYS = 0.01;

function isNearLimit(
  { groups, paddocks, rules }: PlanProblem,
  { group, paddock, inDay, outDay }: Stay,
): boolean {
  if (rules.groundLimit === undefined) return false;
  const days = Array.from({ length: outDay - inDay }, (_, d) => groupLoadOn(groups[group]!, inDay + d));
  const load = days.reduce((sum, kg) => sum + kg, 0);
  const borne = rules.groundLimit * paddocks[paddock]!.areaSquareMeters;
  return Math.abs(load / borne - 1) < ENDS_OR_DAYS;
}

function checkOf({ restDays, restDueDays, restShortDays, overLimitDays }: StayScore): string {
  if (restShortDays > 0) return `Rest ${restDays} of ${restDueDays} days`;
  return overLimitDays > 0 ? 'Over the ground limit' : '';
}
