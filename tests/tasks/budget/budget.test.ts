/** Feed, water, shelter and ground: the contract's worked examples, plain day-by-day sums, sums by hand. */
import { describe, expect, test } from 'vitest';
import { dayFromCivil } from '../../../shared/core/calendar/day';
import type { BudgetStay } from '../../../shared/tasks/budget/budget-model';
import { BUDGET_SETTINGS } from '../../../shared/tasks/budget/budget-settings';
import { byPeriod } from '../../../shared/tasks/budget/by-period';
import { paddockLoads } from '../../../shared/tasks/budget/paddock-loads';
import { plainStays } from '../../../shared/tasks/budget/plain-stays';
import { seasonNeeds } from '../../../shared/tasks/budget/season-needs';
import { stayNeeds } from '../../../shared/tasks/budget/stay-needs';
import { insideSettings, startSettings } from '../../../shared/tasks/settings';
import { fromInside, toInside } from '../../../shared/units/units';

const SETTINGS = insideSettings(BUDGET_SETTINGS, startSettings(BUDGET_SETTINGS, 'US'), 'US');
const MAY = dayFromCivil(2026, 5, 1);

function stay(of: Partial<BudgetStay> = {}): BudgetStay {
  return {
    group: 'Feeders',
    paddock: 'North',
    inDay: MAY,
    days: 30,
    head: 12,
    meanHead: of.head ?? 12,
    startWeightKg: toInside(60, 'mass', 'US'),
    growthDays: 0,
    dailyGainKg: toInside(1.5, 'massPerDay', 'US'),
    areaSquareMeters: toInside(0.25, 'area', 'US'),
    ...of,
  };
}

describe('one stay', () => {
  test('12 pigs from 60 lb, 30 days at 1.5 lb, factor 1: 1,282.5 lb of feed (example of FEED_NEEDED)', () => {
    const { feedKg } = stayNeeds(stay(), { ...SETTINGS, outdoor: 1 });
    expect(fromInside(feedKg, 'mass', 'US')).toBeCloseTo(1282.5, 1);
  });

  test('the same feed by adding up days', () => {
    // NRC 2012 intake equation, mid-day weights; 3,300 kcal/kg and 5 % waste as in Table 16-1 (from memory).
    const { startWeightKg, dailyGainKg = 0, days, head } = stay();
    const kcal = Array.from({ length: days }, (_, day) => startWeightKg + dailyGainKg * (day + 0.5))
      .map((kg) => 10563 * (1 - Math.exp(-Math.exp(-4.04) * kg)))
      .reduce((sum, one) => sum + one, 0);
    const byDays = (head * 1.15 * kcal) / 3300 / 0.95;
    expect(stayNeeds(stay(), SETTINGS).feedKg / byDays).toBeCloseTo(1, 4);
  });

  test('12 pigs that leave at 150 lb: 27.49 gal at 68 °F, 49.25 at 90 °F (examples of WATER_NEEDED)', () => {
    const hot = toInside(90, 'temperature', 'US');
    const needs = stayNeeds(stay({ startWeightKg: toInside(105, 'mass', 'US') }), { ...SETTINGS, hot });
    expect(fromInside(needs.weightOutKg, 'mass', 'US')).toBeCloseTo(150, 9);
    expect(fromInside(needs.waterLiters, 'volumePerDay', 'US')).toBeCloseTo(27.49, 2);
    expect(fromInside(needs.hotWaterLiters, 'volumePerDay', 'US')).toBeCloseTo(49.25, 2);
  });

  test('the water to have there is what pigs were metered to use: 60 to 117 mL a kg a day', () => {
    // D. Little and others, J Swine Health Prod 31(1):20, 2023: drunk and spilled, across studies.
    // Finishers on an ordinary day: small pigs use more a kg, and the feed rule follows that.
    const needs = stayNeeds(stay({ startWeightKg: 85, days: 20, dailyGainKg: 0.8 }), SETTINGS);
    const aKg = needs.waterLiters / 12 / needs.weightOutKg;
    expect(aKg).toBeGreaterThan(0.06);
    expect(aKg).toBeLessThan(0.117);
  });

  test('a pig of 100 kg takes 1.028 m² (table of k × W^0.67, Petherick and Baxter, second hand)', () => {
    const one = stay({ head: 1, startWeightKg: 100, days: 1, dailyGainKg: 0 });
    expect(stayNeeds(one, SETTINGS).shelterSquareMeters).toBeCloseTo(1.028, 3);
  });

  test('12 of 150 lb on a quarter acre for 7 days drop 27.216 N, 4.536 P, 12.096 K lb/ac (NUTRIENT_LOAD)', () => {
    const week = stay({ startWeightKg: toInside(150, 'mass', 'US'), days: 7, dailyGainKg: 0 });
    const { nitrogen, phosphorus, potassium } = stayNeeds(week, SETTINGS);
    const load = [nitrogen, phosphorus, potassium].map((value) => fromInside(value, 'massPerArea', 'US'));
    expect(load[0]).toBeCloseTo(27.216, 6);
    expect(load[1]).toBeCloseTo(4.536, 6);
    expect(load[2]).toBeCloseTo(12.096, 6);
  });

  test('beyond the growth table without a daily gain it refuses', () => {
    const { dailyGainKg: _, ...noGain } = stay({ startWeightKg: 130, days: 60 });
    expect(() => stayNeeds(noGain, SETTINGS)).toThrow('daily_gain');
  });
});

