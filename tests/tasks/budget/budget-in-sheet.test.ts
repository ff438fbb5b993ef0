/** The budget block in the preview's engine beside what the page works out, over any stays. */
import fc from 'fast-check';
import { expect, test, vi } from 'vitest';
import type { WireCell } from '../../../shared/contract';
import { dayFromCivil, dayFromIso } from '../../../shared/core/calendar/day';
import {
  BUDGET_BLOCK,
  budgetBlock,
  LOAD_HEADINGS,
  MONTH_HEADINGS,
} from '../../../shared/tasks/budget/budget-block';
import { BUDGET_SETTINGS } from '../../../shared/tasks/budget/budget-settings';
import { byPeriod } from '../../../shared/tasks/budget/by-period';
import { paddockLoads } from '../../../shared/tasks/budget/paddock-loads';
import { seasonNeeds } from '../../../shared/tasks/budget/season-needs';
import { stayNeeds } from '../../../shared/tasks/budget/stay-needs';
import { insideSettings, startSettings } from '../../../shared/tasks/settings';
import { fromInside, type Quantity, symbolOf, type UnitSystem } from '../../../shared/units/units';
import { openWorkbook } from '../../../src/headless';
import { scriptText } from '../script-text';
import { beside, errorsIn, readFromSheet, writeInSheet } from '../sheet-block';

// The engine's first evaluation takes seconds on a busy machine.
vi.setConfig({ testTimeout: 120_000 });

const ANY_STAY = fc.record(
  {
    group: fc.constantFrom('Reds', 'Blacks', '=Sows'),
    paddock: fc.constantFrom('Oak', 'Hill', 'North 2', '>5'),
    inDay: fc.integer({ min: dayFromCivil(2026, 11, 20), max: dayFromCivil(2027, 4, 2) }),
    days: fc.integer({ min: 1, max: 70 }),
    head: fc.integer({ min: 1, max: 60 }),
    meanHead: fc.integer({ min: 1, max: 60 }),
    startWeightKg: fc.integer({ min: 6, max: 60 }),
    growthDays: fc.integer({ min: 0, max: 15 }),
    dailyGainKg: fc.constantFrom(0.4, 0.75, 1.05),
    areaSquareMeters: fc.integer({ min: 300, max: 20_000 }),
  },
  {
    requiredKeys: [
      'group',
      'paddock',
      'inDay',
      'days',
      'head',
      'meanHead',
      'startWeightKg',
      'growthDays',
      'areaSquareMeters',
    ],
  },
);
/** A paddock has one area. */
const ANY_STAYS = fc.array(ANY_STAY, { minLength: 1, maxLength: 9 }).map((stays) =>
  stays.map((stay) => ({
    ...stay,
    areaSquareMeters: stays.find(({ paddock }) => paddock === stay.paddock)!.areaSquareMeters,
  })),
);

const dayOf = (cell: WireCell | undefined): number => dayFromIso((cell as { d: string }).d)!;

