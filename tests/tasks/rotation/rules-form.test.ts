import { describe, expect, it } from 'vitest';
import { isoFromDay } from '../../../shared/core/calendar/day';
import type { ReadGroup, ReadPaddock } from '../../../shared/lists/model';
import { evenShare } from '../../../shared/plan/even-share';
import { planProblem } from '../../../shared/tasks/rotation/plan-problem';
import { readRules } from '../../../shared/tasks/rotation/read-rules';
import { rulesFormOf, startingRules } from '../../../shared/tasks/rotation/rules-form';
import { seasonOf } from '../../../shared/tasks/rotation/season';

const TODAY = 20_560;
const paddocks = (count: number): ReadPaddock[] =>
  Array.from({ length: count }, (_, p) => ({
    name: `P${p + 1}`,
    areaSquareMeters: 1000 + 300 * p,
    cells: {},
  })) as ReadPaddock[];
const group = (more: Partial<ReadGroup> = {}): ReadGroup =>
  ({ name: 'Reds', head: 9, weightKg: 40, weighedOn: TODAY, cells: {}, ...more }) as ReadGroup;

describe('the rules to begin with', () => {
  it.each([
    // DAYS_ON by hand: 40 × groups ÷ (paddocks − groups).
    [9, 1, '7'], // 5
    [6, 1, '8'], // 8
    [5, 1, '10'], // 10
    [4, 1, '14'], // 13.3
    [3, 1, '14'], // 20: more than is begun with
  ])('%i paddocks and %i group: stays of up to %s days', (count, _, longest) => {
    expect(startingRules(paddocks(count), [group()], TODAY).longest).toBe(longest);
  });

  it('the season ends when fewer paddocks are open than there are groups', () => {
    const closing = paddocks(6).map((paddock, p) => ({ ...paddock, openUntil: TODAY + 40 + p }));
    const seasonEnd = (groups: number): string =>
      startingRules(
        closing,
        Array.from({ length: groups }, () => group()),
        TODAY,
      ).seasonEnd;
    // The last paddock is open through day 45, the last but one through day 44.
    expect(seasonEnd(1)).toBe(isoFromDay(TODAY + 46));
    expect(seasonEnd(2)).toBe(isoFromDay(TODAY + 45));
  });

  it('move some for the ground’s sake', () => {
    const form = startingRules(paddocks(6), [group()], TODAY);
    expect(form.evenness).toBe('some');
    expect(readRules(form, 'US', false).rules?.evenness).toBe(0.25);
  });
});

describe('the rules and their form', () => {
  it.each([
    ['fewest', 0],
    ['some', 0.25],
    ['most', 1],
  ] as const)('%s is a weight of %d, there and back', (word, weight) => {
    const form = { ...startingRules(paddocks(6), [group()], TODAY), evenness: word };
    const { rules } = readRules(form, 'metric', false);
    expect(rules?.evenness).toBe(weight);
    expect(rulesFormOf(rules!, 'metric', false)).toEqual(form);
  });

  it('rules of a table from before there was a word mean the fewest moves', () => {
    const { evenness: _, ...before } = readRules(startingRules(paddocks(6), [group()], TODAY), 'US', false)
      .rules!;
    expect(rulesFormOf(before, 'US', false).evenness).toBe('fewest');
  });
});

describe('even use of the ground', () => {
  it('has the share of the whole season, also where the plan begins today', () => {
    const { rules } = readRules(startingRules(paddocks(6), [group()], TODAY), 'US', false);
    const grown = { ...rules!, seasonStart: TODAY, seasonEnd: TODAY + 150 };
    const standing = group({ standsIn: { paddock: 'P2', since: TODAY } as ReadGroup['standsIn'] & object });
    const lists = {
      paddocks: paddocks(6),
      groups: [standing],
      problems: [],
      chosen: { paddocks: {}, groups: {} },
    };
    const given = { lists, rules: grown, old: undefined, countPlannedAsDone: false };
    const at = (today: number) => {
      const season = seasonOf({ ...given, today } as unknown as Parameters<typeof seasonOf>[0]);
      if (!('problem' in season)) throw new Error(season.missing);
      return season.problem;
    };
    const whole = evenShare(planProblem(lists.paddocks, lists.groups, grown));
    expect(at(TODAY).evenShare).toBeCloseTo(whole, 12);
    const later = at(TODAY + 60);
    expect(later.rules.seasonStart).toBe(TODAY + 60);
    expect(later.evenShare).toBeCloseTo(whole, 12);
    // What is left of the season alone would give another: the pigs have grown.
    expect(evenShare({ ...later })).not.toBeCloseTo(whole, 3);
  });
});