describe('the season', () => {
  const stays = [
    stay({ inDay: MAY, days: 10, paddock: 'North' }),
    stay({ inDay: MAY + 10, days: 30, paddock: 'South', group: 'Feeders' }),
    stay({ inDay: MAY + 5, days: 10, paddock: 'East', group: 'Others', head: 6 }),
    stay({ inDay: MAY + 40, days: 2, paddock: 'North' }),
  ];
  const needs = stays.map((one) => stayNeeds(one, SETTINGS));

  test('months and weeks add up to the whole', () => {
    for (const period of ['month', 'week'] as const) {
      const sums = byPeriod(stays, (_, at) => needs[at]?.feedKg ?? 0, period);
      expect(sums.reduce((sum, one) => sum + one.sum, 0)).toBeCloseTo(
        seasonNeeds(stays, needs, SETTINGS).feedKg,
        6,
      );
    }
  });

  test('May has 21 of the 30 days of a stay from the 11th on, June 9 and two of another', () => {
    const sums = byPeriod(stays, (one) => one.days, 'month');
    expect(sums.map(({ sum }) => sum)).toEqual([10 + 21 + 10, 9 + 2]);
    expect(sums[0]).toMatchObject({ start: MAY, end: MAY + 31 });
  });

  test('weeks begin on Monday: 1 May 2026 is a Friday', () => {
    expect(byPeriod(stays, () => 1, 'week')[0]?.start).toBe(MAY - 4);
  });

  test('the day of most water is one on which both groups are out', () => {
    const apart = stays.filter(({ group }) => group === 'Feeders');
    const alone = seasonNeeds(
      apart,
      apart.map((one) => stayNeeds(one, SETTINGS)),
      SETTINGS,
    );
    const both = seasonNeeds(stays, needs, SETTINGS);
    const others = needs[2]?.waterLiters ?? 0;
    const beside = Math.max(needs[0]?.waterLiters ?? 0, needs[1]?.waterLiters ?? 0);
    expect(both.waterLiters).toBeCloseTo(beside + others, 9);
    expect(both.waterLiters).toBeGreaterThan(alone.waterLiters);
  });

  test('12 pigs for 30 days, 1,282.5 lb of feed at $400 a ton: $256.50, $21.38 a pig, 47.5 ¢ a lb; by hand', () => {
    const priced = { ...SETTINGS, outdoor: 1, feedPrice: 400, fenceCost: 60 };
    const one = [stay()];
    const { money } = seasonNeeds(
      one,
      one.map((each) => stayNeeds(each, priced)),
      priced,
    );
    expect(money!.feed).toBeCloseTo(256.5, 1);
    expect(money!.feedPerPig).toBeCloseTo(256.5 / 12, 2);
    // 12 pigs × 30 days × 1.5 lb = 540 lb.
    expect(toInside(1, 'mass', 'US') * money!.feedPerKgGained!).toBeCloseTo(256.5 / 540, 4);
    expect(money!.fencePerPig).toBeCloseTo(5, 9);
    expect(seasonNeeds(one, [], SETTINGS).money).toBeUndefined();
  });

  test('28 pigs in three lots that come and go: $598.50 ÷ 28 is $21.38 a pig, $2,240 of fence is $80; by hand', () => {
    const priced = { ...SETTINGS, outdoor: 1, feedPrice: 400, fenceCost: 2240 };
    // As in FEED_NEEDED's example a pig eats 1,282.5 ÷ 12 lb in its 30 days. The third lot's are two stays.
    const last = { group: 'Third', inDay: MAY + 70, head: 6 };
    const lots = [
      stay({ group: 'First', head: 12 }),
      stay({ group: 'Second', head: 10, inDay: MAY + 19 }),
      stay({ ...last, days: 15 }),
      stay({ ...last, days: 15, inDay: MAY + 85, growthDays: 15 }),
    ];
    const money = (of: readonly BudgetStay[]) =>
      seasonNeeds(
        of,
        of.map((each) => stayNeeds(each, priced)),
        priced,
      ).money!;
    expect(money(lots).pigs).toBe(28);
    expect(money(lots).feed).toBeCloseTo(598.5, 1);
    expect(money(lots).feedPerPig).toBeCloseTo(21.375, 2);
    expect(money(lots).fencePerPig).toBeCloseTo(80, 9);
    // A pig that is lost on the way was one of them.
    expect(money([...lots.slice(0, 3), { ...lots[3]!, head: 5 }]).pigs).toBe(28);
  });

  test('loads of two visits add up and are held against the limits', () => {
    const one = needs[0]?.nitrogen ?? 0;
    const two = needs[3]?.nitrogen ?? 0;
    const loads = paddockLoads(stays, needs, { ...SETTINGS, limitN: (one + two) * 0.99 });
    expect(loads[0]).toMatchObject({ paddock: 'North', stays: 2, days: 12 });
    expect(loads[0]?.nitrogen).toBeCloseTo(one + two, 12);
    expect(loads[0]?.over).toEqual(['N']);
    expect(paddockLoads(stays, needs, SETTINGS).every(({ over }) => over.length === 0)).toBe(true);
  });
});

describe('stays without a plan of moves', () => {
  const paddock = (name: string) => ({ name, areaSquareMeters: 1000, cells: {} });
  const group = (name: string, from: number, until?: number) => ({
    name,
    head: 10,
    weightKg: 30,
    weighedOn: MAY - 10,
    from,
    ...(until !== undefined && { until }),
    cells: {},
  });

  test('each group goes through the list in its order, the last stay cut at the end', () => {
    const paddocks = ['A', 'B', 'C', 'D'].map(paddock);
    const groups = [group('One', MAY), group('Two', MAY + 3, MAY + 9)];
    const stays = plainStays(paddocks, groups, { start: MAY, end: MAY + 12, daysOn: 5 });
    expect(stays.map(({ group: g, paddock: p, inDay, days }) => `${g} ${p} ${inDay - MAY} ${days}`)).toEqual([
      'One A 0 5',
      'One B 5 5',
      'One C 10 2',
      'Two C 3 5',
      'Two D 8 1',
    ]);
    expect(stays[1]?.growthDays).toBe(15);
  });
});