test.each(['US', 'metric'] as const)(
  '%s: season, months and paddocks are those of the page',
  async (units) => {
    const says = new Set<unknown>();
    for (const [at, stays] of fc.sample(ANY_STAYS, { seed: 13, numRuns: 6 }).entries()) {
      const book = await openWorkbook({ tabs: { Notes: [['mine']] }, codeJs: await scriptText() });
      const limits = { limitN: 40 + 20 * at, limitP: 12 + 3 * at };
      const prices = { feedPrice: 380 + at, fenceCost: 90 };
      const settings = { ...startSettings(BUDGET_SETTINGS, units), ...(at > 0 && { ...limits, ...prices }) };
      const plan = { stays, units, settings, source: {}, origin: '', leftOut: [] };
      const block = budgetBlock(plan, new Map(), { row: 1, column: 1 });
      const info = writeInSheet(book, BUDGET_BLOCK, block, { at: 'new-tab', tab: 'Budget' });
      const content = readFromSheet(book, info);
      expect(errorsIn(content)).toEqual([]);
      const rowsUnder = (headings: readonly string[], count: number): readonly (readonly WireCell[])[] => {
        const head = content.values.findIndex((row) => headings.every((heading, c) => row[c] === heading));
        return content.values.slice(head + 1, head + 1 + count);
      };

      const inside = insideSettings(BUDGET_SETTINGS, settings, units);
      const needs = stays.map((stay) => stayNeeds(stay, inside));
      const season = seasonNeeds(stays, needs, inside);
      expectSame(beside(content, 'Feed together'), season.feedKg, 'mass', units);
      expectSame(
        beside(content, 'Shelter, largest group floor'),
        season.shelterSquareMeters,
        'floorArea',
        units,
      );
      const { waterLiters, hotWaterLiters } = season;
      expectSame(beside(content, 'Water, most a day, all groups'), waterLiters, 'volumePerDay', units);
      expectSame(
        beside(content, 'Hot-day water, most a day, all groups'),
        hotWaterLiters,
        'volumePerDay',
        units,
      );
      expect(beside(content, 'Stays that could not be worked out')).toBe(0);
      const { feed: feedCost, feedPerPig, feedPerKgGained, fencePerPig, pigs } = season.money ?? {};
      const unit = symbolOf('mass', units);
      const perGain = feedPerKgGained && feedPerKgGained / fromInside(1, 'mass', units);
      for (const [label, cost] of [
        ['Feed, cost of the season', feedCost],
        ['Feed, cost a pig', feedPerPig],
        [`Feed, cost for each ${unit} gained`, perGain],
        ['Fence, cost a pig', fencePerPig],
      ] as const)
        if (at > 0) expect(beside(content, label), label).toBeCloseTo(cost!, 9);
        else expect(beside(content, label), label).toBe('');
      const fence = content.values.find(([label]) => label === 'Fence, cost a pig');
      if (at > 0) expect(fence).toContain(`a pig, of ${pigs}`);

      const feed = byPeriod(stays, (_, i) => needs[i]!.feedKg, 'month');
      const water = byPeriod(
        stays,
        (stay, i) => (needs[i]!.waterLiters * stay.days * stay.meanHead) / stay.head,
        'month',
      );
      rowsUnder(MONTH_HEADINGS, feed.length).forEach(([from, to, eaten, drunk], i) => {
        expect([dayOf(from), dayOf(to)]).toEqual([feed[i]!.start, feed[i]!.end]);
        expectSame(eaten, feed[i]!.sum, 'mass', units);
        expectSame(drunk, water[i]!.sum, 'volumePerDay', units);
      });

      const loads = paddockLoads(stays, needs, inside);
      rowsUnder(LOAD_HEADINGS, loads.length).forEach(([paddock, area, visits, days, n, p, k, verdict], i) => {
        const load = loads[i]!;
        expect([paddock, visits, days]).toEqual([load.paddock, load.stays, load.days]);
        expectSame(area, load.areaSquareMeters, 'area', units);
        expectSame(n, load.nitrogen, 'massPerArea', units);
        expectSame(p, load.phosphorus, 'massPerArea', units);
        expectSame(k, load.potassium, 'massPerArea', units);
        const over = load.over.length > 0 ? `over: ${load.over.join(' ')}` : 'within';
        expect(verdict).toBe(at > 0 ? over : 'no limit typed');
        says.add(verdict);
      });
    }
    expect([...says]).toEqual(expect.arrayContaining(['no limit typed', 'over: N P', 'within']));
  },
);

function expectSame(got: unknown, inside: number, quantity: Quantity, units: UnitSystem): void {
  const wanted = fromInside(inside, quantity, units);
  expect(Math.abs(Number(got) - wanted)).toBeLessThanOrEqual(1e-9 * Math.max(1, wanted));
}
